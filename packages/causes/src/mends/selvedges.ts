import { type Change, endsOfEachUnit, type UnitDraft } from "@drawcord/units";
import type { Way } from "./way.js";

/** Selvedges that interlace as the cloth does: their ends go on in the order of the ground threading, on one side or both. */
export function selvedgeWays(draft: UnitDraft): Way[] {
  const { threading } = draft.ground;
  const { left = [], right = [] } = draft.selvedge ?? {};
  const ends = endsOfEachUnit(draft).reduce((a, b) => a + b, 0);
  const shaftOf = (end: number) =>
    threading[((end % threading.length) + threading.length) % threading.length]!;
  const changes: Change[] = [];
  if (left.length > 0) {
    changes.push({ change: "selvedge", side: "left", shafts: left.map((_, i) => shaftOf(i - left.length)) });
  }
  if (right.length > 0) {
    changes.push({ change: "selvedge", side: "right", shafts: right.map((_, i) => shaftOf(ends + i)) });
  }
  const ways = [...changes.map((change) => [change]), ...(changes.length > 1 ? [changes] : [])];
  return ways.map((way) => ({ changes: way }));
}
