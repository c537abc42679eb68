import { plainText } from "../document/text.js";
import type { Block, Document, Paragraph, Part, Text } from "../document/types.js";
import { runsLeft } from "../drawing/direction.js";
import { palette } from "../drawing/palette.js";
import { round } from "../drawing/round.js";
import type { Shape } from "../drawing/shape.js";
import { Flow } from "./flow.js";
import { layPictures } from "./pictures.js";
import { layTable } from "./table.js";
import { tagged } from "./tagged.js";
import { type } from "./types-of-text.js";
import { layWorking } from "./working.js";
import { linesHeight, setLines, wrap } from "./wrap.js";

/** Text is set no wider than this, so that an eye finds the next line. */
const MEASURE = 150;

/** Room above a part that begins on the same page as the one before. */
const BETWEEN_PARTS = 12;

/** More of a page than this is not left empty for the sake of keeping a short part whole. */
const MOST_EMPTY = 0.5;

/**
 * A document laid out on pages of a size.
 * @param width of the text in mm
 * @param height of the text in mm; `Infinity` for one page as long as it takes
 */
export function layDocument(document: Document, width: number, height: number): Flow {
  const flow = new Flow(width, height);
  layTitle(document, flow);
  for (const [i, part] of document.parts.entries()) {
    if (i > 0) {
      if (fitsHere(part, flow)) flow.space(BETWEEN_PARTS);
      else flow.nextPage();
    }
    layPart(part, flow);
  }
  return flow;
}

/**
 * Whether a part goes on with the page. One that fits does; one that a page of its own holds whole gets that page, unless
 * too much of this one stayed empty; a longer one goes on where its heading has more than a word of it below.
 */
function fitsHere(part: Part, flow: Flow): boolean {
  if (!Number.isFinite(flow.height)) return true;
  const here = tried(part, flow.fork());
  if (here.pages.length === 1) return true;
  const isShort = tried(part, new Flow(flow.width, flow.height)).pages.length === 1;
  if (isShort && flow.room < MOST_EMPTY * flow.height) return false;
  const opening = part.blocks.findIndex(({ kind }) => kind !== "paragraph");
  const lead = tried({ ...part, blocks: part.blocks.slice(0, opening) }, flow.fork());
  return lead.pages.length === 1 && here.pages[0]!.filled > lead.pages[0]!.filled;
}

function tried(part: Part, flow: Flow): Flow {
  flow.space(BETWEEN_PARTS);
  layPart(part, flow);
  return flow;
}

function layTitle({ title, subtitle }: Document, flow: Flow): void {
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
      tagged({ role: "H1" }, setLines(lines, 0, 0, flow.width, type.title, rtl)),
      tagged({ role: "P" }, setLines(under, 0, below, flow.width, type.subtitle)),
      rule,
    ],
  });
  flow.space(9);
}

function layPart({ title, blocks }: Part, flow: Flow): void {
  const lines = wrap(title, flow.width, type.part);
  const height = linesHeight(lines, type.part) + 2.5;
  flow.need(height + 30);
  flow.begin(title);
  flow.put({ height, shapes: [tagged({ role: "H2" }, setLines(lines, 0, 0, flow.width, type.part))] });
  for (const [i, block] of blocks.entries()) {
    const next = blocks[i + 1];
    if (isHeading(block) && next?.kind === "pictures") keepTogether([block, next], flow);
    layBlock(block, flow);
  }
}

function isHeading(block: Block): boolean {
  return block.kind === "paragraph" && block.tone === "heading";
}

/** Goes on to the next page where it holds whole what this one would tear. */
function keepTogether(blocks: readonly Block[], flow: Flow): void {
  const pagesOn = (trial: Flow) => {
    for (const block of blocks) layBlock(block, trial);
    return trial.pages.length;
  };
  if (pagesOn(flow.fork()) > 1 && pagesOn(new Flow(flow.width, flow.height)) === 1) flow.nextPage();
}

function layBlock(block: Block, flow: Flow): void {
  if (block.kind === "paragraph") layParagraph(block, flow);
  else if (block.kind === "table") layTable(block, flow);
  else if (block.kind === "pictures") layPictures(block, flow);
  else layWorking(block, flow);
}

/** Room that what follows a heading within a part must find on the page, in mm. */
const UNDER_HEADING = 45;

function layHeading(text: Text, flow: Flow): void {
  const lines = wrap(plainText(text), flow.width, type.item);
  const height = linesHeight(lines, type.item) + 1;
  flow.space(6);
  flow.put(
    { height, shapes: [tagged({ role: "H3" }, setLines(lines, 0, 0, flow.width, type.item))] },
    UNDER_HEADING,
  );
}

function layParagraph({ text, tone }: Paragraph, flow: Flow): void {
  if (tone === "heading") {
    layHeading(text, flow);
    return;
  }
  const kind = tone === "note" ? type.note : type.body;
  const indent = tone === "caution" ? 5 : 0;
  const width = Math.min(MEASURE, flow.width) - indent;
  const lines = wrap(text, width, kind);
  const height = linesHeight(lines, kind);
  const rule: Shape[] =
    tone === "caution"
      ? [{ kind: "path", d: `M0.5 0v${round(height)}`, stroke: palette.accent, width: 0.8 }]
      : [];
  flow.space(tone === "lead" ? 0 : 3.5);
  flow.put({
    height: height + 1,
    shapes: [
      ...rule,
      tagged({ role: "P" }, setLines(lines, indent, 0, width, kind, runsLeft(plainText(text)))),
    ],
  });
}
