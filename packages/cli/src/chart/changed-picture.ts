import type { NearestCloth } from "@drawcord/chart";
import { squaresPath } from "@drawcord/draw";
import { and, andNot, type BitGrid } from "@drawcord/grid";

const PIXELS = 8;

/**
 * The squares of a cloth as an SVG, the last row on top: dark where a square is drawn as it was, a strong colour where it is
 * newly drawn, a pale one where it is drawn no more.
 */
export function changedPicture({ changed, chart }: NearestCloth, wanted: BitGrid): string {
  const { columns, rows } = chart;
  const layers = [
    ["#20242c", and(chart, wanted)],
    ["#c8501e", and(chart, changed)],
    ["#f2b98f", andNot(changed, chart)],
  ] as const;
  const paths = layers.map(([colour, squares]) => `<path fill="${colour}" d="${squaresPath(squares)}"/>`);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${columns * PIXELS}" height="${rows * PIXELS}" viewBox="0 0 ${columns} ${rows}" shape-rendering="crispEdges" role="img"><title>dark: drawn as it was; orange: newly drawn; pale: drawn no more</title><rect width="${columns}" height="${rows}" fill="#ffffff"/>${paths.join("")}</svg>
`;
}
