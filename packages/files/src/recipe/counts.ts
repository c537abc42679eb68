import { tell } from "../tree/problems.js";
import {
  allItems,
  isLeftOut,
  isList,
  type Spot,
  scalar,
  textOf,
  wayTo,
  wholeOf,
  wrong,
} from "../tree/spot.js";

const most = 1_000_000;

/**
 * A whole number for all, or one for each: as a list, or as text such as `4*10 6`. Its schema keeps the numbers of a
 * list from 1 to 1,000,000; one that is not counts as 1. A word of a text that is no such number is told
 * (`bad-notation`), and counts as 1 too.
 * @throws {FileError} `too-large` for more than 1,000,000 numbers, `bad-notation` for a text without any
 */
export function readCounts(of: Spot): number | readonly number[] {
  if (isList(of)) return allItems(of).map((item) => (isLeftOut(item) ? 1 : Number(scalar(item))));
  const plain = scalar(of);
  if (typeof plain === "number") return plain;

  const text = textOf(of);
  if (/^\s*\d+\s*$/.test(text) && Number(text) >= 1 && Number(text) <= most) return Number(text);
  const counts: number[] = [];
  for (const word of text.matchAll(/[^\s,]+/g)) {
    const piece = { from: word.index, to: word.index + word[0].length };
    const match = /^(\d{1,7})(?:\*(\d{1,7}))?$/.exec(word[0]);
    const count = Number(match?.[1]);
    const times = Number(match?.[2] ?? 1);
    if (match === null || count < 1 || count > most || times < 1) {
      const sentence = `${wayTo(of.path)}: "${word[0].slice(0, 40)}" was found; expected numbers from 1 such as 4, or 4*10 for ten alike`;
      tell(of.tree.problems, wrong(of, "bad-notation", sentence, piece));
      counts.push(1);
      continue;
    }
    if (counts.length + times > most) {
      throw wrong(of, "too-large", `${wayTo(of.path)} comes to more than ${most} numbers`, piece);
    }
    for (let i = 0; i < times; i++) counts.push(count);
  }
  if (counts.length === 0)
    throw wrong(of, "bad-notation", `${wayTo(of.path)} is empty; expected whole numbers`);
  return counts;
}

/**
 * Numbers for as many things as there are. Where there are others, that is told, and they are cut short or go on with the
 * last.
 * @param ofThings the section that says how many things there are
 */
export function fittedCounts(
  of: Spot,
  counts: number | readonly number[],
  wanted: number,
  things: string,
  ofThings: Spot,
): readonly number[] {
  if (typeof counts === "number") return Array<number>(wanted).fill(counts);
  if (counts.length === wanted) return counts;
  // Where a word of either could not be read, their numbers say nothing.
  if (!isTroubled(of) && !isTroubled(ofThings)) {
    const sentence = `${wayTo(of.path)} gives ${counts.length} numbers; there are ${wanted} ${things}`;
    tell(of.tree.problems, wrong(of, "bad-value", sentence));
  }
  return Array.from({ length: wanted }, (_, i) => counts[i] ?? counts.at(-1)!);
}

/** Whether a problem is told of anything in a value. */
export function isTroubled(of: Spot): boolean {
  const { end, offset } = wholeOf(of);
  return of.tree.problems.found.some((one) => one.offset >= offset && one.offset < end.offset);
}
