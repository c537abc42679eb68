import { boundOf } from "../document/bound.js";
import type { Bound, Document } from "../document/types.js";
import { runsLeft } from "../drawing/direction.js";
import { textWidth } from "../drawing/metrics.js";
import { palette } from "../drawing/palette.js";
import type { Shape } from "../drawing/shape.js";
import { layDocument } from "../layout/document.js";
import type { FilledPage } from "../layout/flow.js";
import { roomWide } from "../layout/room.js";
import { type } from "../layout/types-of-text.js";
import { type FontName, fontNames } from "./font-names.js";
import { joined, packed } from "./packed.js";
import { paint } from "./paint.js";
import { Structure } from "./structure.js";

/** Papers by name, in mm. */
export const papers = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;

/** A size of paper: `a4` or `letter`. */
export type Paper = keyof typeof papers;

const PT = 72 / 25.4;
const TOP = 22;
const BOTTOM = 20;

/**
 * A document as a PDF with fonts that are fetched from wherever they are: what `toPdf` does with those that are installed.
 * The bytes are the same in Node and in a browser.
 * @param document what is printed; several are bound one after another, each with page numbers of its own
 * @param fontOf fetches the bytes of a font (TrueType)
 * @param paper default `a4`
 * @example new TextDecoder().decode((await pdfWith(document, installedFont)).subarray(0, 5)) // "%PDF-"
 */
export async function pdfWith(
  document: Document | Bound,
  fontOf: (name: FontName) => Promise<Uint8Array>,
  paper: Paper = "a4",
): Promise<Uint8Array> {
  const { default: PdfDocument } = await import("pdfkit");
  const { width, height } = papers[paper];
  const bound = boundOf(document);
  const doc = new PdfDocument({
    size: [width * PT, height * PT],
    margin: 0,
    autoFirstPage: false,
    // Only the fonts of the page are used, and no other is looked for.
    font: "",
    pdfVersion: "1.7",
    lang: "en",
    displayTitle: true,
    tagged: true,
    info: { Title: bound[0].title, Creator: "Drawcord", Producer: "Drawcord", CreationDate: new Date(0) },
  });
  const bytes = collect(doc);
  packed(doc);
  const fonts = await Promise.all(fontNames.map(fontOf));
  for (const [i, name] of fontNames.entries()) doc.registerFont(name, fonts[i]!);
  const root = doc.struct("Document");
  doc.addStructure(root);
  const structure = new Structure(doc, root);
  const left = (width - roomWide) / 2;
  for (const one of bound) {
    const outline = bound.length === 1 ? doc.outline : undefined;
    const { pages } = layDocument(one, roomWide, height - TOP - BOTTOM);
    for (const [i, page] of pages.entries()) {
      doc.addPage();
      if (outline === undefined && i === 0) doc.outline.addItem(one.title);
      for (const part of page.begins) outline?.addItem(part);
      doc.save();
      doc.scale(PT);
      paint(
        doc,
        [
          ...(i === 0 ? [] : head(one, page, left)),
          { kind: "group", x: left, y: TOP, shapes: page.shapes },
          foot(i + 1, pages.length, width, height),
        ],
        structure,
      );
      doc.restore();
    }
  }
  doc.end();
  return bytes;
}

function collect(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", () => resolve(joined(chunks)));
    doc.on("error", reject);
  });
}

/** The title, cut where it is long, and the part. */
function head({ title }: Document, { part }: FilledPage, left: number): Shape[] {
  const { size, face, fill } = type.running;
  const partWidth = textWidth(part, size, face);
  const shown = fitted(title, roomWide - partWidth - 12);
  const rtl = runsLeft(title);
  const running = { kind: "text", y: 14, size, face, fill } as const;
  return [
    { ...running, x: left, text: rtl ? part : shown },
    { ...running, x: left + roomWide, text: rtl ? shown : part, anchor: "end" },
    { kind: "path", d: `M${left} 16h${roomWide}`, stroke: palette.hair, width: 0.15 },
  ];
}

function fitted(text: string, width: number): string {
  const { size, face } = type.running;
  if (textWidth(text, size, face) <= width) return text;
  const chars = [...text];
  let used = textWidth("…", size, face);
  let kept = 0;
  while (kept < chars.length) {
    used += textWidth(chars[kept]!, size, face);
    if (used > width) break;
    kept++;
  }
  return `${chars.slice(0, kept).join("").trimEnd()}…`;
}

function foot(number: number, of: number, width: number, height: number): Shape {
  const { size, face, fill } = type.running;
  return {
    kind: "text",
    x: width / 2,
    y: height - 11,
    text: `${number} / ${of}`,
    size,
    face,
    fill,
    anchor: "middle",
  };
}
