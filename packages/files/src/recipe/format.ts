/** The one canonical layout of a recipe: what it says stays, how it is set is made the same everywhere. */
import {
  type Document,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  Scalar,
  visit,
  type YAMLMap,
} from "yaml";
import { recipeSchema } from "../schema/recipe.js";
import { readText } from "../text.js";
import type { Schema } from "../tree/json-schema.js";
import { readTree } from "../tree/tree.js";
import { soundRecipe } from "./read.js";

/** The widest line that a section or a list may stand on by itself. */
const widest = 80;

/** How often a text is set before it must stay as it is; two have always been enough. */
const mostPasses = 6;

/** Keys whose text is a notation, in which blanks only keep things apart. */
const notations: ReadonlySet<string> = /* @__PURE__ */ new Set([
  ...["threading", "raise", "sink", "left", "right", "ends", "picks", "rows", "order"],
]);

/**
 * Lays a recipe out in its one canonical way: keys in the order of the schema, two blanks for each step inwards, sections
 * apart, short lists of settings on one line, quotes only where they are needed. Comments stay with what they stand at.
 * Where the recipe uses a value again by an alias, its keys keep their order.
 * @param source the recipe, as text or as the bytes of its file
 * @param file the name that errors bear
 * @throws {FileError} as `soundRecipe`, for a recipe that cannot be read
 * @example formatRecipe(text.replace("units: ", "units:   "), "least") === formatRecipe(text, "least") // true
 */
export function formatRecipe(source: Uint8Array | string, file: string): string {
  soundRecipe(source, file);
  // A comment that was set once may be read as belonging to its other neighbour, so it is set until it stays.
  let text = readText(source, file);
  for (let pass = 0; pass < mostPasses; pass++) {
    const set = setText(text, file);
    if (set === text) break;
    text = set;
  }
  return text;
}

function setText(text: string, file: string): string {
  const { document, aliases } = readTree(text, file);
  trimComments(document);
  const top = document.contents;
  if (isMap<Node, Node | null>(top)) {
    if (aliases.size === 0) {
      keepHead(document, top);
      sortKeys(top, recipeSchema);
    }
    top.flow = false;
    for (const [i, pair] of top.items.entries()) {
      pair.key.spaceBefore = i > 0;
      layOut(pair, recipeSchema.properties?.[keyOf(pair)], 0, aliases.size === 0);
    }
  }
  return document.toString({ indent: 2, lineWidth: 100, flowCollectionPadding: true });
}

/** Takes the empty lines off the ends of comments, and leaves one within. */
function trimComments(document: Document.Parsed): void {
  // The long runs first: what is left of them costs no time at the end.
  const trim = (comment: string) => comment.replace(/\n{3,}/g, "\n\n").replace(/^\n+|\n+$/g, "");
  visit(document, {
    Node(_key, node) {
      if (node.comment) node.comment = trim(node.comment);
      if (node.commentBefore) node.commentBefore = trim(node.commentBefore);
    },
  });
  if (document.comment) document.comment = trim(document.comment);
}

type Entry = Pair<Node, Node | null>;

function keyOf(pair: Entry): string {
  return isScalar(pair.key) ? String(pair.key.value) : "";
}

/** Puts the keys that a schema names in its order, before all others. */
function sortKeys(map: YAMLMap<Node, Node | null>, schema: Schema): void {
  const order = Object.keys(schema.properties ?? {});
  const rank = (pair: Entry) => {
    const at = order.indexOf(keyOf(pair));
    return at < 0 ? order.length : at;
  };
  map.items.sort((a, b) => rank(a) - rank(b));
}

/** Keeps the comment at the head of a file there; what follows its last empty line goes with the first key. */
function keepHead(document: Document.Parsed, top: YAMLMap<Node, Node | null>): void {
  const first = top.items[0]?.key;
  const comment = top.commentBefore ?? first?.commentBefore;
  const end = comment?.lastIndexOf("\n\n") ?? -1;
  if (first === undefined || !comment || end < 0) return;
  document.commentBefore = [document.commentBefore, comment.slice(0, end)].filter(Boolean).join("\n\n");
  top.commentBefore = null;
  first.commentBefore = comment.slice(end + 2);
}

/** Sets a key and its value, `depth` steps inwards. */
function layOut(pair: Entry, schema: Schema | undefined, depth: number, sort: boolean): void {
  if (depth > 0) pair.key.spaceBefore = false;
  setScalar(pair.key);
  if (pair.value === null) return;
  setNode(pair.value, schema, depth, keyOf(pair), sort);
  if (isCollection(pair.value)) {
    const list =
      isSeq(pair.value) &&
      !pair.value.items.every((item) => isScalar(item) && typeof item.value === "number");
    pair.value.flow = depth > 0 && !list && fits(pair.value, 2 * depth + keyOf(pair).length + 2);
    if (pair.value.flow) setFlow(pair.value);
  }
}

function setNode(node: Node, schema: Schema | undefined, depth: number, key: string, sort: boolean): void {
  node.spaceBefore = false;
  if (isScalar(node)) setScalar(node, notations.has(key));
  else if (isMap<Node, Node | null>(node)) {
    if (sort && schema !== undefined) sortKeys(node, schema);
    const rest = schema?.additionalProperties;
    for (const pair of node.items) {
      layOut(pair, schema?.properties?.[keyOf(pair)] ?? (rest === false ? undefined : rest), depth + 1, sort);
    }
  } else if (isSeq<Node>(node)) {
    for (const item of node.items) {
      setNode(item, schema?.items, depth + 1, key, sort);
      if (!isCollection(item)) continue;
      item.flow = fits(item, 2 * depth + 4);
      if (item.flow) setFlow(item);
    }
  }
}

/** Text without quotes where it can be, and line by line where it has several lines. */
function setScalar(node: Node, isNotation = false): void {
  if (!isScalar(node) || typeof node.value !== "string") return;
  if (node.value.trim().includes("\n")) {
    node.type = Scalar.BLOCK_LITERAL;
    return;
  }
  if (isNotation) node.value = node.value.trim().replace(/\s+/g, " ");
  // A lone shaft needs no quotes: as a number it is the same.
  if (isNotation && /^[1-9]\d{0,8}$/.test(String(node.value))) {
    node.value = Number(node.value);
    return;
  }
  node.type = Scalar.PLAIN;
}

/** Whether a section or list, free of comments and lines of text, fits on its line from `column` on. */
function fits(node: Node, column: number): boolean {
  const width = widthOf(node);
  return width !== undefined && column + width <= widest;
}

/** The width of a node set on one line; undefined when it cannot be. */
function widthOf(node: Node | null): number | undefined {
  if (node === null) return 0;
  if (node.comment || node.commentBefore) return undefined;
  if (isScalar(node)) {
    if (node.type === Scalar.BLOCK_LITERAL) return undefined;
    return String(node.value).length + 2;
  }
  if (!isCollection(node)) return 10;
  let width = 4;
  for (const item of node.items as readonly (Node | Entry)[]) {
    const parts = "key" in item ? [widthOf(item.key), widthOf(item.value)] : [widthOf(item)];
    for (const part of parts) {
      if (part === undefined) return undefined;
      width += part + 2;
    }
  }
  return width;
}

/** Sets everything within a node on the same line. */
function setFlow(node: Node): void {
  if (!isCollection(node)) return;
  node.flow = true;
  for (const item of node.items as readonly (Node | Entry)[]) {
    const value = "key" in item ? item.value : item;
    if (value !== null) setFlow(value);
  }
}
