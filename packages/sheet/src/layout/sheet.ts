import { plainText } from "../document/text.js";
import type { Block, Paragraph, Part, Sheet } from "../document/types.js";
import { palette } from "../drawing/palette.js";
import { round } from "../drawing/round.js";
import type { Shape } from "../drawing/shape.js";
import { Flow } from "./flow.js";
import { layPictures } from "./pictures.js";
import { layTable } from "./table.js";
import { type } from "./types-of-text.js";
import { layWorking } from "./working.js";
import { linesHeight, runsLeft, setLines, wrap } from "./wrap.js";

/** Text is set no wider than this, so that an eye finds the next line. */
const MEASURE = 150;

/** Where less is left of a page than this, in mm, a short part begins on the next one. */
const SHORT_PART = 90;

/**
 * A sheet laid out on pages of a size.
 * @param width of the text in mm
 * @param height of the text in mm; `Infinity` for one page as long as it takes
 */
export function laySheet(sheet: Sheet, width: number, height: number): Flow {
  const flow = new Flow(width, height);
  layTitle(sheet, flow);
  for (const [i, part] of sheet.parts.entries()) {
    if (i > 0) {
      if (part.name === "cautions" && flow.room > SHORT_PART) flow.space(12);
      else if (Number.isFinite(height)) flow.nextPage();
      else flow.space(12);
    }
    layPart(part, flow);
  }
  return flow;
}

function layTitle({ title, subtitle }: Sheet, flow: Flow): void {
  const rtl = runsLeft(title);
  const lines = wrap(title, flow.width, type.title);
  const below = linesHeight(lines, type.title) + 2;
  const under = wrap(subtitle, flow.width, type.subtitle);
  const height = below + linesHeight(under, type.subtitle) + 4;
  const rule: Shape = {
    kind: "path",
    d: `M0 ${round(height)}h${round(flow.width)}`,
    stroke: palette.accent,
    width: 0.6,
  };
  flow.put({
    height,
    shapes: [
      ...setLines(lines, 0, 0, flow.width, type.title, rtl),
      ...setLines(under, 0, below, flow.width, type.subtitle),
      rule,
    ],
  });
  flow.space(9);
}

function layPart({ title, blocks }: Part, flow: Flow): void {
  flow.begin(title);
  const lines = wrap(title, flow.width, type.part);
  flow.put(
    { height: linesHeight(lines, type.part) + 2.5, shapes: setLines(lines, 0, 0, flow.width, type.part) },
    30,
  );
  for (const block of blocks) layBlock(block, flow);
}

function layBlock(block: Block, flow: Flow): void {
  if (block.kind === "paragraph") layParagraph(block, flow);
  else if (block.kind === "table") layTable(block, flow);
  else if (block.kind === "pictures") layPictures(block, flow);
  else layWorking(block, flow);
}

function layParagraph({ text, tone }: Paragraph, flow: Flow): void {
  const kind = tone === "note" ? type.note : type.body;
  const indent = tone === "caution" ? 5 : 0;
  const width = Math.min(MEASURE, flow.width) - indent;
  const lines = wrap(text, width, kind);
  const height = linesHeight(lines, kind);
  const rule: Shape[] =
    tone === "caution"
      ? [{ kind: "path", d: `M0.5 0v${round(height)}`, stroke: palette.accent, width: 0.8 }]
      : [];
  flow.space(tone === "lead" ? 0 : 3);
  flow.put({
    height: height + 1,
    shapes: [...rule, ...setLines(lines, indent, 0, width, kind, runsLeft(plainText(text)))],
  });
}
