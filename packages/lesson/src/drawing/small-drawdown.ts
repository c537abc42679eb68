import type { Pictures } from "@drawcord/page";
import { type SquaresDrawing, squaresDrawing } from "./squares.js";

/**
 * A small cloth to be read, square by square, with the numbers of ends and picks.
 * @param cloth rows are picks, columns are ends; true where the end lies over the pick
 */
export function smallDrawdown(
  id: string,
  caption: string,
  cloth: readonly (readonly boolean[])[],
  look: Pick<SquaresDrawing, "heavyColumns" | "heavyRows" | "cell">,
): Pictures {
  const columns = cloth[0]!.length;
  const drawing = squaresDrawing({
    columns,
    rows: cloth.length,
    filled: (end, pick) => cloth[pick]![end]!,
    under: (end) => `${end + 1}`,
    left: (pick) => `${pick + 1}`,
    ...look,
  });
  const alt = `A drawdown of ${columns} ends and ${cloth.length} picks.`;
  return { kind: "pictures", pictures: [{ id, caption, alt, drawing }] };
}
