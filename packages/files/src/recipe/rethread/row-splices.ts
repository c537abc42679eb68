/** Writes other rows where the rows of a lift plan or a block stand, comments between them kept. */
import type { ShaftSet } from "@drawcord/ground";
import { parseRows, printLifts, printShafts } from "@drawcord/units";
import { isSeq, type Node } from "yaml";
import { at, isList, items, type Spot, textOf } from "../../tree/spot.js";
import { inline } from "../revise.js";
import type { Splice } from "../text-edits.js";

/**
 * The edits that write the rows; a picture stays a picture, a list a list.
 * @param plan the section with `rows` or a `picture`
 * @param widthOf how many columns a picture is to have that has so many; as many when not given
 * @returns undefined where they stand in a way that cannot be kept
 */
export function rowSplices(
  text: string,
  plan: Spot,
  rows: readonly ShaftSet[],
  widthOf: (columns: number) => number = (columns) => columns,
): readonly Splice[] | undefined {
  const picture = at(plan, "picture");
  if (picture !== undefined) return pictureSplices(text, picture, rows, widthOf);
  const list = at(plan, "rows");
  const [start, end] = list?.node?.range ?? [];
  if (list === undefined || start === undefined || end === undefined) return undefined;
  if (isList(list)) return listSplices(list, rows);
  // A text with a line for each row becomes a list, in brackets.
  const trimmed = text.slice(start, end).trimEnd().length;
  return [{ from: start, to: start + trimmed, by: inline(printLifts(rows).map(asValue)) }];
}

function listSplices(list: Spot, rows: readonly ShaftSet[]): readonly Splice[] | undefined {
  const inBrackets = isSeq<Node>(list.node) && list.node.flow === true;
  let row = 0;
  const splices: Splice[] = [];
  for (const item of items(list)) {
    const [from, to] = item.node?.range ?? [];
    const before = parseRows(textOf(item));
    const after = rows.slice(row, row + before.length);
    row += before.length;
    if (from === undefined || to === undefined || after.length !== before.length) return undefined;
    if (before.every((lift, i) => printShafts(lift) === printShafts(after[i]!))) continue;
    const column = from - (item.tree.text.lastIndexOf("\n", from - 1) + 1);
    const gap = inBrackets ? ", " : `\n${" ".repeat(Math.max(0, column - 2))}- `;
    const by = printLifts(after)
      .map((line) => inline(asValue(line)))
      .join(gap);
    splices.push({ from, to: from + item.tree.text.slice(from, to).trimEnd().length, by });
  }
  return splices;
}

function asValue(line: string): string | number {
  return /^\d+$/.test(line) ? Number(line) : line;
}

function pictureSplices(
  text: string,
  picture: Spot,
  rows: readonly ShaftSet[],
  widthOf: (columns: number) => number,
): readonly Splice[] | undefined {
  const [start = 0, end = 0] = picture.node?.range ?? [];
  const lines = [...text.slice(start, end).matchAll(/^[ \t]*([#.]+)[ \t]*$/gm)];
  if (lines.length !== rows.length) return undefined;
  const columns = rows.reduce((most, row) => Math.max(most, row.at(-1) ?? 0), widthOf(lines[0]![1]!.length));
  return lines.map((line, i) => {
    const squares = line[1]!;
    const from = start + line.index + line[0].indexOf(squares);
    return {
      from,
      to: from + squares.length,
      by: pictureLine(rows[rows.length - 1 - i]!, columns),
    };
  });
}

/** A row of a picture. */
export function pictureLine(row: ShaftSet, columns: number): string {
  return Array.from({ length: columns }, (_, column) => (row.includes(column + 1) ? "#" : ".")).join("");
}
