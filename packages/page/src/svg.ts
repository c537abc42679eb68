import type { Document, Part, Picture } from "./document/types.js";
import { palette } from "./drawing/palette.js";
import type { Drawing } from "./drawing/shape.js";
import { toSvg } from "./drawing/svg.js";
import { layDocument } from "./layout/document.js";
import { roomWide } from "./layout/room.js";

const MARGIN = 15;

/** A document, or some parts of one, as one drawing on a page as long as it takes. */
function documentDrawing(document: Document): Drawing {
  const flow = layDocument(document, roomWide, Number.POSITIVE_INFINITY);
  const [page] = flow.pages as [(typeof flow.pages)[0]];
  const width = roomWide + 2 * MARGIN;
  const height = page.filled + 2 * MARGIN;
  return {
    width,
    height,
    shapes: [
      { kind: "rect", x: 0, y: 0, width, height, fill: palette.paper },
      { kind: "group", x: MARGIN, y: MARGIN, shapes: page.shapes },
    ],
  };
}

/**
 * One part of a document as an SVG file, under the document's title.
 * @param document the document whose title stands over it
 * @param part one of its parts
 * @example partToSvg(document, document.parts[0]).startsWith("<svg") // true
 */
export function partToSvg(document: Document, part: Part): string {
  const alt = `${document.title}: ${part.title}`;
  return `${toSvg(documentDrawing({ ...document, parts: [part] }), { alt, id: part.name })}\n`;
}

/**
 * One picture of a document as an SVG file, without title or caption.
 * @param picture a picture of a document
 * @example pictureToSvg(picture).includes("data-role") // true
 */
export function pictureToSvg({ drawing, alt, id }: Picture): string {
  return `${toSvg(drawing, { alt, id })}\n`;
}
