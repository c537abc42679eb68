export { plainText } from "./document/text.js";
export type {
  Block,
  Bound,
  Column,
  Document,
  Paragraph,
  Part,
  Picture,
  Pictures,
  Table,
  TableHead,
  Text,
  Words,
  WorkingBlock,
} from "./document/types.js";
export { textWidth } from "./drawing/metrics.js";
export { palette } from "./drawing/palette.js";
export { round } from "./drawing/round.js";
export type {
  CellFrame,
  Drawing,
  Face,
  GroupShape,
  PathShape,
  RectShape,
  Shape,
  Tag,
  TextShape,
} from "./drawing/shape.js";
export { type SvgOptions, toSvg } from "./drawing/svg.js";
export { toMathml } from "./formula/mathml.js";
export { formulaText } from "./formula/text.js";
export type { TypesetFormula } from "./formula/types.js";
export { type HtmlOptions, toHtml } from "./html/page.js";
export { type ScriptedPage, scriptedPage } from "./html/scripted.js";
export { toSlides } from "./html/slides.js";
export { BETWEEN_PICTURES, NARROWEST_PICTURE, roomHigh, roomWide } from "./layout/room.js";
export { type MarkdownOptions, toMarkdown } from "./markdown.js";
export { partToSvg, pictureToSvg } from "./svg.js";
