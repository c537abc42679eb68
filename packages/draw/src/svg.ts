import { andNot, type BitGrid, complement, crop, fromCells, needGrid } from "@drawcord/grid";
import { colourOf, type Rgb } from "./colour/rgb.js";
import { type DrawOptions, ordersOf, scaleOf, viewOf } from "./options.js";
import { squaresPath } from "./squares.js";

/** How a cloth is drawn as SVG. */
export interface DrawSvgOptions extends DrawOptions {
  /** What the picture shows, for those who hear a page read; default "drawdown". */
  readonly title?: string;
}

/**
 * The picture of a cloth as an SVG document, thread by thread, the first pick at the bottom. Its coordinates are threads;
 * `scale` says how many pixels wide and high one is shown.
 * @param grid rows are picks, columns are ends, a bit is 1 where the end lies on top
 * @param options colours, scale, title and the part that is drawn
 * @throws {DrawError} `bad-colour`, `bad-scale`
 * @throws {GridError} `outside` for a view that does not lie inside the grid
 * @example drawSvg(fromText("#.")).includes('<path fill="#000000" d="M0 0h1v1h-1z"/>') // true
 */
export function drawSvg(grid: BitGrid, options: DrawSvgOptions = {}): string {
  needGrid(grid);
  const { warp, weft } = ordersOf(options);
  const scale = scaleOf(options);
  const view = viewOf(options, grid);
  const { row, column, rows, columns } = view;
  const raised = options.view === undefined ? grid : crop(grid, view);
  const all = fromCells(rows, columns, () => true);
  const ends = (colour: string) => fromCells(rows, columns, (_, i) => isOf(warp, column + i, colour));
  const picks = (colour: string) => fromCells(rows, columns, (i) => isOf(weft, row + i, colour));
  const isOneWarp = new Set(warp.map(colourOf)).size === 1;
  const isOneWeft = new Set(weft.map(colourOf)).size === 1;
  const layers = [
    ...[...new Set(weft.map(colourOf))].flatMap((colour) => path(colour, isOneWeft ? all : picks(colour))),
    ...[...new Set(warp.map(colourOf))].flatMap((colour) =>
      path(colour, isOneWarp ? raised : andNot(raised, complement(ends(colour)))),
    ),
  ];
  const size = `width="${columns * scale}" height="${rows * scale}" viewBox="0 0 ${columns} ${rows}"`;
  const title = `<title>${escaped(options.title ?? "drawdown")}</title>`;
  const start = `<svg xmlns="http://www.w3.org/2000/svg" ${size} shape-rendering="crispEdges" role="img">`;
  return [start, title, ...layers, "</svg>"].join("\n");
}

function isOf(order: readonly Rgb[], thread: number, colour: string): boolean {
  return colourOf(order[thread % order.length]!) === colour;
}

function path(colour: string, squares: BitGrid): string[] {
  const d = squaresPath(squares);
  return d === "" ? [] : [`<path fill="${colour}" d="${d}"/>`];
}

/** Text that may stand in an element; what XML cannot hold becomes U+FFFD. */
function escaped(text: string): string {
  return text
    .replace(/[^\P{Cc}\t\n\r]|[\p{Cs}\ufffe\uffff]/gu, "\ufffd")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;");
}
