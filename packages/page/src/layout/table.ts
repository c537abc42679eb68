import { plainText } from "../document/text.js";
import type { Table } from "../document/types.js";
import type { Shape } from "../drawing/shape.js";
import type { Flow, FlowBox } from "./flow.js";
import { beginBox, captionBox, headBox, headingBox, rowBox } from "./table-cells.js";
import { type ColumnPlace, columnPlaces, widthOf } from "./table-columns.js";
import { tagged } from "./tagged.js";

const BETWEEN = 8;
/** A table that takes no more of a page than this share is not cut by a page's end. */
const KEPT = 0.5;
/** Fewer rows than this never stand alone at the foot or the head of a page. */
const LEAST_ROWS = 3;
/** A table of so many rows is set in two columns of a page where its rows then grow no taller in all than by this factor. */
const LONG = 12;
const MOST_TURNED = 1.3;
/** Twice as many rows may stand in so many columns. */
const MOST_ACROSS = 3;

/** Sets a table, its head again on every page and in every column of pages. */
export function layTable(table: Table, flow: Flow): void {
  const columns = columnsOf(table, flow.width);
  const width = widthOf(columns);
  const across = table.narrow
    ? Math.max(1, Math.floor((flow.width + BETWEEN) / (width + BETWEEN) + 1e-6))
    : 1;
  const head = headBox(table, columns, width);
  // It is read out once, however often it is printed.
  const again: FlowBox = { ...head, shapes: [tagged({ role: "Artifact" }, head.shapes)] };
  const rows = rowsOf(table, columns, width);
  const caption = captionBox(table, flow.width);
  const { boxes: whole } = fillColumns(rows, 0, across, Number.POSITIVE_INFINITY);
  const begin = table.rising ? beginBox() : undefined;
  const around = head.height + (begin?.height ?? 0);
  const height = caption.height + around + tallest(whole);
  flow.space(5);
  if (height <= KEPT * flow.height) flow.need(height);
  flow.put(caption, around + sum(rows.slice(0, LEAST_ROWS)));
  for (let at = 0; at < rows.length; ) {
    if (around + rows[at]!.height > flow.room) flow.nextPage();
    if (at > 0) rows[at] = continued(table, at, rows[at]!, width);
    const { boxes, next } = fillPage(rows, at, across, flow.room - around);
    flow.put({
      height: around + tallest(boxes),
      shapes: boxes.map(
        (column, i): Shape => ({
          kind: "group",
          x: i * (width + BETWEEN),
          // Columns that rise stand on one line.
          y: table.rising ? tallest(boxes) - sum(column) : 0,
          tag: { role: "Table", id: table.id },
          shapes: columnShapes(at === 0 && i === 0 ? head : again, column, begin),
        }),
      ),
    });
    at = next;
    if (at < rows.length) flow.nextPage();
  }
  flow.space(2);
}

/** The columns of a table; of a long one that may stand in columns of pages, narrow enough for three or two where few rows turn over. */
function columnsOf(table: Table, room: number): ColumnPlace[] {
  const wide = columnPlaces(table, room);
  const height = (places: readonly ColumnPlace[]) => sum(rowsOf(table, places, widthOf(places)));
  for (const across of table.narrow ? [MOST_ACROSS, 2] : []) {
    const share = (room - BETWEEN * (across - 1)) / across;
    if (table.rows.length < LONG * (across - 1)) continue;
    if (widthOf(wide) <= share) return wide;
    const narrow = columnPlaces(table, share);
    if (widthOf(narrow) <= share + 1e-6 && height(narrow) <= MOST_TURNED * height(wide)) return narrow;
  }
  return wide;
}

/** The rows of a table, each with the heading that stands before it. */
function rowsOf(table: Table, places: readonly ColumnPlace[], width: number): FlowBox[] {
  const headings = new Map(table.heads?.map(({ row, text }) => [row, text]));
  return table.rows.map((_, index) => {
    const row = rowBox(table, index, places, width);
    const text = headings.get(index);
    return text === undefined ? row : headed(table, headingBox(table, index, text, width), row);
  });
}

/** A row with the heading that stands before it, which is below it where the table rises. */
function headed({ rising }: Table, heading: FlowBox, row: FlowBox): FlowBox {
  const height = row.height + heading.height;
  const [rowY, headingY] = rising ? [0, row.height] : [heading.height, 0];
  return { height, shapes: [moved(heading, headingY), moved(row, rowY)] };
}

/** The first row of a page that goes on with what an earlier page began, under the same heading. */
function continued(table: Table, index: number, row: FlowBox, width: number): FlowBox {
  const head = table.heads?.findLast((one) => one.row <= index);
  if (head === undefined || head.row === index) return row;
  const text = `${plainText(head.text)}, continued`;
  const { height, shapes } = headingBox(table, index, text, width);
  // It is read out once, however often it is printed.
  return headed(table, { height, shapes: [tagged({ role: "Artifact" }, shapes)] }, row);
}

/** The columns of one page. No page end leaves fewer than a few rows behind for the next page. */
function fillPage(rows: readonly FlowBox[], first: number, across: number, room: number): Columns {
  const filled = fillColumns(rows, first, across, room);
  const over = rows.length - filled.next;
  const most = rows.length - LEAST_ROWS * across;
  if (over === 0 || over >= LEAST_ROWS * across || most - first < LEAST_ROWS * across) return filled;
  return fillColumns(rows.slice(0, most), first, across, room);
}

/** Rows in columns side by side, and the first row that is left over. */
interface Columns {
  readonly boxes: readonly (readonly FlowBox[])[];
  readonly next: number;
}

/** As many rows as fit into columns side by side; where all that is left fits, the columns end level. */
function fillColumns(rows: readonly FlowBox[], first: number, across: number, room: number): Columns {
  const left = rows.slice(first);
  const level = Math.max(sum(left) / across, Math.max(...left.map(({ height }) => height)));
  const fits = Number.isFinite(room) ? room : Number.POSITIVE_INFINITY;
  for (const most of [level, level * 1.05 + 4, fits]) {
    const { boxes, count } = fill(left, across, Math.min(most, fits));
    if (count === left.length || most === fits) return { boxes, next: first + Math.max(1, count) };
  }
  return { boxes: [left], next: rows.length };
}

function fill(rows: readonly FlowBox[], across: number, most: number): { boxes: FlowBox[][]; count: number } {
  const boxes: FlowBox[][] = [];
  let at = 0;
  for (let column = 0; column < across && at < rows.length; column++) {
    const box: FlowBox[] = [];
    let height = 0;
    while (at < rows.length && (box.length === 0 || height + rows[at]!.height <= most + 1e-6)) {
      height += rows[at]!.height;
      box.push(rows[at++]!);
    }
    boxes.push(box);
  }
  return { boxes, count: at };
}

function tallest(columns: readonly (readonly FlowBox[])[]): number {
  return Math.max(0, ...columns.map(sum));
}

function sum(boxes: readonly FlowBox[]): number {
  return boxes.reduce((total, { height }) => total + height, 0);
}

/** A head with the rows below it: upwards from where weaving begins, in a table that rises. They are read in weaving order. */
function columnShapes(head: FlowBox, rows: readonly FlowBox[], begin: FlowBox | undefined): Shape[] {
  if (begin === undefined) return stacked([head, ...rows]);
  let y = head.height + sum(rows);
  const risen = rows.map((box): Shape => {
    y -= box.height;
    return moved(box, y);
  });
  return [...head.shapes, moved(begin, head.height + sum(rows)), ...risen];
}

function stacked(boxes: readonly FlowBox[]): Shape[] {
  let y = 0;
  return boxes.map((box): Shape => {
    const group = moved(box, y);
    y += box.height;
    return group;
  });
}

function moved({ shapes }: FlowBox, y: number): Shape {
  return { kind: "group", x: 0, y, shapes };
}
