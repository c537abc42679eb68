/**
 * Where a pattern weft lies over a ground weft, an end that the ground weft passes by may be tied by the pattern weft
 * alone, which floats itself: counted over all picks its float looks short. So floats of the ends are counted over the
 * picks of the ground weft too.
 */
import { BitGrid, transpose } from "@drawcord/grid";
import type { Cloth } from "../cloth.js";
import type { AllowedLength } from "../measured-length.js";
import type { VisitLongRun } from "./long-runs.js";
import { eachRun } from "./runs.js";

/** The picks of the ground weft (from 0); none where there is no other weft, so that all floats are its own. */
function groundPicks({ wefts, weftOfPick }: Cloth): number[] {
  const ground = wefts.indexOf("");
  const picks: number[] = [];
  weftOfPick.forEach((weft, pick) => {
    if (weft === ground) picks.push(pick);
  });
  return picks.length === weftOfPick.length ? [] : picks;
}

/**
 * A limit along the ends in picks of the ground weft: in mm it comes to fewer of them, as they are only some of the picks.
 * @param cloth the cloth that the limit is of
 * @param allowed the limit over all picks, as `allowedFloat` gives it
 * @example allowedOfGround(measureDraft(draft, expand(draft), {}), { threads: 7, passed: "pick", perCm: 1, assumed: false }).threads // 7
 */
export function allowedOfGround(cloth: Cloth, allowed: AllowedLength): AllowedLength {
  const { mm, perCm } = allowed;
  if (mm === undefined) return allowed;
  const own = (perCm * groundPicks(cloth).length) / Math.max(1, cloth.weftOfPick.length);
  return { ...allowed, perCm: own, threads: Math.floor((mm * own) / 10 + 1e-9) };
}

/**
 * Visits the floats of the ends over more than `allowed` picks of the ground weft that are tied by picks of another weft
 * only. A float that no pick ties is left out: it is one over all picks. `first` and `last` are picks of the cloth, and
 * the length counts those of the ground weft.
 * @param cloth the cloth to look through
 * @param state 1 for floats on the face, 0 for those on the back
 * @param allowed the longest that is not visited, in picks of the ground weft
 * @param visit called with each float
 * @example eachGroundFloat(measureDraft(draft, expand(draft), {}), 1, 1, () => {}) // undefined
 */
export function eachGroundFloat(cloth: Cloth, state: 0 | 1, allowed: number, visit: VisitLongRun): void {
  const picks = groundPicks(cloth);
  if (picks.length <= allowed) return;
  const { grid } = cloth.weft;
  const words = new Uint32Array(picks.length * grid.stride);
  picks.forEach((pick, row) => {
    for (let i = 0; i < grid.stride; i++) words[row * grid.stride + i] = grid.words[pick * grid.stride + i]!;
  });
  const alongEnds = transpose(BitGrid.own(picks.length, grid.columns, words));
  const floatsOf = (end: number) => {
    const floats: (readonly [first: number, last: number, length: number])[] = [];
    eachRun(alongEnds, end, (start, stop, runState) => {
      if (runState !== state || stop - start <= allowed) return;
      const first = picks[start]!;
      const last = picks[stop - 1]!;
      if (isTied(cloth, end, first, last, state)) floats.push([first, last, stop - start]);
    });
    return floats;
  };
  // Ends that interlace alike have their floats at the same picks.
  const { first, kindOf } = cloth.warp.kinds;
  const ofKind = Array.from(first, floatsOf);
  kindOf.forEach((kind, end) => {
    for (const float of ofKind[kind]!) visit(end, ...float);
  });
}

function isTied({ weft }: Cloth, end: number, first: number, last: number, state: 0 | 1): boolean {
  for (let pick = first; pick <= last; pick++) if (weft.grid.get(pick, end) !== (state === 1)) return true;
  return false;
}
