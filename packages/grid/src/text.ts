import { needText } from "@drawcord/base";
import type { BitGrid } from "./bit-grid.js";
import { blank, fromCells } from "./build.js";
import { GridError } from "./error.js";
import { needGrid } from "./need-grid.js";

const RAISED = "#";
const LOWERED = ".";

/**
 * A grid from its drawing: `#` raised, `.` lowered, a line a pick, the first pick at the bottom. One line end at the
 * close of the text is allowed; line ends may be LF or CRLF.
 * @param text a line a pick of `#` and `.`, the last pick on top
 * @throws {GridError} `bad-character` for any other character; `uneven-rows` when a line is longer or shorter than the
 * first; both with `line` (from 1, at the top) in their facts
 * @example fromText("##\n#.").get(0, 1) // false
 */
export function fromText(text: string): BitGrid {
  needText(text, "a drawing");
  const body = text.replace(/\r?\n$/, "");
  if (body === "") return blank(0, 0);
  const lines = body.split(/\r?\n/);
  const columns = lines[0]!.length;
  for (const [index, line] of lines.entries()) {
    const at = line.search(/[^#.]/);
    if (at !== -1) {
      const found = String.fromCodePoint(line.codePointAt(at)!);
      throw new GridError(
        "bad-character",
        `line ${index + 1}, column ${at + 1}: found ${JSON.stringify(found)}; a drawing has only ${RAISED} (raised) and ${LOWERED} (lowered)`,
        { line: index + 1, column: at + 1, found },
      );
    }
    if (line.length !== columns) {
      throw new GridError(
        "uneven-rows",
        `line ${index + 1} has ${line.length} columns; line 1 has ${columns}`,
        {
          line: index + 1,
          found: line.length,
          expected: columns,
        },
      );
    }
  }
  return fromCells(lines.length, columns, (row, column) => lines[lines.length - 1 - row]![column] === RAISED);
}

/**
 * The drawing of a grid: `#` raised, `.` lowered, a line a pick, the first pick at the bottom, no line end at the close.
 * A grid without columns has nothing to draw and does not come back from its text.
 * @param grid the grid to draw
 * @example toText(fromText("##\n#.")) // "##\n#."
 */
export function toText(grid: BitGrid): string {
  needGrid(grid);
  const { rows, columns, stride, words } = grid;
  // The drawings of eight squares that were met so far, by their bits.
  const eights: string[] = [];
  const lines: string[] = [];
  for (let row = rows - 1; row >= 0; row--) {
    let line = "";
    for (let column = 0; column < columns; column += 8) {
      const bits = (words[row * stride + (column >>> 5)]! >>> (column & 31)) & 255;
      eights[bits] ??= drawnBits(bits);
      line += eights[bits];
    }
    lines.push(line.slice(0, columns));
  }
  return lines.join("\n");
}

function drawnBits(bits: number): string {
  let text = "";
  for (let at = 0; at < 8; at++) text += (bits >>> at) & 1 ? RAISED : LOWERED;
  return text;
}
