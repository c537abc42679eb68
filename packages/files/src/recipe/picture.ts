import type { ShaftSet } from "@drawcord/ground";
import { printable } from "../printable.js";
import { tell } from "../tree/problems.js";
import { type Spot, textOf, wayTo, wrong } from "../tree/spot.js";

/** The most columns of a picture: the highest shaft number that the row notation reads too. */
const mostColumns = 100_000;

/**
 * The rows of a picture: a line a row, the last line row 1; `#` draws the pattern shaft of its column, `.` does not.
 * A line that is shorter or longer than the first, or holds another character, is told (`bad-notation`); such a character
 * draws nothing.
 * @throws {FileError} `too-large` past `mostRows` or 100,000 columns
 */
export function readPicture(of: Spot, mostRows: number): readonly ShaftSet[] {
  const lines = pictureLines(of);
  const columns = lines[0]?.text.length ?? 0;
  const size =
    lines.length > mostRows ? `${mostRows} rows` : columns > mostColumns && `${mostColumns} columns`;
  if (size) throw wrong(of, "too-large", `${wayTo(of.path)} has more than ${size}`);
  const rows = lines.map(({ text, index }) => {
    const stranger = text.search(/[^#.]/);
    if (stranger >= 0) {
      const found = printable(String.fromCodePoint(text.codePointAt(stranger)!));
      const sentence = `${wayTo(of.path)}: "${found}" was found; a picture is made of # (drawn) and . (not)`;
      tellLine(of, sentence, index + stranger, 1);
    } else if (text.length !== columns) {
      const sentence = `${wayTo(of.path)}: this line has ${text.length} squares; the first line has ${columns}`;
      tellLine(of, sentence, index, text.length);
    }
    return [...text.slice(0, columns)].flatMap((square, column) => (square === "#" ? [column + 1] : []));
  });
  return rows.reverse();
}

function tellLine(of: Spot, sentence: string, from: number, length: number): void {
  tell(of.tree.problems, wrong(of, "bad-notation", sentence, { from, to: from + length }));
}

/** The lines of a picture as they stand, the top one first, and where in its text each begins. */
export function pictureLines(of: Spot): readonly { readonly text: string; readonly index: number }[] {
  return [...textOf(of).matchAll(/[^\s].*/g)].map(({ 0: line, index }) => ({ text: line.trimEnd(), index }));
}
