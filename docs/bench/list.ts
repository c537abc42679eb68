import type { Recipe } from "@drawcord/files";
import { liftCaution, liftWork, printShafts, type RowWork, wovenRows } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import type { ToldRow } from "./messages.js";
import { pieceOf } from "./reading.js";

/**
 * The list to weave a piece by, row 1 first, and what there is to mind about its weights.
 * @param recipe as it was read
 * @param piece which piece, from 0
 */
export function rowsOf(
  recipe: Recipe,
  piece: number,
): { readonly rows: readonly ToldRow[]; readonly caution: string } {
  const { blocks = {}, draft, order } = pieceOf(recipe, piece);
  const { lingoWeight } = recipe.loom;
  const work = liftWork(draft, lingoWeight === undefined ? {} : { lingoGrams: toMetric(lingoWeight).value });
  const woven = order === undefined ? [] : wovenRows(order, (block) => blocks[block]?.length ?? 1);
  return {
    rows: work.rows.map((row) => ({
      row: row.row + 1,
      picks: [row.picks[0] + 1, row.picks[1] + 1],
      drawn: row.drawn.length === 0 ? "none" : printShafts(row.drawn),
      change: changeOf(row),
      block: order?.[woven[row.row]?.entry ?? -1]?.block ?? "",
    })),
    caution: liftCaution(work.heaviest.grams),
  };
}

function changeOf({ pulled, released }: RowWork): string {
  return [
    ...(pulled.length === 0 ? [] : [`+ ${printShafts(pulled)}`]),
    ...(released.length === 0 ? [] : [`- ${printShafts(released)}`]),
  ].join("  ");
}
