import { type ShaftDraft, type Shedding, shaftsMoved } from "@drawcord/check";
import type { ShaftSet } from "@drawcord/ground";

/**
 * The same draft with its shafts moved the other way: by a lift plan, or by treadles, one for each pick that differs. One
 * that has what is asked for stays as it is.
 * @param draft a draft as `soundWif` gives it; it stays as it is
 * @param kind how its shafts are to be moved
 * @example withShedding({ ...draft, shedding: { kind: "lift-plan", liftPlan: [[1], [2], [1]] } }, "tie-up").shedding // { kind: "tie-up", tieUp: [[1], [2]], treadling: [[1], [2], [1]] }
 */
export function withShedding(draft: ShaftDraft, kind: Shedding["kind"]): ShaftDraft {
  if (draft.shedding.kind === kind) return draft;
  const moved = shaftsMoved(draft);
  return {
    ...draft,
    shedding: kind === "lift-plan" ? { kind, liftPlan: moved } : { kind, ...treadled(moved) },
  };
}

/** A treadle for each set of shafts, in the order in which they first come; a pick that moves nothing has none. */
function treadled(moved: readonly ShaftSet[]): {
  readonly tieUp: readonly ShaftSet[];
  readonly treadling: readonly ShaftSet[];
} {
  const treadles = new Map<string, ShaftSet>();
  const tieUp: ShaftSet[] = [];
  const treadling = moved.map((shafts): ShaftSet => {
    if (shafts.length === 0) return [];
    const key = shafts.join(" ");
    const treadle = treadles.get(key) ?? [tieUp.push(shafts)];
    treadles.set(key, treadle);
    return treadle;
  });
  return { tieUp, treadling };
}
