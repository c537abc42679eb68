import type { Example, Finding, Span } from "@drawcord/check";
import { squaresPath } from "@drawcord/draw";
import { exampleCloth } from "./example-cloth.js";

/** How wide and high a thread is drawn at the most, and how wide a whole picture. */
const LARGEST = 14;
const WIDEST = 560;

/** Room for the shafts over a plan and for what its rows draw. */
const OVER = 14;

/**
 * The picture of an example as SVG, the first pick or row at the bottom, with a frame about each place that is found.
 * @param example a small cloth of a rule
 * @param findings what the rule finds in it
 */
export function exampleDrawing(example: Example, findings: readonly Finding[]): string {
  const { grid, of, over = [], beside = [] } = exampleCloth(example);
  const { columns, rows } = grid;
  const size = Math.min(LARGEST, WIDEST / columns);
  const besideWide = Math.max(0, ...beside.map(({ length }) => length)) * 7 + (beside.length > 0 ? 12 : 0);
  const top = over.length > 0 ? OVER : 0;
  const [wide, high] = [columns * size, rows * size];
  const frames = findings.flatMap((finding) => {
    const across = (of === "ends and picks" ? finding.ends : finding.units) ?? [1, columns];
    const along = of === "ends and picks" ? finding.picks : finding.rows;
    const isWhole = across[0] === 1 && across[1] === columns && along === undefined;
    return isWhole ? [] : [frame(across, along ?? [1, rows], rows, size)];
  });
  const box = `-2 ${-top - 2} ${round(wide + besideWide + 4)} ${round(high + top + 4)}`;
  const unit = of === "ends and picks" ? ["ends", "picks"] : ["units", "rows"];
  const label = `${example.title}: ${columns} ${unit[0]} and ${rows} ${unit[1]}`;
  return [
    `<svg class="cloth-example" role="img" aria-label="${quoted(label)}" width="${round(wide + besideWide + 4)}" height="${round(high + top + 4)}" viewBox="${box}">`,
    `<rect class="weft" width="${round(wide)}" height="${round(high)}"/>`,
    `<path class="warp" transform="scale(${round(size)})" d="${squaresPath(grid)}"/>`,
    `<path class="gaps" d="${gaps(columns, rows, size)}"/>`,
    ...over.map(
      (shaft, i) => `<text x="${round((i + 0.5) * size)}" y="-3" text-anchor="middle">${shaft}</text>`,
    ),
    ...beside.map(
      (draws, i) => `<text x="${round(wide + 8)}" y="${round((rows - i) * size - 3)}">${draws}</text>`,
    ),
    ...new Set(frames),
    "</svg>",
  ].join("");
}

function frame(across: Span, along: Span, rows: number, size: number): string {
  const [x, y] = [(across[0] - 1) * size, (rows - along[1]) * size];
  const [wide, high] = [(across[1] - across[0] + 1) * size, (along[1] - along[0] + 1) * size];
  return `<rect class="found" x="${round(x)}" y="${round(y)}" width="${round(wide)}" height="${round(high)}"/>`;
}

function gaps(columns: number, rows: number, size: number): string {
  const upright = Array.from(
    { length: columns - 1 },
    (_, i) => `M${round((i + 1) * size)} 0v${round(rows * size)}`,
  );
  const level = Array.from(
    { length: rows - 1 },
    (_, i) => `M0 ${round((i + 1) * size)}h${round(columns * size)}`,
  );
  return [...upright, ...level].join("");
}

function round(pixels: number): number {
  return Math.round(pixels * 100) / 100;
}

function quoted(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");
}
