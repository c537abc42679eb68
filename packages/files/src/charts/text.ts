import { type BitGrid, fromText, GridError, toText } from "@drawcord/grid";
import { FileError } from "../error.js";
import { lineStarts, stretchIn } from "../place.js";
import { readText } from "../text.js";

/**
 * A chart drawn in text: `#` raised (or drawn), `.` not, a line a row, the last line woven first. Lines end in LF, CR or
 * CR LF; blanks at the ends of lines and empty lines above and below are no part of it.
 * @param source the chart, as text or as the bytes of its file
 * @param file the name that errors bear
 * @throws {FileError} `bad-chart` for another character or a line that is not as long as the first, with its place
 * @example readTextChart("#.\n##\n", "moth.txt").rows // 2
 */
export function readTextChart(source: Uint8Array | string, file: string): BitGrid {
  const text = readText(source, file);
  const lines = text.split(/\r\n|\r|\n/).map((line) => line.trimEnd());
  const above = lines.findIndex((line) => line !== "");
  const below = lines.findLastIndex((line) => line !== "");
  try {
    return fromText(lines.slice(above, below + 1).join("\n"));
  } catch (error) {
    if (!(error instanceof GridError)) throw error;
    const { line = 1, column = 1 } = error.facts;
    const sentence = error.message.replace(/^line \d+, column \d+: /, "").replace(/line \d+ /, "this line ");
    const starts = lineStarts(text);
    const at = starts[Number(line) - 1 + above]! + Number(column) - 1;
    const place = stretchIn(starts, at, Math.min(at + 1, text.length));
    throw new FileError("bad-chart", sentence.replace("line 1 has", "the first line has"), file, place);
  }
}

/**
 * A grid drawn in text, its last row on top.
 * @param grid rows are picks, row 0 woven first
 * @example writeTextChart(fromText("#.\n##")) // "#.\n##\n"
 */
export function writeTextChart(grid: BitGrid): string {
  return `${toText(grid)}\n`;
}
