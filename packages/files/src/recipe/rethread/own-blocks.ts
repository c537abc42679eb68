/** Blocks of their own for lines of a weaving order that cannot be woven as they stand. */
import type { ShaftSet } from "@drawcord/ground";
import { printLifts, printWovenBlock, type WovenBlock } from "@drawcord/units";
import { isMap } from "yaml";
import { at, entries, items, type Spot, textOf } from "../../tree/spot.js";
import { inline } from "../revise.js";
import type { Splice } from "../text-edits.js";
import { pictureLine } from "./row-splices.js";

type Rows = readonly ShaftSet[];

/** New blocks, and the edits that write them behind the blocks that they stand for. */
export interface OwnBlocks {
  /** The line that weaves rows by a block that is written behind another; undefined where that cannot be. */
  readonly lineFor: (behind: Spot, line: WovenBlock, rows: Rows) => string | undefined;
  readonly splices: () => readonly Splice[];
}

/** @param columns how many columns a picture of them is to have */
export function ownBlocks(text: string, top: Spot, columns: number): OwnBlocks {
  const names = new Map<string, string>();
  const taken = new Set(blocksIn(top).map(([name]) => name));
  const inserted = new Map<number, string>();

  const nameFor = (behind: Spot, line: WovenBlock, rows: Rows) => {
    const key = JSON.stringify([behind.path, rows]);
    const known = names.get(key);
    if (known !== undefined) return known;
    const [start] = behind.key?.range ?? [];
    const end = behind.node?.range?.[1];
    if (start === undefined || end === undefined || at(behind, "wefts") !== undefined) return undefined;
    const indent = text.slice(text.lastIndexOf("\n", start - 1) + 1, start);
    if (!/^ *$/.test(indent) || !isMap(behind.node)) return undefined;
    const name = freeName(line.block);
    const newline = text.indexOf("\n", start + text.slice(start, end).trimEnd().length);
    const place = newline < 0 ? text.length : newline;
    const addition = written(name, behind, line, rows).map((one) => `\n${indent}${one}`);
    inserted.set(place, (inserted.get(place) ?? "") + addition.join(""));
    taken.add(name);
    names.set(key, name);
    return name;
  };
  return {
    lineFor(behind, line, rows) {
      const once = leastRows(rows);
      const name = nameFor(behind, line, once);
      return name === undefined || once === rows ? name : `${name} *${rows.length / once.length}`;
    },
    splices: () => [...inserted].map(([place, by]) => ({ from: place, to: place, by })),
  };

  function freeName(block: string): string {
    let number = 2;
    while (taken.has(`${block}-${number}`)) number++;
    return `${block}-${number}`;
  }

  /** The lines of a block, as a picture where the one it stands for is one. */
  function written(name: string, behind: Spot, line: WovenBlock, rows: Rows): readonly string[] {
    const weft = at(behind, "weft");
    const body =
      at(behind, "picture") === undefined
        ? ["rows:", ...printLifts(rows).map((row) => `  - ${inline(/^\d+$/.test(row) ? Number(row) : row)}`)]
        : ["picture: |", ...rows.toReversed().map((row) => `  ${pictureLine(row, columns)}`)];
    return [
      `# ${printWovenBlock(line)}, row by row`,
      `${name}:`,
      ...body.map((one) => `  ${one}`),
      ...(weft === undefined ? [] : [`  weft: ${inline(textOf(weft))}`]),
    ];
  }
}

/** The rows once that come again and again. */
function leastRows(rows: Rows): Rows {
  const keys = rows.map((row) => row.join(" "));
  for (let length = 1; length <= rows.length / 2; length++) {
    if (rows.length % length === 0 && keys.every((key, i) => key === keys[i % length])) {
      return rows.slice(0, length);
    }
  }
  return rows;
}

/** All blocks of a recipe, those of its pieces with them. */
function blocksIn(top: Spot): readonly (readonly [string, Spot])[] {
  const pieces = at(top, "pieces");
  return [top, ...(pieces === undefined ? [] : items(pieces))].flatMap((owner) => {
    const lifts = at(owner, "lifts");
    const blocks = lifts && at(lifts, "blocks");
    return blocks === undefined ? [] : entries(blocks);
  });
}
