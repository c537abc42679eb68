import { nearest } from "@drawcord/base";
import { GroundError } from "../error.js";
import type {
  AddedPoint,
  BaseWeave,
  Break,
  Direction,
  Pair,
  PatternTies,
  WeaveDescription,
} from "./description.js";
import { clipped, WordReader } from "./words.js";

const KINDS = [
  "plain",
  "hopsack",
  "warp rib",
  "weft rib",
  "twill",
  "pointed twill",
  "undulating twill",
  "herringbone twill",
  "broken twill",
  "satin",
  "crepe",
  "corkscrew",
] as const;

/**
 * Reads a weave from one line, such as `twill 2/1/1/2 z`, `satin 8 step 3`, `broken twill 1/3`
 * or `plain with pattern weft tied in halves within 7`.
 * @param text the line, with words in any letter case
 * @throws {GroundError} `bad-description` with the column of the word that cannot stand there; `unknown-weave` when it
 * begins with no weave's name
 * @example parseWeave("satin 8 step 3") // { base: { kind: "satin", ends: 8, step: 3 } }
 */
export function parseWeave(text: string): WeaveDescription {
  const words = new WordReader(text);
  const base = baseWeave(words);
  if (base.kind === "crepe" && words.peek !== "plus") words.expect("plus");
  const plus = words.accept("plus") ? addedPoints(words) : undefined;
  const patternWeft = words.accept("with");
  if (patternWeft) {
    words.expect("pattern");
    words.expect("weft");
  }
  const ties = patternWeft ? tiesOf(words) : undefined;
  if (!words.done) words.fail("the end of the description");
  return { base, ...(plus && { plus }), ...(patternWeft && { patternWeft }), ...(ties && { ties }) };
}

function baseWeave(words: WordReader): BaseWeave {
  const start = words.column;
  const first = words.peek;
  const kind = KINDS.find((name) => name.split(" ")[0] === first);
  if (!kind) {
    const near = nearest(
      first,
      KINDS.map((name) => name.split(" ")[0]!),
    );
    const meant = near && KINDS.find((name) => name.startsWith(near));
    throw new GroundError(
      "unknown-weave",
      first === ""
        ? `column ${start}: the description is empty; a weave was expected, such as "plain", "twill 1/3" or "satin 8 step 3"`
        : `column ${start}: "${clipped(first)}" is no weave known here; ${meant ? `did you mean "${meant}"?` : `the weaves are ${KINDS.join(", ")}`}`,
      { column: start, weave: first },
    );
  }
  for (const word of kind.split(" ")) words.expect(word);
  switch (kind) {
    case "plain":
      return { kind };
    case "hopsack": {
      const picks = pair(words);
      return { kind, picks, ...(words.accept("by") && { ends: pair(words) }) };
    }
    case "warp rib":
    case "weft rib":
      return { kind, group: pair(words) };
    case "twill":
      return { kind, ...ratio(words), ...step(words), ...direction(words) };
    case "pointed twill":
      return { kind, ...ratio(words), ...direction(words), ...along(words) };
    case "undulating twill": {
      const ratioThere = ratio(words);
      words.expect("moves");
      return { kind, ...ratioThere, moves: words.numbers("a move"), ...direction(words), ...along(words) };
    }
    case "herringbone twill": {
      const ratioThere = ratio(words);
      words.expect("after");
      return {
        kind,
        ...ratioThere,
        after: words.number("the number of ends"),
        ...direction(words),
        ...along(words),
      };
    }
    case "broken twill":
      return { kind, ...ratio(words), ...breaking(words), ...direction(words), ...along(words) };
    case "satin":
      return {
        kind,
        ...(words.atNumber && { ends: words.number("the number of ends") }),
        ...(words.accept("order") ? { order: words.numbers("an end") } : step(words)),
        ...direction(words),
        ...(words.accept("warp-faced") && { warpFaced: true as const }),
      };
    case "crepe": {
      const ends = words.number("the number of ends");
      words.expect("step");
      return { kind, ends, step: words.number("the step"), ...direction(words) };
    }
    case "corkscrew":
      return { kind, ends: words.number("the number of ends"), ...direction(words) };
  }
}

function ratio(words: WordReader): { ratio?: number[] } {
  return words.atRatio ? { ratio: words.ratio() } : {};
}

function pair(words: WordReader): Pair {
  const column = words.column;
  const numbers = words.ratio();
  const [over, under] = numbers;
  if (over === undefined || under === undefined || numbers.length !== 2) {
    throw new GroundError(
      "bad-description",
      `column ${column}: found "${numbers.join("/")}" where two numbers were expected, as in 2/2`,
      { column },
    );
  }
  return [over, under];
}

function step(words: WordReader): { step?: number } {
  return words.accept("step") ? { step: words.number("the step") } : {};
}

function direction(words: WordReader): { direction?: Direction } {
  if (words.accept("z")) return { direction: "z" };
  return words.accept("s") ? { direction: "s" } : {};
}

function along(words: WordReader): { alongPicks?: true } {
  if (!words.accept("along")) return {};
  words.expect("picks");
  return { alongPicks: true };
}

function breaking(words: WordReader): { break?: Break } {
  if (words.accept("by")) return { break: { by: words.expect("halves", "fourths") } };
  if (!words.accept("take")) return {};
  const take = words.number("the number of ends taken");
  words.expect("skip");
  return { break: { by: "skipping", take, skip: words.number("the number of ends skipped") } };
}

function tiesOf(words: WordReader): PatternTies | undefined {
  if (words.accept("untied")) return { in: "none" };
  return words.accept("tied") ? patternTies(words) : undefined;
}

function patternTies(words: WordReader): PatternTies {
  if (words.expect("in", "on") === "on") return { in: "shafts", shafts: words.numbers("a shaft") };
  const order = words.expect("halves", "thirds", "twill");
  const shafts = order === "twill" ? words.number("the number of tie shafts", 2) : 2;
  const within = words.accept("within") && { within: words.number("the longest float", 1) };
  return order === "twill" ? { in: order, shafts, ...within } : { in: order, ...within };
}

function addedPoints(words: WordReader): AddedPoint[] {
  const points = [addedPoint(words)];
  while (words.accept(",")) points.push(addedPoint(words));
  return points;
}

function addedPoint(words: WordReader): AddedPoint {
  const side = words.expect("right", "left", "above", "below");
  const ends = side === "right" || side === "left";
  const first = words.number(ends ? "the number of ends" : "the number of picks", 1);
  if (!ends) return { right: 0, above: side === "above" ? first : -first };
  const right = side === "right" ? first : -first;
  if (words.accept("above")) return { right, above: words.number("the number of picks", 1) };
  if (words.accept("below")) return { right, above: -words.number("the number of picks", 1) };
  return { right, above: 0 };
}
