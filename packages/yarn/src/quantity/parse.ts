import { nearest } from "@drawcord/base";
import { YarnError } from "../error.js";
import { checkShort } from "../short.js";
import { scanNumber } from "./number.js";
import { type Kind, kinds, type Quantity, quantity, type UnitName, units } from "./units.js";

/** What may be read. */
export interface QuantityParseOptions {
  /** The kinds that fit here; any kind when left out. Only where `number` is among them may the unit be missing. */
  readonly kind?: Kind | readonly Kind[];
  /** Whether 0 is refused. Default: `true` where only a sett, yarn, weight or density fits, else `false`. */
  readonly positive?: boolean;
}

/**
 * Reads a quantity: a number (a decimal, a fraction `3/4`, or both `14 1/2`) and its unit, metric or of the inch and pound.
 * Setts read `24 per inch`, `24 ends per inch`, `24/in`, `24 epi`, `10 per cm`, `100 per 10 cm`.
 * @param text number and unit
 * @param options which kinds are taken, and whether 0 is
 * @throws {YarnError} `no-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `not-finite`, `too-long`, `negative` or `zero`;
 * all but the last two with the `column` in the text, from 1
 * @example parseQuantity("14 1/2 in") // { value: 14.5, unit: "in", kind: "length" }
 */
export function parseQuantity(text: string, options: QuantityParseOptions = {}): Quantity {
  checkShort(text);
  const { kind } = options;
  const wanted = kind === undefined ? undefined : typeof kind === "string" ? [kind] : kind;
  const number = scanNumber(text);
  const word = text.slice(number.end).trim();
  const column = number.end + text.slice(number.end).search(/\S|$/) + 1;
  const found = quantity(number.value, readUnit(text, word, column, wanted));
  if (wanted !== undefined && !wanted.includes(found.kind)) {
    throw new YarnError("wrong-kind", `"${text}" is not ${asked(wanted)}`, {
      column,
      text,
      found: found.kind,
    });
  }
  return checkValue(found, text, options.positive ?? (wanted ?? [found.kind]).every(isNeverZero));
}

/** How quantities of the kinds are asked for. */
function asked(wanted: readonly Kind[]): string {
  return wanted.map((kind) => kinds[kind].asked).join(" or ");
}

/** Kinds of which there is never none. */
function isNeverZero(kind: Kind): boolean {
  return kind === "sett" || kind === "linear-density" || kind === "area-weight" || kind === "density";
}

function readUnit(text: string, word: string, column: number, wanted: readonly Kind[] | undefined): UnitName {
  if (word === "") {
    if (wanted?.includes("number")) return "";
    const expected = wanted === undefined ? "its unit, such as 30 cm" : asked(wanted);
    throw new YarnError("no-unit", `"${text}" has no unit; expected ${expected}`, { column, text });
  }
  const unit = unitNamed(word);
  if (unit !== undefined) return unit;
  const like = nearest(word, unitWords(wanted));
  const hint =
    like === undefined ? "expected a unit such as mm, in, g, oz, per cm, per inch or %" : `is it ${like}?`;
  throw new YarnError("unknown-unit", `"${text}": no unit is called "${word}"; ${hint}`, {
    column,
    text,
    unit: word,
  });
}

/** Every name of every unit of the kinds. */
function unitWords(wanted: readonly Kind[] | undefined): string[] {
  return Object.entries(units).flatMap(([name, { kind, names }]) =>
    name !== "" && (wanted ?? [kind]).includes(kind) ? [name, ...names] : [],
  );
}

/**
 * The unit of a word as people write it, singular or plural; undefined when there is none.
 * @example unitNamed("ends per inch") // "per inch"
 */
export function unitNamed(word: string): UnitName | undefined {
  const plain = word.toLowerCase().replace(/\s+/g, " ");
  for (const name of Object.keys(units) as UnitName[]) {
    if (name !== "" && (name === plain || units[name].names.includes(plain))) return name;
  }
  const sett =
    /^(?:(?:ends|picks|threads|dents|wraps) ?)?(?:per |an? |in |\/ ?)(?:(10|ten) ?)?(cm|in|inch)$/.exec(
      plain,
    );
  if (sett === null) return undefined;
  if (sett[2] === "cm") return sett[1] === undefined ? "per cm" : "per 10 cm";
  return sett[1] === undefined ? "per inch" : undefined;
}

/**
 * A quantity whose value a measurement can have, given back as it is.
 * @throws {YarnError} `not-finite`, `negative`, or `zero` where it must be positive
 */
export function checkValue(found: Quantity, text: string, positive: boolean): Quantity {
  const facts = { text, value: found.value };
  if (!Number.isFinite(found.value))
    throw new YarnError("not-finite", `"${text}" is not a finite number`, facts);
  if (found.value < 0) throw new YarnError("negative", `"${text}" is below zero; it must be more`, facts);
  if (positive && found.value === 0) throw new YarnError("zero", `"${text}" is zero; it must be more`, facts);
  return found;
}
