import type { UnitDraft } from "@drawcord/units";
import { applyChange, type Change } from "./change.js";

/** The changes after which the selvedges interlace as the cloth does: their ends go on in the order of the ground threading. */
export function mendSelvedges(
  draft: UnitDraft,
  accept: (mended: UnitDraft) => boolean,
): readonly Change[] | undefined {
  const { threading } = draft.ground;
  const { left = [], right = [] } = draft.selvedge ?? {};
  const units = draft.threading.length;
  const ends =
    typeof draft.unitEnds === "number" ? draft.unitEnds * units : draft.unitEnds.reduce((a, b) => a + b, 0);
  const shaftOf = (end: number) =>
    threading[((end % threading.length) + threading.length) % threading.length]!;
  const changes: Change[] = [];
  if (left.length > 0) {
    changes.push({ change: "selvedge", side: "left", shafts: left.map((_, i) => shaftOf(i - left.length)) });
  }
  if (right.length > 0) {
    changes.push({ change: "selvedge", side: "right", shafts: right.map((_, i) => shaftOf(ends + i)) });
  }
  const ways = [...changes.map((change) => [change]), changes];
  return ways.find((way) => way.length > 0 && accept(way.reduce(applyChange, draft)));
}
