/** A grid of squares to read or to fill, with words at its sides. */
import { type Drawing, palette, round, type Shape } from "@drawcord/page";

/** A grid as it is drawn: the first row at the bottom, as cloth is woven. */
export interface SquaresDrawing {
  readonly columns: number;
  readonly rows: number;
  /** Whether a square is filled. */
  readonly filled: (column: number, row: number) => boolean;
  /** What stands under each column, and at the left and the right of each row. */
  readonly under: (column: number) => string;
  readonly left: (row: number) => string;
  readonly right?: (row: number) => string;
  /** Columns and rows after which a heavy line stands. */
  readonly heavyColumns?: readonly number[];
  readonly heavyRows?: readonly number[];
  /** A square with a ring about it, column and row. */
  readonly ringed?: readonly [column: number, row: number];
  /** Side of a square in mm; default 5. */
  readonly cell?: number;
}

/** The drawing of a grid. Filled squares are one path, so that they can be read back out of it. */
export function squaresDrawing(squares: SquaresDrawing): Drawing {
  const { cell = 5, columns, rows } = squares;
  const words = (row: number) => squares.right?.(row) ?? "";
  const sizes = (text: (row: number) => string) =>
    Math.max(0, ...Array.from({ length: rows }, (_, row) => text(row).length));
  const x = 3 + sizes(squares.left) * 1.7;
  const y = 1;
  const right = x + columns * cell;
  const foot = y + rows * cell;
  return {
    width: round(right + 3 + sizes(words) * 1.6),
    height: round(foot + 5),
    shapes: [
      ...fill(squares, x, y, cell),
      ...lines(squares, x, y, cell),
      ...labels(squares, x, y, cell),
      ...ring(squares, x, y, cell),
    ],
  };
}

function fill({ columns, filled, rows }: SquaresDrawing, x: number, y: number, cell: number): Shape[] {
  const parts: string[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (filled(column, row)) parts.push(`M${column} ${rows - 1 - row}h1v1h-1z`);
    }
  }
  if (parts.length === 0) return [];
  const frame = { x, y, sx: cell, sy: cell };
  return [{ kind: "path", d: parts.join(""), fill: palette.ink, frame, role: "raised" }];
}

function lines(squares: SquaresDrawing, x: number, y: number, cell: number): Shape[] {
  const { columns, heavyColumns = [], heavyRows = [], rows } = squares;
  const thin: string[] = [];
  const thick: string[] = [];
  for (let column = 0; column <= columns; column++) {
    const at = column === 0 || column === columns || heavyColumns.includes(column) ? thick : thin;
    at.push(`M${round(x + column * cell)} ${y}v${round(rows * cell)}`);
  }
  for (let row = 0; row <= rows; row++) {
    const at = row === 0 || row === rows || heavyRows.includes(row) ? thick : thin;
    at.push(`M${round(x)} ${round(y + (rows - row) * cell)}h${round(columns * cell)}`);
  }
  return [
    { kind: "path", d: thin.join(""), stroke: palette.rule, width: 0.12 },
    { kind: "path", d: thick.join(""), stroke: palette.ink, width: 0.35 },
  ];
}

function labels(squares: SquaresDrawing, x: number, y: number, cell: number): Shape[] {
  const { columns, left, right, rows, under } = squares;
  const text = (at: number, base: number, said: string, anchor: "start" | "middle" | "end"): Shape => ({
    kind: "text",
    x: round(at),
    y: round(base),
    text: said,
    size: 2.9,
    face: "sans",
    fill: palette.ink,
    anchor,
  });
  const base = (row: number) => y + (rows - row - 0.5) * cell + 1;
  const shown = [
    ...Array.from({ length: columns }, (_, column) =>
      text(x + (column + 0.5) * cell, y + rows * cell + 3.6, under(column), "middle"),
    ),
    ...Array.from({ length: rows }, (_, row) => text(x - 1.2, base(row), left(row), "end")),
    ...Array.from({ length: rows }, (_, row) =>
      text(x + columns * cell + 1.2, base(row), right?.(row) ?? "", "start"),
    ),
  ];
  return shown.filter((shape) => shape.kind !== "text" || shape.text !== "");
}

function ring({ ringed, rows }: SquaresDrawing, x: number, y: number, cell: number): Shape[] {
  if (ringed === undefined) return [];
  const [column, row] = ringed;
  return [
    {
      kind: "rect",
      x: round(x + column * cell - 0.7),
      y: round(y + (rows - 1 - row) * cell - 0.7),
      width: cell + 1.4,
      height: cell + 1.4,
      stroke: palette.accent,
      strokeWidth: 0.9,
    },
  ];
}
