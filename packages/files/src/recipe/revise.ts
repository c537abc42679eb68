/** Changes values of a recipe in its text, and leaves every other character of it alone. */
import { isMap, isScalar, isSeq, type Node, parse, stringify } from "yaml";
import { readText } from "../text.js";
import { at, isSection, items, type Path, root, type Spot, scalar, wayTo, wrong } from "../tree/spot.js";
import { readTree, type Tree } from "../tree/tree.js";
import { soundRecipe } from "./read.js";

/** Plain data that a recipe may hold. */
export type RecipeValue = string | number | readonly RecipeValue[] | { readonly [key: string]: RecipeValue };

/** A value to be set. */
export interface Revision {
  /** Keys and list positions (from 0) to the value; its last keys need not be there yet. */
  readonly path: Path;
  readonly value: RecipeValue;
}

/**
 * The text of a recipe with values changed or added, comments and layout kept. A value that the recipe uses again by an
 * alias is changed where it stands, and so wherever it is used.
 * @throws {FileError} as `soundRecipe` where the recipe cannot be read, before or with its changes; `missing-key` for a
 * path through something that is no section and no list
 * @example reviseRecipe(text, "least", [{ path: ["units", "ends"], value: 4 }]).includes("units: { ends: 4, threading: 1 2 }") // true
 */
export function reviseRecipe(
  source: Uint8Array | string,
  file: string,
  revisions: readonly Revision[],
): string {
  soundRecipe(source, file);
  const revised = revisions.reduce(
    (text, revision) => revise(readTree(text, file), revision),
    readText(source, file),
  );
  soundRecipe(revised, file);
  return revised;
}

/**
 * A plain value of a recipe as it is written, without its notation read; undefined where there is none.
 * @param path keys and list positions (from 0) to the value
 * @throws {FileError} where the text is no YAML
 * @example valueIn(text, "least", ["units", "ends"]) // 2
 */
export function valueIn(source: Uint8Array | string, file: string, path: Path): string | number | undefined {
  let here: Spot | undefined = root(readTree(readText(source, file), file));
  for (const step of path) {
    if (here === undefined) return undefined;
    here = typeof step === "string" ? at(here, step) : items(here)[step];
  }
  const value = here === undefined ? undefined : scalar(here);
  return typeof value === "string" || typeof value === "number" ? value : undefined;
}

function revise(tree: Tree, { path, value }: Revision): string {
  let here = root(tree);
  for (const [depth, step] of path.entries()) {
    const next = typeof step === "string" ? at(here, step) : items(here)[step];
    if (next === undefined) return insert(tree, here, path.slice(depth), value);
    here = next;
  }
  return replace(tree, here, value);
}

/** Text with everything from `from` to `to` changed. */
function splice(tree: Tree, from: number, to: number, by: string): string {
  return tree.text.slice(0, from) + by + tree.text.slice(to);
}

/** A value on one line, as it may stand in brackets too. */
export function inline(value: RecipeValue): string {
  if (typeof value === "string") {
    // The signs that mean something in brackets or begin something in YAML go between quotes.
    const plain = /^[\w(][\w*+()./% -]*$/.test(value) && value.trim() === value && parse(value) === value;
    return plain ? value : JSON.stringify(value);
  }
  if (typeof value === "number") return stringify(value).trimEnd();
  if (Array.isArray(value)) return `[${value.map(inline).join(", ")}]`;
  const entries = Object.entries(value as { readonly [key: string]: RecipeValue });
  return `{ ${entries.map(([key, item]) => `${inline(key)}: ${inline(item)}`).join(", ")} }`;
}

function replace(tree: Tree, { node, key }: Spot, value: RecipeValue): string {
  if (node === null) return splice(tree, endOf(key), endOf(key), ` ${inline(value)}`);
  const start = node.range?.[0] ?? 0;
  if (isScalar(node) && node.value === null && key !== undefined) {
    return splice(tree, start, endOf(node), ` ${inline(value)}`);
  }
  const end = solidEnd(tree, node);
  // A list that had a line for each of its entries keeps it so.
  if (isSeq(node) && !node.flow && Array.isArray(value) && value.length > 0) {
    const indent = " ".repeat(columnOf(tree, start));
    return splice(
      tree,
      start,
      end,
      value.map((item: RecipeValue) => `- ${inline(item)}`).join(`\n${indent}`),
    );
  }
  return splice(tree, start, end, inline(value));
}

/** Adds what a path leads to, from the section where it first leads nowhere. */
function insert(tree: Tree, section: Spot, way: Path, value: RecipeValue): string {
  const [key, ...rest] = way;
  const { node } = section;
  if (typeof key !== "string" || !isSection(section) || !isMap<Node, Node | null>(node)) {
    throw wrong(section, "missing-key", `${wayTo(section.path) || "the recipe"} has no ${String(key)}`);
  }
  const inner = rest.reduceRight<RecipeValue>((of, step) => ({ [step]: of }), value);
  const entry = `${inline(key)}: ${inline(inner)}`;
  const last = node.items.at(-1);
  if (node.flow || last === undefined) {
    const close = (node.range?.[1] ?? 0) - 1;
    const before = tree.text.slice(0, close).trimEnd();
    const comma = before.endsWith("{") ? " " : before.endsWith(",") ? " " : ", ";
    return `${before}${comma}${entry} ${tree.text.slice(close)}`;
  }
  const indent = " ".repeat(columnOf(tree, last.key.range?.[0] ?? 0));
  const end = last.value === null ? endOf(last.key) : Math.max(endOf(last.key), solidEnd(tree, last.value));
  const newline = tree.text.indexOf("\n", end);
  const line = newline < 0 ? tree.text.length : newline + 1;
  const gap = newline < 0 ? "\n" : "";
  return splice(tree, line, line, `${gap}${indent}${entry}\n`);
}

function endOf(node: Node | undefined): number {
  return node?.range?.[1] ?? 0;
}

/** The end of a value without the line end and the blanks after it. */
function solidEnd(tree: Tree, node: Node): number {
  const start = node.range?.[0] ?? 0;
  return start + tree.text.slice(start, endOf(node)).trimEnd().length;
}

/** How far from the beginning of its line an offset is. */
function columnOf(tree: Tree, offset: number): number {
  return offset - (tree.text.lastIndexOf("\n", offset - 1) + 1);
}
