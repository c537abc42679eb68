import { boundOf } from "../document/bound.js";
import { type Leaf, leavesOf } from "../document/leaves.js";
import { boxesOf, plainText, wordsOf } from "../document/text.js";
import type {
  Block,
  Bound,
  Column,
  Document,
  Part,
  Picture,
  Pictures,
  Table,
  Text,
  WorkingBlock,
} from "../document/types.js";
import { escapeText } from "../drawing/escape.js";
import { round } from "../drawing/round.js";
import { toSvg } from "../drawing/svg.js";
import { toMathml } from "../formula/mathml.js";
import type { TypesetFormula } from "../formula/types.js";
import { pilesOf } from "../layout/piles.js";
import { NARROWEST_PICTURE, roomWide } from "../layout/room.js";
import { boxedWords, NO_BOX } from "../layout/table-columns.js";
import { isLong } from "../layout/working.js";
import { documentStyle } from "./style.js";

/** Room that a caption takes below its picture, in mm. */
const CAPTION = 8;

/** A table of so many rows is not cut by a page's end in print. */
const SHORT = 24;

/** How a page is made. */
export interface HtmlOptions {
  /** The paper a browser prints it on; default `a4`. */
  readonly paper?: "a4" | "letter";
}

/**
 * A document as one HTML page that needs nothing else: no script, no font or picture from elsewhere, and a policy that lets
 * none in. Several are articles of one page, each printed from a sheet of its own on.
 * @param document the document, or several bound in one
 * @param options the paper that it is printed on
 * @example toHtml(document).startsWith("<!doctype html>") // true
 */
export function toHtml(document: Document | Bound, options: HtmlOptions = {}): string {
  const page = options.paper === "letter" ? "letter" : "a4";
  const bound = boundOf(document);
  const title = escapeText(bound[0].title);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${title}</title>
<style>
${documentStyle}
@page{size:${page};margin:18mm 20mm}
</style>
</head>
<body>
${bound.length === 1 ? alone(bound[0]) : `<main>\n${bound.map(article).join("\n")}\n</main>`}
</body>
</html>
`;
}

function alone(document: Document): string {
  return `${heading(document)}
${contents(document)}<main>
${document.parts.map((part) => section(part)).join("\n")}
</main>`;
}

function article(document: Document): string {
  const parts = document.parts.map((part) => section(part, "")).join("\n");
  // Tables of one caption come in several documents; as groups they need no name of their own.
  return `<article>
${heading(document)}
${parts.replaceAll(' role="region"', ' role="group"')}
</article>`;
}

function heading({ subtitle, title }: Document): string {
  return `<header>
<h1 dir="auto">${escapeText(title)}</h1>
<p>${escapeText(subtitle)}</p>
</header>`;
}

function contents({ parts }: Document): string {
  if (parts.length < 2) return "";
  const items = parts.map(({ name, title }) => `<li><a href="#${name}">${escapeText(title)}</a></li>`);
  return `<nav aria-label="Contents"><ul>\n${items.join("\n")}\n</ul></nav>\n`;
}

/** @param label makes it a landmark; parts of bound documents have one title several times, and are none */
function section({ name, title, blocks }: Part, label = ` aria-labelledby="${name}-title"`): string {
  return `<section id="${name}"${label}>
<h2 id="${name}-title">${escapeText(title)}</h2>
${blocks.map(blockHtml).join("\n")}
</section>`;
}

/** A block as HTML. */
export function blockHtml(from: Block): string {
  switch (from.kind) {
    case "paragraph": {
      if (from.tone === "heading") return `<h3 dir="auto">${inline(from.text)}</h3>`;
      const tone = from.tone === undefined || from.tone === "lead" ? "" : ` class="${from.tone}"`;
      return `<p${tone} dir="auto">${inline(from.text)}</p>`;
    }
    case "table":
      return table(from);
    case "pictures":
      return pictures(from);
    case "working":
      return working(from);
  }
}

/** A range of numbers, which no line end may tear. */
const RANGE = /\d+[-–]\d+/g;

function inline(text: Text): string {
  return wordsOf(text)
    .map((words) => {
      const body = /^_+$/.test(words.text)
        ? `<span class="blank"${roomOf(words.text.length)}><span class="unseen">to fill in</span>&nbsp;</span>`
        : escapeText(words.text).replace(RANGE, '<span class="whole">$&</span>');
      if (words.low) return `<sub>${body}</sub>`;
      return words.strong ? `<strong>${body}</strong>` : body;
    })
    .join("");
}

/** A blank longer than the usual is as wide as that many letters. */
function roomOf(letters: number): string {
  return letters <= 10 ? "" : ` style="min-width:min(${round(letters * 0.5)}em,100%)"`;
}

function table(from: Table): string {
  const leaves = leavesOf(from);
  return leaves.map((leaf, i) => leafHtml(from, leaf, i, leaves.length)).join("\n");
}

/** A table, or one leaf of it: what stands in it rises or falls, its heads stand with the rows that they are of. */
function leafHtml(from: Table, leaf: Leaf, number: number, of: number): string {
  const { columns, rising = false } = from;
  const id = number === 0 ? from.id : `${from.id}-${number + 1}`;
  const caption = of === 1 ? from.caption : `${from.caption} Leaf ${number + 1} of ${of}.`;
  const head = columns.map(({ title, kind }) => `<th scope="col"${classOf(kind)}>${escapeText(title)}</th>`);
  const body: string[] = [];
  for (let row = leaf.start; row < leaf.end; row++) {
    const heading = from.heads?.find((one) => one.row === row);
    if (heading !== undefined) {
      body.push(
        `<tr class="heading"><th scope="rowgroup" colspan="${columns.length}">${inline(heading.text)}</th></tr>`,
      );
    }
    body.push(rowHtml(from, row));
  }
  if (rising) body.reverse();
  const kinds = [
    "table scroll",
    ...(from.narrow ? ["narrow"] : []),
    ...(from.large ? ["large"] : []),
    ...(rising ? ["rising"] : []),
    ...(leaf.end - leaf.start <= SHORT ? ["short"] : []),
  ].join(" ");
  const begin = rising
    ? `<tfoot><tr><td colspan="${columns.length}"><span aria-hidden="true">▲</span> begin here</td></tr></tfoot>\n`
    : "";
  return `<div class="${kinds}" role="region" tabindex="0" aria-labelledby="${id}-caption">
<table id="${id}"><caption id="${id}-caption"><span>${escapeText(caption)}</span></caption>
<thead><tr>${head.join("")}</tr></thead>
<tbody>
${body.join("\n")}
</tbody>
${begin}</table></div>`;
}

function rowHtml({ columns, rows, band, heads = [] }: Table, index: number): string {
  const row = rows[index]!;
  const named = columns.findIndex(({ kind }) => kind === "head");
  const at = named < 0 ? columns.findIndex(({ kind }) => kind === "boxes") : named;
  const name = plainText(row[at] ?? "");
  const first = heads.findLast((one) => one.row <= index)?.row ?? 0;
  const tinted = band !== undefined && Math.floor((index - first) / band) % 2 === 1;
  const cells = row.map((text, i) => cell(text, columns[i]!, name, i === at));
  return `<tr${tinted ? ' class="tint"' : ""}>${cells.join("")}</tr>`;
}

function cell(text: Text, { title, kind }: Column, name: string, names: boolean): string {
  if (kind === "tick")
    return `<td class="tick">${boxes(boxesOf(text), `${name}: ${title.toLowerCase()}`)}</td>`;
  if (kind === "boxes") {
    const all = boxedWords(text).map((word) =>
      word === NO_BOX
        ? `<span class="no-box">${word}</span>`
        : `<label><input type="checkbox">${escapeText(word)}</label>`,
    );
    const body = `<span class="boxed">${all.join(" ")}</span>`;
    return names ? `<th scope="row">${body}</th>` : `<td>${body}</td>`;
  }
  if (kind === "swatch") return `<td>${swatch(plainText(text))}</td>`;
  if (kind !== "head") return `<td${classOf(kind)}>${inline(text)}</td>`;
  const phrase = name.includes(" ") ? ' class="phrase"' : "";
  return `<th scope="row"${phrase}>${inline(text)}</th>`;
}

/** A patch of a yarn's colour, named by its code for those who do not see it. */
function swatch(hex: string): string {
  return hex === ""
    ? ""
    : `<svg class="swatch" viewBox="0 0 14 7" role="img"><title>${hex}</title><rect width="14" height="7" fill="${hex}"/></svg>`;
}

function boxes(number: number, name: string): string {
  const box = (label: string) => `<input type="checkbox" aria-label="${escapeText(label)}">`;
  if (number === 1) return box(name);
  const all = Array.from({ length: number }, (_, i) => box(`${name}, repeat ${i + 1}`));
  return `<span class="boxes">${all.join("")}</span>`;
}

function classOf(kind: Column["kind"]): string {
  return kind === "number" || kind === "tick" ? ` class="${kind}"` : "";
}

/** Pictures as they stand on paper: side by side where there is room, low ones piled up beside a tall one. */
function pictures({ pictures: list }: Pictures): string {
  const sized = list.map((picture) => {
    const { width, height } = picture.drawing;
    return { picture, width: Math.max(NARROWEST_PICTURE, width), height: height + CAPTION };
  });
  const piles = pilesOf(sized, roomWide).flat();
  const html = piles.map(({ items }) => {
    const figures = items.map(({ picture }) => figure(picture)).join("\n");
    return items.length === 1 ? figures : `<div class="pile">\n${figures}\n</div>`;
  });
  return `<div class="pictures">\n${html.join("\n")}\n</div>`;
}

/** A wide picture may shrink on a phone to seven tenths of its size; past that it is moved sideways. */
function figure({ id, caption, alt, drawing }: Picture): string {
  const width = round(drawing.width);
  const least = Math.min(width, Math.max(84, round(width * 0.7)));
  const svg = toSvg(drawing, { alt, id, standalone: false }).replace(
    /style="[^"]*"/,
    `style="width:${width}mm;max-width:100%;min-width:${least}mm"`,
  );
  const said = caption === "" ? "" : `<figcaption>${escapeText(caption)}</figcaption>`;
  return `<figure id="${id}"><div class="scroll" role="region" tabindex="0" aria-label="${escapeText(`Picture: ${caption || alt}`)}">${svg}</div>${said}</figure>`;
}

function working(from: WorkingBlock): string {
  return `<div class="working${isLong(from) ? " long" : ""}" id="${from.id}">
<h3>${escapeText(from.title)}</h3>
<div class="formulas">
${formula(from.formula, "Formula")}
${formula(from.substitution, "Its numbers")}
<p><strong>${escapeText(from.result)}</strong></p>
</div>
<div class="meaning">
<ul>${from.symbols.map((symbol) => `<li>${inline(symbol)}</li>`).join("")}</ul>
<p class="note">Source: ${escapeText(from.source)}</p>
</div>
</div>`;
}

/** A formula longer than a phone is wide is moved sideways. */
function formula(from: TypesetFormula, name: string): string {
  return `<div class="scroll formula" role="group" tabindex="0" aria-label="${name}">${toMathml(from)}</div>`;
}
