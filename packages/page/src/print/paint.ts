import { runsLeft } from "../drawing/direction.js";
import { showable } from "../drawing/escape.js";
import type { GroupShape, PathShape, RectShape, Shape, TextShape } from "../drawing/shape.js";
import type { FontName } from "./font-names.js";
import type { Structure } from "./structure.js";
import { textRuns } from "./text-runs.js";

/**
 * Paints shapes in millimetres on a page whose unit has been set to one.
 * @param structure where their tags go; nothing inside of a tag that holds no others
 */
export function paint(
  doc: PDFKit.PDFDocument,
  shapes: readonly Shape[],
  structure: Structure | undefined,
): void {
  for (const shape of shapes) {
    if (shape.kind === "group") paintGroup(doc, shape, structure);
    else if (structure === undefined) paintOne(doc, shape);
    else structure.artifact(() => paintOne(doc, shape));
  }
}

function paintGroup(
  doc: PDFKit.PDFDocument,
  { x, y, scale, shapes, tag }: GroupShape,
  structure: Structure | undefined,
): void {
  const placed = x !== 0 || y !== 0 || scale !== undefined;
  if (placed) {
    doc.save();
    doc.translate(x, y);
    if (scale !== undefined) doc.scale(scale);
  }
  if (structure === undefined || tag === undefined) paint(doc, shapes, structure);
  else structure.tagged(tag, (below) => paint(doc, shapes, below));
  if (placed) doc.restore();
}

function paintOne(doc: PDFKit.PDFDocument, shape: PathShape | RectShape | TextShape): void {
  if (shape.kind === "path") paintPath(doc, shape);
  else if (shape.kind === "rect") paintRect(doc, shape);
  else paintText(doc, shape);
}

function paintPath(doc: PDFKit.PDFDocument, { d, fill, stroke, width = 0.1, dash, frame }: PathShape): void {
  if (d === "") return;
  doc.save();
  if (frame !== undefined) doc.transform(frame.sx, 0, 0, frame.sy, frame.x, frame.y);
  doc.path(d);
  finish(doc, fill, stroke, width, dash);
  doc.restore();
}

function paintRect(
  doc: PDFKit.PDFDocument,
  { x, y, width, height, fill, stroke, strokeWidth = 0.1, dash }: RectShape,
): void {
  doc.save();
  doc.rect(x, y, width, height);
  finish(doc, fill, stroke, strokeWidth, dash);
  doc.restore();
}

function finish(
  doc: PDFKit.PDFDocument,
  fill: string | undefined,
  stroke: string | undefined,
  width: number,
  dash: readonly number[] | undefined,
): void {
  if (stroke !== undefined) doc.lineWidth(width);
  if (stroke !== undefined && dash !== undefined) doc.dash(dash[0]!, { space: dash[1] ?? dash[0]! });
  if (fill !== undefined && stroke !== undefined) doc.fillAndStroke(fill, stroke);
  else if (fill !== undefined) doc.fill(fill);
  else if (stroke !== undefined) doc.stroke(stroke);
}

/** Runs are written in the order in which they are read, each where it stands, so that the text copies out as it was. */
function paintText(
  doc: PDFKit.PDFDocument,
  { x, y, text, size, face, fill, anchor = "start", rtl = runsLeft(text) }: TextShape,
): void {
  const { runs, fromLeft } = textRuns(showable(text), face, rtl);
  const widths = runs.map(({ text: run, font }) => widthOf(doc, run, font, size));
  const whole = widths.reduce((sum, one) => sum + one, 0);
  const places = new Array<number>(runs.length).fill(0);
  let at = x - (anchor === "end" ? whole : anchor === "middle" ? whole / 2 : 0);
  for (const run of fromLeft) {
    places[run] = at;
    at += widths[run]!;
  }
  doc.fillColor(fill);
  for (const [i, { text: run, font }] of runs.entries()) {
    doc.font(font).fontSize(size);
    doc.text(run, places[i]!, y, { lineBreak: false, baseline: "alphabetic" });
  }
}

function widthOf(doc: PDFKit.PDFDocument, text: string, font: FontName, size: number): number {
  return doc.font(font).fontSize(size).widthOfString(text);
}
