import { fromCells } from "@drawcord/grid";
import { modulo } from "../arithmetic.js";
import type { AddedPoint } from "../description/description.js";
import { shaftsOf } from "./shafts.js";
import { drawdownOf, type Weave } from "./weave.js";

/**
 * A weave with raised points added beside every point that it raises: an extended satin where they touch, a crepe where
 * they lie scattered.
 * @param points ends to the right and picks above, negative for left and below
 * @example withAdded(weaveOf("satin 5"), [{ right: 1, above: 0 }]).raised[0] // [1, 2]
 */
export function withAdded(weave: Weave, points: readonly AddedPoint[]): Weave {
  const drawdown = drawdownOf(weave);
  const { rows, columns } = drawdown;
  const places = [{ right: 0, above: 0 }, ...points];
  return shaftsOf(
    fromCells(rows, columns, (pick, end) =>
      places.some(({ right, above }) =>
        drawdown.get(modulo(pick - above, rows), modulo(end - right, columns)),
      ),
    ),
  );
}
