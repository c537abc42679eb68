import { boundOf } from "../document/bound.js";
import type { Block, Bound, Document, Part } from "../document/types.js";
import { escapeText } from "../drawing/escape.js";
import { script, scriptHash, style } from "../generated/slides.js";
import { blockHtml } from "./page.js";
import { scriptedPage } from "./scripted.js";
import { documentStyle } from "./style.js";

/** A table longer than this is shown on several slides, so that its type stays large. */
const MOST_ROWS = 8;

/**
 * A document as slides for a projector: one thing a slide, large, in one HTML page that needs nothing else. The arrows, space,
 * page up and down, home and end step through them; printed, or without its script, they stand one after another.
 * @param document what is shown; several are shown one after another
 * @example toSlides(document).includes('class="slide"') // true
 */
export function toSlides(document: Document | Bound): string {
  const bound = boundOf(document);
  const slides = bound.flatMap((one) => [titleSlide(one), ...one.parts.flatMap(partSlides)]);
  const body = slides.map((slide, i) => {
    const name = `${i + 1} of ${slides.length}`;
    return `<section class="slide" id="slide-${i + 1}" tabindex="-1" aria-label="${name}">${slide}</section>`;
  });
  return scriptedPage({
    title: bound[0].title,
    script,
    scriptHash,
    style: `\n${documentStyle}\n${style}\n`,
    body: `<main>
${body.join("\n")}
</main>
<nav aria-label="Slides"><button type="button" id="back">Back</button><p id="where" role="status"></p><button type="button" id="on">On</button></nav>`,
  });
}

function titleSlide({ subtitle, title }: Document): string {
  return `<h1 dir="auto">${escapeText(title)}</h1>\n<p>${escapeText(subtitle)}</p>`;
}

/** The slides of a part: headings open one, paragraphs stand with what follows them. */
function partSlides({ blocks, title }: Part): readonly string[] {
  const slides: string[] = [];
  let heading = title;
  let said: string[] = [];
  const put = (html: string) => {
    slides.push(`<h2>${escapeText(heading)}</h2>\n${[...said, html].join("\n")}`);
    said = [];
  };
  for (const block of blocks) {
    if (block.kind === "paragraph" && block.tone === "heading") {
      if (said.length > 0) put("");
      heading = typeof block.text === "string" ? block.text : block.text.map(({ text }) => text).join("");
    } else if (block.kind === "paragraph") {
      if (said.length > 1) put("");
      said.push(blockHtml(block));
    } else {
      if (said.length > 0 && block.kind !== "working") put("");
      for (const one of single(block)) put(blockHtml(one));
    }
  }
  if (said.length > 0) put("");
  return slides;
}

/** A block as blocks that each fill a slide: a picture each, and tables of few rows. */
function single(block: Block): readonly Block[] {
  if (block.kind === "pictures")
    return block.pictures.map((picture) => ({ kind: "pictures", pictures: [picture] }));
  if (block.kind !== "table" || block.rows.length <= MOST_ROWS) return [block];
  const { heads: _heads, rising: _rising, ...table } = block;
  return Array.from({ length: Math.ceil(block.rows.length / MOST_ROWS) }, (_, i) => ({
    ...table,
    id: i === 0 ? block.id : `${block.id}-slide-${i + 1}`,
    rows: block.rows.slice(i * MOST_ROWS, (i + 1) * MOST_ROWS),
  }));
}
