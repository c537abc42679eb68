import { YarnError } from "../error.js";

/** A number at the start of a text and where it ends. */
export interface ScannedNumber {
  readonly value: number;
  readonly end: number;
}

const vulgar: Readonly<Record<string, number>> = {
  "¼": 0.25,
  "½": 0.5,
  "¾": 0.75,
  "⅛": 0.125,
  "⅜": 0.375,
  "⅝": 0.625,
  "⅞": 0.875,
};

/**
 * The number that a text begins with: `14`, `14.6`, `3/4`, `14 1/2`, `14½`, `1e3`.
 * @throws {YarnError} `no-number` when there is none, when it is cut by a comma, or when a fraction is divided by 0;
 * `not-finite` when it is too large to hold; with the `column` from 1
 * @example scanNumber("14 1/2 in") // { value: 14.5, end: 6 }
 */
export function scanNumber(text: string): ScannedNumber {
  const refuse = (code: "no-number" | "not-finite", why: string, at: number): YarnError =>
    new YarnError(code, `"${text}" ${why}`, { column: at + 1, text });
  const start = text.search(/\S|$/);
  const whole = matchAt(/[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?/iy, text, start);
  const lone = vulgar[text[start] ?? ""];
  if (whole === undefined && lone === undefined)
    throw refuse("no-number", "does not begin with a number", start);
  if (whole === undefined) return { value: lone!, end: start + 1 };

  let value = Number(whole);
  let end = start + whole.length;
  const sign = whole.startsWith("-") ? -1 : 1;
  const divided = matchAt(/ *[/⁄] *\d+/y, text, end);
  const added = matchAt(/(?: +|-)\d+ *[/⁄] *\d+/y, text, end);
  const glyph = matchAt(/ *[¼½¾⅛⅜⅝⅞]/y, text, end);
  if (divided !== undefined) {
    value /= Number(divided.replace(/\D/g, ""));
    end += divided.length;
  } else if (added !== undefined) {
    const [over, under] = added.match(/\d+/g)!.map(Number);
    value += (sign * over!) / under!;
    end += added.length;
  } else if (glyph !== undefined) {
    value += sign * vulgar[glyph.trim()]!;
    end += glyph.length;
  }
  if (text[end] === ",")
    throw refuse("no-number", "has a comma in its number; expected a decimal point, as in 1.5", end);
  if (!Number.isFinite(value)) throw refuse("not-finite", "is not a finite number", start);
  return { value, end };
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
