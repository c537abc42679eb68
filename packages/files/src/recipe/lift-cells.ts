/** The rows of a lift plan where they stand in the text of a recipe, one by one. */
import type { ShaftSet } from "@drawcord/ground";
import { parseRows, printShafts } from "@drawcord/units";
import { isScalar, isSeq, type Node } from "yaml";
import { at, entries, isList, items, root, type Spot, textOf } from "../tree/spot.js";
import type { Tree } from "../tree/tree.js";
import { inline } from "./revise.js";
import type { Splice } from "./text-edits.js";

/** A row that has a place of its own: an entry of a list, or a line of a picture. */
export interface LiftCell {
  readonly lift: ShaftSet;
  /** Where in the text it begins, from 0. */
  readonly from: number;
  /** What writes another lift in the row; undefined where the picture has no column for it. */
  with(lift: ShaftSet): Splice | undefined;
  /** What takes the row out; undefined where it cannot be taken out alone. */
  without(): Splice | undefined;
}

/** The rows of the plan itself, of its blocks, and of those that pieces have of their own. */
export function liftCells(tree: Tree): readonly LiftCell[] {
  const pieces = at(root(tree), "pieces");
  const owners = [root(tree), ...(pieces === undefined || !isList(pieces) ? [] : items(pieces))];
  const plans = owners.flatMap((owner) => {
    const lifts = at(owner, "lifts");
    const blocks = lifts && at(lifts, "blocks");
    return [...(lifts ? [lifts] : []), ...(blocks ? entries(blocks).map(([, block]) => block) : [])];
  });
  return plans.flatMap((plan) => {
    const rows = at(plan, "rows");
    const picture = at(plan, "picture");
    return [
      ...(rows !== undefined && isList(rows) ? listed(tree.text, rows) : []),
      ...(picture === undefined ? [] : drawn(tree.text, picture)),
    ];
  });
}

function listed(text: string, rows: Spot): readonly LiftCell[] {
  const flow = isSeq<Node>(rows.node) && rows.node.flow === true;
  return items(rows).flatMap((item): readonly LiftCell[] => {
    const [start, end] = item.node?.range ?? [];
    const lines = parseRows(textOf(item));
    const [lift] = lines;
    if (start === undefined || end === undefined || lift === undefined || lines.length > 1) return [];
    if (!isScalar(item.node) || text.slice(start, end).includes("\n")) return [];
    return [
      {
        lift,
        from: start,
        with: (other) => ({
          from: start,
          to: end,
          by: inline(other.length === 1 ? other[0]! : printShafts(other)),
        }),
        without: () => (flow ? withoutItem(text, start, end) : withoutLine(text, start, /^\s*- /)),
      },
    ];
  });
}

/** What takes out an entry of a list in brackets, and the comma that kept it from the next or the last. */
function withoutItem(text: string, start: number, end: number): Splice {
  const after = /^\s*,\s*/.exec(text.slice(end));
  if (after !== null) return { from: start, to: end + after[0].length, by: "" };
  return { from: text.slice(0, start).replace(/,\s*$/, "").length, to: end, by: "" };
}

/** What takes out a whole line, if the line begins as it must. */
function withoutLine(text: string, within: number, begins: RegExp): Splice | undefined {
  const start = text.lastIndexOf("\n", within - 1) + 1;
  const newline = text.indexOf("\n", within);
  const end = newline < 0 ? text.length : newline + 1;
  return begins.test(text.slice(start, end)) ? { from: start, to: end, by: "" } : undefined;
}

/** The lines of a picture that stands line by line, the last one row 1. */
function drawn(text: string, picture: Spot): readonly LiftCell[] {
  const [start = 0, end = 0] = picture.node?.range ?? [];
  const source = text.slice(start, end);
  if (!source.startsWith("|")) return [];
  return [...source.matchAll(/^[ \t]*([#.]+)[ \t]*$/gm)].map((line): LiftCell => {
    const squares = line[1]!;
    const from = start + line.index + line[0].indexOf(squares);
    return {
      lift: [...squares].flatMap((square, column) => (square === "#" ? [column + 1] : [])),
      from,
      with: (other) =>
        other.some((shaft) => shaft > squares.length)
          ? undefined
          : {
              from,
              to: from + squares.length,
              by: Array.from(squares, (_, column) => (other.includes(column + 1) ? "#" : ".")).join(""),
            },
      without: () => withoutLine(text, from, /^[ \t]*[#.]/),
    };
  });
}
