import { boxesOf, plainText } from "../document/text.js";
import type { Column, Table, Text } from "../document/types.js";
import { runsLeft } from "../drawing/direction.js";
import { palette } from "../drawing/palette.js";
import { round } from "../drawing/round.js";
import type { Shape } from "../drawing/shape.js";
import type { FlowBox } from "./flow.js";
import {
  BETWEEN_BOXES,
  BOX_PITCH,
  BOXES_A_LINE,
  boxedWords,
  boxWidth,
  type ColumnPlace,
  cellType,
  NO_BOX,
  SWATCH,
} from "./table-columns.js";
import { tagged } from "./tagged.js";
import { type } from "./types-of-text.js";
import { linesHeight, setLines, type Type, wrap } from "./wrap.js";

const ABOVE = 0.95;
const BOX = 2.4;
/** The thick rule at a heading within a table, in mm. */
const THICK = 0.7;

export function headBox({ id, columns }: Table, places: readonly ColumnPlace[], width: number): FlowBox {
  const cells = columns.map(({ title }, i) => wrap(title, places[i]!.width, type.head));
  const height = Math.max(...cells.map((lines) => linesHeight(lines, type.head))) + 2;
  const titles = cells.map((lines, i) => {
    const top = height - 1.4 - linesHeight(lines, type.head);
    const set = setLines(lines, places[i]!.x, top, places[i]!.width, type.head);
    return tagged({ role: "TH", scope: "Column" }, aligned(set, columns[i]!, places[i]!));
  });
  const row = tagged({ role: "TR", id: `${id} head` }, titles);
  return { height, shapes: [row, hairline(width, height, palette.rule)] };
}

/** One row, tinted where its band is. */
export function rowBox(table: Table, index: number, places: readonly ColumnPlace[], width: number): FlowBox {
  const { id, columns } = table;
  const row = table.rows[index]!;
  const cell = cellType(table);
  const isDrawn = (kind: Column["kind"]) => kind === "tick" || kind === "swatch" || kind === "boxes";
  const cells = row.map((text, i) => {
    const strong = columns[i]!.kind === "head";
    if (isDrawn(columns[i]!.kind)) return [];
    return wrap(strong ? [{ text: plainText(text), strong }] : text, places[i]!.width, cell);
  });
  const around = columns.map(({ kind }, i) =>
    kind === "boxes" ? boxesAround(table, row[i]!, i, places[i]!, cell) : undefined,
  );
  const boxes = row.map((text, i) => (columns[i]!.kind === "tick" ? boxesHeight(boxesOf(text)) : 0));
  const height =
    Math.max(
      cell.size * 1.1,
      ...boxes,
      ...around.map((box) => box?.height ?? 0),
      ...cells.map((lines) => linesHeight(lines, cell)),
    ) +
    2 * ABOVE;
  const named = columns.some(({ kind }) => kind === "head");
  const shapes = cells.map((lines, i): Shape => {
    const { x, width: room } = places[i]!;
    const { kind } = columns[i]!;
    if (kind === "swatch") {
      const fill = plainText(row[i]!);
      return tagged(fill === "" ? { role: "TD" } : { role: "TD", alt: fill }, patch(fill, x));
    }
    if (kind === "tick") return tagged({ role: "TD" }, tickBoxes(boxesOf(row[i]!), x + 0.6, ABOVE + 0.25));
    if (kind === "boxes") {
      return tagged(named ? { role: "TD" } : { role: "TH", scope: "Row" }, around[i]!.shapes);
    }
    const rtl = runsLeft(plainText(row[i]!));
    const set = aligned(setLines(lines, x, ABOVE, room, cell, rtl), columns[i]!, places[i]!);
    return tagged(kind === "head" ? { role: "TH", scope: "Row" } : { role: "TD" }, set);
  });
  const whole = tagged({ role: "TR", id: `${id} ${index}` }, shapes);
  return {
    height,
    shapes: [...tint(table, index, width, height), whole, hairline(width, height, palette.hair)],
  };
}

/** Every other band of rows, counted from the heading before it. */
function tint({ band, heads = [] }: Table, index: number, width: number, height: number): Shape[] {
  if (band === undefined) return [];
  const first = heads.findLast(({ row }) => row <= index)?.row ?? 0;
  if (Math.floor((index - first) / band) % 2 === 0) return [];
  return [
    { kind: "rect", x: -0.4, y: 0, width: round(width + 0.8), height: round(height), fill: palette.wash },
  ];
}

/** A heading within a table, on its thick rule; under it where the table rises. */
export function headingBox(table: Table, index: number, text: Text, width: number): FlowBox {
  const kind = table.large ? type.largeHeading : type.heading;
  const lines = wrap([{ text: plainText(text), strong: true }], width, kind);
  const height = linesHeight(lines, kind) + 2.6;
  const ruleY = table.rising ? height - THICK / 2 : THICK / 2;
  const top = table.rising ? 0.8 : 1.6;
  const rule: Shape = {
    kind: "path",
    d: `M0 ${round(ruleY)}h${round(width)}`,
    stroke: palette.ink,
    width: THICK,
  };
  const cell = tagged({ role: "TH", scope: "Row" }, setLines(lines, 0, top, width, kind));
  return { height, shapes: [rule, tagged({ role: "TR", id: `${table.id} heading ${index}` }, [cell])] };
}

/** Where weaving begins, below the lowest row. */
export function beginBox(): FlowBox {
  const lines = wrap("▲ begin here", 60, type.head);
  return {
    height: linesHeight(lines, type.head) + 1.4,
    shapes: [tagged({ role: "Artifact" }, setLines(lines, 0, 1, 60, type.head))],
  };
}

/** Boxes around words, as many in a line as there is room for. */
function boxesAround(table: Table, text: Text, column: number, place: ColumnPlace, kind: Type): FlowBox {
  const words = boxedWords(text);
  const wide = boxWidth(table, column, kind);
  const high = kind.size * 1.1 + 0.6;
  const inLine = Math.max(1, Math.floor((place.width + BETWEEN_BOXES) / (wide + BETWEEN_BOXES) + 1e-6));
  const shapes = words.flatMap((word, i): Shape[] => {
    const x = place.x + (i % inLine) * (wide + BETWEEN_BOXES);
    const y = ABOVE - 0.3 + Math.floor(i / inLine) * (high + 0.8);
    const box: Shape = {
      kind: "rect",
      x: round(x),
      y: round(y),
      width: round(wide),
      height: round(high),
      fill: palette.paper,
      stroke: palette.muted,
      strokeWidth: 0.2,
    };
    return [
      ...(word === NO_BOX ? [] : [box]),
      {
        kind: "text",
        x: round(x + wide / 2),
        y: round(y + 0.3 + kind.size * 0.8),
        text: word,
        size: kind.size,
        face: kind.face,
        fill: palette.ink,
        anchor: "middle",
      },
    ];
  });
  const lines = Math.max(1, Math.ceil(words.length / inLine));
  return { height: lines * (high + 0.8) - 0.8, shapes };
}

function patch(fill: string, x: number): Shape[] {
  if (fill === "") return [];
  const place = { x, y: ABOVE, width: SWATCH, height: 3.2 };
  return [{ kind: "rect", ...place, fill, stroke: palette.rule, strokeWidth: 0.15 }];
}

function tickBoxes(number: number, x: number, y: number): Shape[] {
  return Array.from({ length: number }, (_, i) => ({
    kind: "rect",
    x: round(x + (i % BOXES_A_LINE) * BOX_PITCH),
    y: round(y + Math.floor(i / BOXES_A_LINE) * BOX_PITCH),
    width: BOX,
    height: BOX,
    stroke: palette.muted,
    strokeWidth: 0.18,
  }));
}

function boxesHeight(number: number): number {
  return (Math.ceil(number / BOXES_A_LINE) - 1) * BOX_PITCH + BOX + 0.5;
}

/** Numbers stand against the right edge of their column. */
function aligned(shapes: readonly Shape[], { kind }: Column, { x, width }: ColumnPlace): Shape[] {
  return shapes.map((shape) =>
    kind === "number" && shape.kind === "text" ? { ...shape, x: x + width, anchor: "end" } : shape,
  );
}

function hairline(width: number, y: number, stroke: string): Shape {
  return { kind: "path", d: `M0 ${round(y)}h${round(width)}`, stroke, width: 0.12 };
}

export function captionBox({ id, caption }: Table, width: number): FlowBox {
  const lines = wrap(caption, width, type.caption);
  return {
    height: linesHeight(lines, type.caption) + 1.2,
    shapes: [
      tagged({ role: "Table", id }, [
        tagged({ role: "Caption" }, setLines(lines, 0, 0, width, type.caption)),
      ]),
    ],
  };
}
