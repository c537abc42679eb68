/** Gives one use of a block in a lift plan a block of its own, so that a row of it can change by itself. */
import { changedRows, parseWovenBlock } from "@drawcord/units";
import { isMap, isSeq, type Node } from "yaml";
import { at, entries, items, root, type Spot, textOf } from "../tree/spot.js";
import type { Tree } from "../tree/tree.js";
import { rowsOfBlock } from "./lifts.js";
import type { Splice } from "./text-edits.js";

/**
 * What makes of the use of a block that weaves a row another block of the same rows, in the order of the places; undefined
 * where the row is not of a block that is woven as it stands, or woven once only.
 * @param row the row of the plan, from 0
 */
export function ownBlock(tree: Tree, row: number): readonly Splice[] | undefined {
  const lifts = at(root(tree), "lifts");
  const order = lifts && at(lifts, "order");
  const blocks = lifts && at(lifts, "blocks");
  if (order === undefined || blocks === undefined) return undefined;
  let first = 0;
  for (const part of items(order)) {
    const { beside, block, changes } = parseWovenBlock(textOf(part));
    if (beside !== undefined) return undefined;
    const source = at(blocks, block)!;
    const rows = rowsOfBlock(source);
    const count = changes.reduce(changedRows, rows.length);
    if (row >= first + count) {
      first += count;
      continue;
    }
    const [change, ...others] = changes;
    if (others.length > 0 || (change !== undefined && change.change !== "repeated")) return undefined;
    const before = Math.floor((row - first) / rows.length);
    const after = (change?.times ?? 1) - before - 1;
    const own = freeName(block, blocks);
    const uses = [...times(block, before), own, ...times(block, after)];
    const renamed = withUses(tree.text, order, part, uses);
    const copied = withCopy(tree.text, blocks, source, own);
    if (renamed === undefined || copied === undefined) return undefined;
    return [renamed, copied].sort((a, b) => a.from - b.from);
  }
  return undefined;
}

/** A piece of a text and what is to stand in its place. */
function times(block: string, count: number): string[] {
  if (count === 0) return [];
  return [count === 1 ? block : `${block}*${count}`];
}

function freeName(block: string, blocks: Spot): string {
  const taken = new Set(entries(blocks).map(([name]) => name));
  let number = 2;
  while (taken.has(`${block}-${number}`)) number++;
  return `${block}-${number}`;
}

/** The entry of an order given as several. */
function withUses(text: string, order: Spot, part: Spot, uses: readonly string[]): Splice | undefined {
  const [from, to] = part.node?.range ?? [];
  if (from === undefined || to === undefined || !isSeq<Node>(order.node)) return undefined;
  if (order.node.flow) return { from, to, by: uses.join(", ") };
  const dash = text.slice(text.lastIndexOf("\n", from - 1) + 1, from);
  return /^ *- +$/.test(dash) ? { from, to, by: uses.join(`\n${dash}`) } : undefined;
}

/** The block once more behind itself, by another name. */
function withCopy(text: string, blocks: Spot, block: Spot, name: string): Splice | undefined {
  const [start, keyEnd] = block.key?.range ?? [];
  const end = block.node?.range?.[1];
  if (start === undefined || keyEnd === undefined || end === undefined || !isMap(blocks.node))
    return undefined;
  const rest = text.slice(keyEnd, end).trimEnd();
  // What is named to be used again may be named once only.
  if (/[&*]\w/.test(rest.replace(/\*\d/g, ""))) return undefined;
  const behind = keyEnd + rest.length;
  if (blocks.node.flow) return { from: behind, to: behind, by: `, ${name}${rest}` };
  const newline = text.indexOf("\n", behind);
  const from = newline < 0 ? text.length : newline;
  const indent = text.slice(text.lastIndexOf("\n", start - 1) + 1, start);
  return /^ *$/.test(indent) ? { from, to: from, by: `\n${indent}${name}${rest}` } : undefined;
}
