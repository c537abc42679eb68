import { fromData } from "@drawcord/grid";
import type { Expansion } from "./types.js";

/**
 * An expansion that came through `structuredClone`, as from a worker: its grids, which lost their methods on the way, are
 * grids again. Their words are taken over and not copied, so this costs nothing; one that never left stays as it is.
 * @param expansion what `expand` gave, or a clone of it
 * @throws {GridError} `not-a-grid` for what has no grids
 * @example expansionFromData(structuredClone(expand(draft))).drawdown.get(0, 0) === expand(draft).drawdown.get(0, 0) // true
 */
export function expansionFromData(expansion: Expansion): Expansion {
  const { drawdown, drawn, squares } = expansion;
  return {
    ...expansion,
    drawdown: fromData(drawdown),
    drawn: fromData(drawn),
    squares: fromData(squares),
  };
}
