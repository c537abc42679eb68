import { boxesOf, plainText } from "../document/text.js";
import type { Column, Table, Text } from "../document/types.js";
import { runsLeft } from "../drawing/direction.js";
import { textWidth } from "../drawing/metrics.js";
import { palette } from "../drawing/palette.js";
import { round } from "../drawing/round.js";
import type { Shape } from "../drawing/shape.js";
import type { Box, Flow } from "./flow.js";
import { tagged } from "./tagged.js";
import { type } from "./types-of-text.js";
import { linesHeight, setLines, wrap } from "./wrap.js";

const GAP = 4;
const NARROW_GAP = 2.6;
const ABOVE = 1.1;
const BETWEEN = 8;
/** A table that takes no more of a page than this share is not cut by a page's end. */
const KEPT = 0.5;
/** Fewer rows than this never stand alone at the foot or the head of a page. */
const LEAST_ROWS = 3;
/** A table of so many rows is set in two columns of a page where its rows then grow no taller in all than by this factor. */
const LONG = 12;
const MOST_TURNED = 1.3;
/** Boxes to tick: their size, their distance, and how many stand in a line. */
const BOX = 2.4;
const BOX_PITCH = 3;
const BOXES_A_LINE = 6;
/** Width of a patch of colour. */
const SWATCH = 8;

/** Sets a table, its head again on every page and in every column of pages. */
export function layTable(table: Table, flow: Flow): void {
  const gap = table.narrow ? NARROW_GAP : GAP;
  const columns = columnsOf(table, flow.width, gap);
  const width = widthOf(columns);
  const across = table.narrow ? Math.max(1, Math.floor((flow.width + BETWEEN) / (width + BETWEEN))) : 1;
  const head = headBox(table, columns, width);
  // It is read out once, however often it is printed.
  const again: Box = { ...head, shapes: [tagged({ role: "Artifact" }, head.shapes)] };
  const rows = table.rows.map((_, row) => rowBox(table, row, columns, width));
  const caption = captionBox(table, flow.width);
  const { boxes: whole } = fillColumns(rows, 0, across, Number.POSITIVE_INFINITY);
  const height = caption.height + head.height + tallest(whole);
  flow.space(5);
  if (height <= KEPT * flow.height) flow.need(height);
  flow.put(caption, head.height + sum(rows.slice(0, LEAST_ROWS)));
  for (let at = 0; at < rows.length; ) {
    if (head.height + rows[at]!.height > flow.room) flow.nextPage();
    const { boxes, next } = fillPage(rows, at, across, flow.room - head.height);
    flow.put({
      height: head.height + tallest(boxes),
      shapes: boxes.map(
        (column, i): Shape => ({
          kind: "group",
          x: i * (width + BETWEEN),
          y: 0,
          tag: { role: "Table", id: table.id },
          shapes: stacked([at === 0 && i === 0 ? head : again, ...column]),
        }),
      ),
    });
    at = next;
    if (at < rows.length) flow.nextPage();
  }
  flow.space(2);
}

/** The columns of a table; of a long one that may stand in columns of pages, narrow enough for two where few rows turn over. */
function columnsOf(table: Table, room: number, gap: number): Place[] {
  const wide = placed(columnWidths(table, room, gap), gap);
  const half = (room - BETWEEN) / 2;
  if (!table.narrow || table.rows.length < LONG || widthOf(wide) <= half) return wide;
  const narrow = placed(columnWidths(table, half, gap), gap);
  const height = (places: readonly Place[]) =>
    sum(table.rows.map((_, row) => rowBox(table, row, places, widthOf(places))));
  return widthOf(narrow) <= half + 1e-6 && height(narrow) <= MOST_TURNED * height(wide) ? narrow : wide;
}

function widthOf(places: readonly Place[]): number {
  const last = places.at(-1)!;
  return last.x + last.width;
}

/** The columns of one page. No page end leaves fewer than a few rows behind for the next page. */
function fillPage(rows: readonly Box[], first: number, across: number, room: number): Columns {
  const filled = fillColumns(rows, first, across, room);
  const over = rows.length - filled.next;
  const most = rows.length - LEAST_ROWS * across;
  if (over === 0 || over >= LEAST_ROWS * across || most - first < LEAST_ROWS * across) return filled;
  return fillColumns(rows.slice(0, most), first, across, room);
}

/** Rows in columns side by side, and the first row that is left over. */
interface Columns {
  readonly boxes: readonly (readonly Box[])[];
  readonly next: number;
}

/** As many rows as fit into columns side by side; where all that is left fits, the columns end level. */
function fillColumns(rows: readonly Box[], first: number, across: number, room: number): Columns {
  const left = rows.slice(first);
  const level = Math.max(sum(left) / across, Math.max(...left.map(({ height }) => height)));
  const fits = Number.isFinite(room) ? room : Number.POSITIVE_INFINITY;
  for (const most of [level, level * 1.05 + 4, fits]) {
    const { boxes, count } = fill(left, across, Math.min(most, fits));
    if (count === left.length || most === fits) return { boxes, next: first + Math.max(1, count) };
  }
  return { boxes: [left], next: rows.length };
}

function fill(rows: readonly Box[], across: number, most: number): { boxes: Box[][]; count: number } {
  const boxes: Box[][] = [];
  let at = 0;
  for (let column = 0; column < across && at < rows.length; column++) {
    const box: Box[] = [];
    let height = 0;
    while (at < rows.length && (box.length === 0 || height + rows[at]!.height <= most + 1e-6)) {
      height += rows[at]!.height;
      box.push(rows[at++]!);
    }
    boxes.push(box);
  }
  return { boxes, count: at };
}

function tallest(columns: readonly (readonly Box[])[]): number {
  return Math.max(0, ...columns.map(sum));
}

function sum(boxes: readonly Box[]): number {
  return boxes.reduce((total, { height }) => total + height, 0);
}

function stacked(boxes: readonly Box[]): Shape[] {
  let y = 0;
  return boxes.map((box): Shape => {
    const group: Shape = { kind: "group", x: 0, y, shapes: box.shapes };
    y += box.height;
    return group;
  });
}

/** Each column as wide as its text asks; where that is too much, the widest give way. */
function columnWidths({ columns, rows }: Table, room: number, gap: number): number[] {
  const asked = columns.map(({ title, kind }, i) => {
    const head = textWidth(title, type.head.size, type.head.face);
    const cells = rows.reduce((most, row) => Math.max(most, cellWidth(row[i]!, kind)), 0);
    return Math.max(head, cells) * 1.04 + 0.4;
  });
  let over = asked.reduce((total, one) => total + one, 0) + gap * (columns.length - 1) - room;
  const widths = [...asked];
  while (over > 0.01) {
    const widest = Math.max(...widths);
    const second = Math.max(12, ...widths.filter((one) => one < widest - 0.01));
    const many = widths.filter((one) => one >= widest - 0.01).length;
    const cut = Math.min(over / many, Math.max(widest - second, 1));
    for (const [i, one] of widths.entries()) if (one >= widest - 0.01) widths[i] = one - cut;
    over -= cut * many;
  }
  return widths;
}

function cellWidth(text: Text, kind: Column["kind"]): number {
  if (kind === "swatch") return SWATCH;
  if (kind === "tick") return Math.min(boxesOf(text), BOXES_A_LINE) * BOX_PITCH + 0.6;
  return textWidth(plainText(text), type.cell.size, kind === "head" ? type.cell.strong : type.cell.face);
}

/** Where a column stands. */
interface Place {
  readonly x: number;
  readonly width: number;
}

function placed(widths: readonly number[], gap: number): Place[] {
  let x = 0;
  return widths.map((width) => {
    const place = { x, width };
    x += width + gap;
    return place;
  });
}

function headBox({ id, columns }: Table, places: readonly Place[], width: number): Box {
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

function rowBox({ id, columns, rows }: Table, index: number, places: readonly Place[], width: number): Box {
  const row = rows[index]!;
  const cells = row.map((text, i) => {
    const strong = columns[i]!.kind === "head";
    if (columns[i]!.kind === "tick" || columns[i]!.kind === "swatch") return [];
    return wrap(strong ? [{ text: plainText(text), strong }] : text, places[i]!.width, type.cell);
  });
  const boxes = row.map((text, i) => (columns[i]!.kind === "tick" ? boxesHeight(boxesOf(text)) : 0));
  const height =
    Math.max(type.cell.size * 1.1, ...boxes, ...cells.map((lines) => linesHeight(lines, type.cell))) +
    2 * ABOVE;
  const shapes = cells.map((lines, i): Shape => {
    const { x, width: room } = places[i]!;
    const { kind } = columns[i]!;
    if (kind === "swatch") {
      const fill = plainText(row[i]!);
      return tagged(fill === "" ? { role: "TD" } : { role: "TD", alt: fill }, patch(fill, x));
    }
    if (kind === "tick") return tagged({ role: "TD" }, tickBoxes(boxesOf(row[i]!), x + 0.6, ABOVE + 0.25));
    const rtl = runsLeft(plainText(row[i]!));
    const set = aligned(setLines(lines, x, ABOVE, room, type.cell, rtl), columns[i]!, places[i]!);
    return tagged(kind === "head" ? { role: "TH", scope: "Row" } : { role: "TD" }, set);
  });
  const whole = tagged({ role: "TR", id: `${id} ${index}` }, shapes);
  return { height, shapes: [whole, hairline(width, height, palette.hair)] };
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
function aligned(shapes: readonly Shape[], { kind }: Column, { x, width }: Place): Shape[] {
  return shapes.map((shape) =>
    kind === "number" && shape.kind === "text" ? { ...shape, x: x + width, anchor: "end" } : shape,
  );
}

function hairline(width: number, y: number, stroke: string): Shape {
  return { kind: "path", d: `M0 ${round(y)}h${round(width)}`, stroke, width: 0.12 };
}

function captionBox({ id, caption }: Table, width: number): Box {
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
