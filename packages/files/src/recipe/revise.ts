/** Changes values of a recipe in its text, and leaves every other character of it alone. */
import { isMap, isScalar, isSeq, type Node, parse, stringify } from "yaml";
import { FileError } from "../error.js";
import { readText } from "../text.js";
import { at, isSection, items, type Path, root, type Spot, scalar, wayTo, wrong } from "../tree/spot.js";
import { readTree, type Tree } from "../tree/tree.js";
import { soundRecipe } from "./read.js";
import { areApart, followedBy, placedEdits, type Splice, spliced, type TextEdit } from "./text-edits.js";

/** Plain data that a recipe may hold. */
export type RecipeValue = string | number | readonly RecipeValue[] | { readonly [key: string]: RecipeValue };

/** A value to be set. */
export interface Revision {
  /** Keys and list positions (from 0) to the value; its last keys need not be there yet. */
  readonly path: Path;
  /** What it is to be. */
  readonly value: RecipeValue;
}

/** A recipe's text with values changed. */
export interface RevisedText {
  /** The text as it is now. */
  readonly text: string;
  /** The edits that lead to it, by their places in the text before, in the order of their places; none over another. */
  readonly edits: readonly TextEdit[];
}

/**
 * The text of a recipe with values changed or added, comments and layout kept. A value that the recipe uses again by an
 * alias is changed where it stands, and so wherever it is used.
 * @param source the recipe, as text or as the bytes of its file
 * @param file the name that errors bear
 * @param revisions the values, each with the path to it
 * @throws {FileError} as `soundRecipe` where the recipe cannot be read, before or with its changes; `missing-key` for a
 * path through something that is no section and no list
 * @example reviseRecipe(text, "least", [{ path: ["units", "ends"], value: 4 }]).text.includes("units: { ends: 4, threading: 1 2 }") // true
 * @example reviseRecipe(text, "least", [{ path: ["units", "ends"], value: 4 }]).edits.map((edit) => edit.text) // ["4"]
 */
export function reviseRecipe(
  source: Uint8Array | string,
  file: string,
  revisions: readonly Revision[],
): RevisedText {
  soundRecipe(source, file);
  const tree = readTree(readText(source, file), file);
  const splices = revisionSplices(tree, revisions);
  const text = spliced(tree.text, splices);
  soundRecipe(text, file);
  return { text, edits: placedEdits(tree.text, file, splices) };
}

/**
 * What revisions change in a text that was read, in the order of the places.
 * @throws {FileError} `missing-key` for a path through something that is no section and no list
 */
export function revisionSplices(tree: Tree, revisions: readonly Revision[]): readonly Splice[] {
  return splicesOf(tree, revisions) ?? oneByOne(tree, revisions);
}

/** The splices of all revisions, found in one reading; undefined where one of them leans on another. */
function splicesOf(tree: Tree, revisions: readonly Revision[]): readonly Splice[] | undefined {
  try {
    const splices = revisions.map((revision) => revise(tree, revision)).sort((a, b) => a.from - b.from);
    return areApart(splices) ? splices : undefined;
  } catch (error) {
    if (error instanceof FileError) return undefined;
    throw error;
  }
}

/** The splices of revisions of which each is made in the text that those before it left. */
function oneByOne(tree: Tree, revisions: readonly Revision[]): readonly Splice[] {
  return revisions.reduce<readonly Splice[]>(
    (made, revision) => followedBy(made, revise(readTree(spliced(tree.text, made), tree.file), revision)),
    [],
  );
}

/**
 * A plain value of a recipe as it is written, without its notation read; undefined where there is none.
 * @param source the recipe, as text or as the bytes of its file
 * @param file the name that errors bear
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

/** What a revision changes. */
function revise(tree: Tree, { path, value }: Revision): Splice {
  let here = root(tree);
  for (const [depth, step] of path.entries()) {
    const next = typeof step === "string" ? at(here, step) : items(here)[step];
    if (next === undefined) return insert(tree, here, path.slice(depth), value);
    here = next;
  }
  return replace(tree, here, value);
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

function replace(tree: Tree, { node, key }: Spot, value: RecipeValue): Splice {
  if (node === null) return { from: endOf(key), to: endOf(key), by: ` ${inline(value)}` };
  const start = node.range?.[0] ?? 0;
  if (isScalar(node) && node.value === null && key !== undefined) {
    return { from: start, to: endOf(node), by: ` ${inline(value)}` };
  }
  const end = solidEnd(tree, node);
  // A list that had a line for each of its entries keeps it so.
  if (isSeq(node) && !node.flow && Array.isArray(value) && value.length > 0) {
    const indent = " ".repeat(columnOf(tree, start));
    const lines = value.map((item: RecipeValue) => `- ${inline(item)}`);
    return { from: start, to: end, by: lines.join(`\n${indent}`) };
  }
  return { from: start, to: end, by: inline(value) };
}

/** Adds what a path leads to, from the section where it first leads nowhere. */
function insert(tree: Tree, section: Spot, way: Path, value: RecipeValue): Splice {
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
    return { from: before.length, to: close, by: `${comma}${entry} ` };
  }
  const indent = " ".repeat(columnOf(tree, last.key.range?.[0] ?? 0));
  const end = last.value === null ? endOf(last.key) : Math.max(endOf(last.key), solidEnd(tree, last.value));
  const newline = tree.text.indexOf("\n", end);
  const line = newline < 0 ? tree.text.length : newline + 1;
  const gap = newline < 0 ? "\n" : "";
  return { from: line, to: line, by: `${gap}${indent}${entry}\n` };
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
