export { exercise, key } from "./document/exercise.js";
export {
  type Block,
  type Column,
  type Paragraph,
  type Part,
  type PartName,
  type Picture,
  type Pictures,
  partNames,
  type Sheet,
  type Table,
  type Text,
  type Words,
  type Working,
} from "./document/types.js";
export type { Drawing, Face, Shape } from "./drawing/shape.js";
export { SheetError, type SheetErrorCode } from "./error.js";
export type { Formula } from "./formula/types.js";
export { type HtmlOptions, toHtml } from "./html/page.js";
export { type MarkdownOptions, toMarkdown } from "./markdown.js";
export type { SheetOptions } from "./parts/context.js";
export type { Corner } from "./pictures/corner.js";
export type { Reading } from "./pictures/unit-threading.js";
export { makeSheet } from "./sheet.js";
export { partToSvg, pictureToSvg } from "./svg.js";
