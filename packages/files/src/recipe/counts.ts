import { isList, items, type Spot, scalar, textOf, wayTo, wrong } from "../tree/spot.js";

const most = 1_000_000;

/**
 * A whole number for all, or one for each: as a list, or as text such as `4*10 6`. Its schema keeps the numbers of a
 * list from 1 to 1,000,000.
 * @throws {FileError} `bad-notation` for text that is no such list, `too-large` for more than 1,000,000 numbers
 */
export function readCounts(of: Spot): number | readonly number[] {
  if (isList(of)) return items(of).map((item) => Number(scalar(item)));
  const plain = scalar(of);
  if (typeof plain === "number") return plain;

  const text = textOf(of);
  if (/^\s*\d+\s*$/.test(text) && Number(text) >= 1 && Number(text) <= most) return Number(text);
  const counts: number[] = [];
  for (const word of text.matchAll(/[^\s,]+/g)) {
    const match = /^(\d{1,7})(?:\*(\d{1,7}))?$/.exec(word[0]);
    const count = Number(match?.[1]);
    const times = Number(match?.[2] ?? 1);
    if (match === null || count < 1 || count > most || times < 1) {
      const sentence = `${wayTo(of.path)}: "${word[0].slice(0, 40)}" was found; expected numbers from 1 such as 4, or 4*10 for ten alike`;
      throw wrong(of, "bad-notation", sentence, word.index);
    }
    if (counts.length + times > most) {
      throw wrong(of, "too-large", `${wayTo(of.path)} comes to more than ${most} numbers`, word.index);
    }
    for (let i = 0; i < times; i++) counts.push(count);
  }
  if (counts.length === 0)
    throw wrong(of, "bad-notation", `${wayTo(of.path)} is empty; expected whole numbers`);
  return counts;
}
