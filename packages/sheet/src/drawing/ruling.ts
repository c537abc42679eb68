import { type CellFrame, palette, round, type Shape } from "@drawcord/page";

/** The lines of squared paper: thin ones at every cell where there is room, stronger ones at every fifth or tenth. */
export interface Ruling {
  readonly columns: number;
  readonly rows: number;
  readonly frame: CellFrame;
  /** Cells between strong lines; default 5. */
  readonly every?: number;
  /** How many columns and rows of the whole lie before the first of these, so that strong lines fall on round numbers; default 0. */
  readonly before?: { readonly columns: number; readonly rows: number };
}

/** Squared paper over a frame; strong rows are counted from the bottom, where weaving begins. */
export function ruling({ columns, rows, frame, every = 5, before }: Ruling): Shape[] {
  const { x, y, sx, sy } = frame;
  const right = round(columns * sx);
  const down = round(rows * sy);
  const isStrong = (line: number, lines: number, skipped = 0) =>
    line === 0 || line === lines || (line + skipped) % every === 0;
  const thin: string[] = [];
  const strong: string[] = [];
  for (let c = 0; c <= columns; c++) {
    const d = `M${round(x + c * sx)} ${round(y)}v${down}`;
    if (isStrong(c, columns, before?.columns)) strong.push(d);
    else if (sx >= 1) thin.push(d);
  }
  for (let r = 0; r <= rows; r++) {
    const d = `M${round(x)} ${round(y + (rows - r) * sy)}h${right}`;
    if (isStrong(r, rows, before?.rows)) strong.push(d);
    else if (sy >= 1) thin.push(d);
  }
  const fine = Math.min(sx, sy) < 1;
  return [
    ...(thin.length === 0
      ? []
      : [{ kind: "path" as const, d: thin.join(""), stroke: palette.hair, width: 0.1 }]),
    { kind: "path", d: strong.join(""), stroke: palette.rule, width: fine ? 0.08 : 0.14 },
  ];
}
