import { type BitGrid, fromCells } from "@drawcord/grid";
import { ChartError } from "./error.js";

/** How the strips of a border come together in a corner: each to the diagonal, or the level ones to the edge. */
export type CornerTurn = "mitred" | "meeting";

/**
 * A picture framed in a border that is built from a strip and turns its corners. The strip runs from every corner to the
 * middle of each side, where it meets itself, so that all four corners are alike.
 * @param motif rows x units, row 0 woven first
 * @param strip the border as it lies below the picture: row 0 is its outer edge; it is repeated along its columns
 * @param corner how it turns
 * @returns as much larger than the motif as the strip is high, on every side
 * @throws {ChartError} `empty-chart` when either has no rows or no columns
 * @example toText(framedChart(fromText("."), fromText("#"), "mitred")) // "###\n#.#\n###"
 */
export function framedChart(motif: BitGrid, strip: BitGrid, corner: CornerTurn): BitGrid {
  for (const grid of [motif, strip]) {
    if (grid.rows > 0 && grid.columns > 0) continue;
    const sentence = `a picture of ${grid.rows} rows and ${grid.columns} units was given; expected one of each or more`;
    throw new ChartError("empty-chart", sentence, { rows: grid.rows, units: grid.columns });
  }
  const depth = strip.rows;
  const rows = motif.rows + 2 * depth;
  const columns = motif.columns + 2 * depth;
  return fromCells(rows, columns, (row, unit) => {
    const up = Math.min(row, rows - 1 - row);
    const across = Math.min(unit, columns - 1 - unit);
    const isLevel = up < depth && (corner === "meeting" || up <= across);
    if (isLevel) return strip.get(up, across % strip.columns);
    if (across < depth) return strip.get(across, up % strip.columns);
    return motif.get(row - depth, unit - depth);
  });
}
