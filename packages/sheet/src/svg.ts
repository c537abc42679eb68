import type { Part, Picture, Sheet } from "./document/types.js";
import { palette } from "./drawing/palette.js";
import type { Drawing } from "./drawing/shape.js";
import { toSvg } from "./drawing/svg.js";
import { laySheet } from "./layout/sheet.js";
import { roomWide } from "./pictures/size.js";

const MARGIN = 15;

/** A sheet, or some parts of one, as one drawing on a page as long as it takes. */
function sheetDrawing(sheet: Sheet): Drawing {
  const flow = laySheet(sheet, roomWide, Number.POSITIVE_INFINITY);
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
 * One part of a sheet as an SVG file, under the sheet's title.
 * @example partToSvg(sheet, sheet.parts[0]).startsWith("<svg") // true
 */
export function partToSvg(sheet: Sheet, part: Part): string {
  const alt = `${sheet.title}: ${part.title}`;
  return `${toSvg(sheetDrawing({ ...sheet, parts: [part] }), { alt, id: part.name })}\n`;
}

/**
 * One picture of a sheet as an SVG file, without title or caption.
 * @example pictureToSvg(picture).includes("data-role") // true
 */
export function pictureToSvg({ drawing, alt, id }: Picture): string {
  return `${toSvg(drawing, { alt, id })}\n`;
}
