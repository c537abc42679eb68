import { runsLeft } from "./direction.js";
import { escapeText } from "./escape.js";
import { fontRuns } from "./font-runs.js";
import { textWidth } from "./metrics.js";
import { round } from "./round.js";
import type { Drawing, Face, Shape, TextShape } from "./shape.js";

/** How a drawing is named and set as SVG. */
export interface SvgOptions {
  /** Text for those who do not see the picture. */
  readonly alt: string;
  /** Start of the ids inside, so that many pictures may stand in one page; default `drawing`. */
  readonly id?: string;
  /** Stand alone (default) as a file, in millimetres; else as part of a page, as wide as there is room. */
  readonly standalone?: boolean;
}

/** Families by face, the printed one first, then what a reader's machine is likely to have. */
const families: Readonly<Record<"serif" | "sans", string>> = {
  serif: "'Source Serif 4','Source Serif Pro',Charter,Georgia,serif",
  sans: "'Source Sans 3','Source Sans Pro','Segoe UI','Helvetica Neue',Arial,sans-serif",
};

/**
 * A drawing as SVG text: real text, no scripts, nothing fetched.
 * @param drawing what is drawn, in mm
 * @param options what it shows in words, and whether it is a file of its own
 * @example toSvg({ width: 2, height: 1, shapes: [] }, { alt: "nothing" }).startsWith("<svg") // true
 */
export function toSvg(drawing: Drawing, options: SvgOptions): string {
  const { alt, id = "drawing", standalone = true } = options;
  const width = round(drawing.width);
  const height = round(drawing.height);
  const size = standalone ? ` width="${width}mm" height="${height}mm"` : ` style="max-width:${width}mm"`;
  const title = `<title id="${id}-title">${escapeText(alt)}</title>`;
  const body = drawing.shapes.map(shapeToSvg).join("\n");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"${size} role="img" aria-labelledby="${id}-title">${title}\n${body}\n</svg>`;
}

function shapeToSvg(shape: Shape): string {
  switch (shape.kind) {
    case "path": {
      const { d, frame, role, fill = "none" } = shape;
      const place =
        frame === undefined
          ? ""
          : ` transform="translate(${round(frame.x)} ${round(frame.y)}) scale(${six(frame.sx)} ${six(frame.sy)})"`;
      const named = role === undefined ? "" : ` data-role="${escapeText(role)}"`;
      return `<path d="${d}" fill="${fill}"${strokeOf(shape.stroke, shape.width, shape.dash)}${place}${named}/>`;
    }
    case "rect": {
      const { x, y, width, height, fill = "none" } = shape;
      return `<rect x="${round(x)}" y="${round(y)}" width="${round(width)}" height="${round(height)}" fill="${fill}"${strokeOf(shape.stroke, shape.strokeWidth, shape.dash)}/>`;
    }
    case "text":
      return textToSvg(shape);
    case "group": {
      const { x, y, shapes } = shape;
      if (x === 0 && y === 0 && shape.scale === undefined) return shapes.map(shapeToSvg).join("\n");
      const scale = shape.scale === undefined ? "" : ` scale(${six(shape.scale)})`;
      return `<g transform="translate(${round(x)} ${round(y)})${scale}">${shapes.map(shapeToSvg).join("\n")}</g>`;
    }
  }
}

/** Cells may be small, and there are many of them in a row: their size keeps six decimals. */
function six(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}

function strokeOf(stroke?: string, width = 0.1, dash?: readonly number[]): string {
  if (stroke === undefined) return "";
  const dashes = dash === undefined ? "" : ` stroke-dasharray="${dash.map(round).join(" ")}"`;
  return ` stroke="${stroke}" stroke-width="${round(width)}"${dashes}`;
}

function textToSvg(shape: TextShape): string {
  const { x, y, text, size, face, fill } = shape;
  return `<text x="${round(x)}" y="${round(y)}" ${fontOf(face)} font-size="${round(size)}" fill="${fill}"${placeOf(shape)}${widthOf(shape)}>${spans(text)}</text>`;
}

/**
 * Where a line stands by its `x`. In a line that runs from right to left the start is at its right, so that marks at its
 * end stand at its left.
 */
function placeOf({ text, anchor = "start", rtl = runsLeft(text) }: TextShape): string {
  const towards = { start: "end", middle: "middle", end: "start" } as const;
  const at = rtl ? towards[anchor] : anchor;
  return `${rtl ? ' direction="rtl"' : ""}${at === "start" ? "" : ` text-anchor="${at}"`}`;
}

/**
 * Words keep the width for which the page is laid out, whatever font a reader's machine has. Numbers are short, and other
 * scripts join their letters, so these keep their own.
 */
function widthOf({ text, size, face }: TextShape): string {
  if (text.length < 4 || fontRuns(text).some(({ script }) => script !== "latin")) return "";
  return ` textLength="${round(textWidth(text, size, face))}" lengthAdjust="spacingAndGlyphs"`;
}

function fontOf(face: Face): string {
  const weight = face.endsWith("-bold") ? ' font-weight="600"' : "";
  const slant = face.endsWith("-italic") ? ' font-style="italic"' : "";
  return `font-family="${families[face.startsWith("serif") ? "serif" : "sans"]}"${weight}${slant}`;
}

/** Letters of other scripts name their font, for readers whose first font has none. */
function spans(text: string): string {
  return fontRuns(text)
    .map(({ text: run, script }) =>
      script === "latin"
        ? escapeText(run)
        : `<tspan font-family="${scriptFamilies[script]}" font-weight="400" font-style="normal">${escapeText(run)}</tspan>`,
    )
    .join("");
}

const scriptFamilies = {
  hebrew: "'Noto Sans Hebrew',sans-serif",
  arabic: "'IBM Plex Sans Arabic',sans-serif",
  emoji: "'Noto Emoji',sans-serif",
} as const;
