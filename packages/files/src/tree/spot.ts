/** A value in a tree together with the way to it, so that whatever is said of it can name its place. */
import { isMap, isScalar, isSeq, type Node } from "yaml";
import { FileError, type FileErrorCode } from "../error.js";
import { type Place, placeIn } from "../place.js";
import { offsetInScalar, offsetsInScalar } from "./scalar-offset.js";
import type { Tree } from "./tree.js";

/** Keys and list positions (from 0) from the top of a document to a value. */
export type Path = readonly (string | number)[];

/** A value, the way to it, and the key it stands under. */
export interface Spot {
  readonly tree: Tree;
  readonly path: Path;
  /** The value, aliases followed; null where a key has none. */
  readonly node: Node | null;
  /** The key of the value, as a node; none at the top and in lists. */
  readonly key?: Node;
}

/** The whole document. */
export function root(tree: Tree): Spot {
  return spot(tree, [], tree.document.contents);
}

function spot(tree: Tree, path: Path, node: Node | null, key?: Node): Spot {
  const value = node === null ? null : (tree.aliases.get(node) ?? node);
  return key === undefined ? { tree, path, node: value } : { tree, path, node: value, key };
}

/** The keys of a section with their values, in the order of the text; none when it is no section. */
export function entries(of: Spot): readonly (readonly [key: string, value: Spot])[] {
  if (!isMap<Node, Node | null>(of.node)) return [];
  return of.node.items.map(({ key, value }) => {
    const name = keyText(key);
    return [name, spot(of.tree, [...of.path, name], value, key)] as const;
  });
}

/** A key as text, whatever YAML takes it for. */
function keyText(key: Node | null): string {
  if (!isScalar(key)) return "";
  return typeof key.value === "string" ? key.value : (key.source ?? String(key.value));
}

/** The value under a key; undefined when the section has no such key. */
export function at(of: Spot, name: string): Spot | undefined {
  if (!isMap<Node, Node | null>(of.node)) return undefined;
  const pair = of.node.items.find(({ key }) => keyText(key) === name);
  return pair === undefined ? undefined : spot(of.tree, [...of.path, name], pair.value, pair.key);
}

/** The entries of a list; none when it is no list. */
export function items(of: Spot): readonly Spot[] {
  if (!isSeq<Node | null>(of.node)) return [];
  return of.node.items.map((node, i) => spot(of.tree, [...of.path, i], node));
}

/** One entry of a list; undefined when there is none. */
function item(of: Spot, i: number): Spot | undefined {
  const node = isSeq<Node | null>(of.node) ? of.node.items[i] : undefined;
  return node === undefined ? undefined : spot(of.tree, [...of.path, i], node);
}

/** Whether the value is a list. */
export function isList(of: Spot): boolean {
  return isSeq(of.node);
}

/** Whether the value is a section of keys. */
export function isSection(of: Spot): boolean {
  return isMap(of.node);
}

/** The value as the plain thing YAML reads; undefined for lists and sections. */
export function scalar(of: Spot): unknown {
  if (of.node === null) return null;
  return isScalar(of.node) ? of.node.value : undefined;
}

/** The value as text: numbers as they are written. */
export function textOf(of: Spot): string {
  if (!isScalar(of.node)) return "";
  return typeof of.node.value === "string" ? of.node.value : (of.node.source ?? String(of.node.value));
}

/** A number of a section that may leave it out. */
export function numberAt(of: Spot | undefined, name: string): number | undefined {
  const value = of === undefined ? undefined : at(of, name);
  const found = value === undefined ? undefined : scalar(value);
  return typeof found === "number" ? found : undefined;
}

/** A text of a section that may leave it out. */
export function textAt(of: Spot | undefined, name: string): string | undefined {
  const value = of === undefined ? undefined : at(of, name);
  return value === undefined ? undefined : textOf(value);
}

/** The way to a value as people say it: `lifts.rows, item 3`. */
export function wayTo(path: Path): string {
  return path.reduce<string>(
    (way, step) =>
      typeof step === "number" ? `${way}, item ${step + 1}` : way === "" ? step : `${way}.${step}`,
    "",
  );
}

/** Where a value stands: a text or number where it begins, anything else at its key. */
export function placeOf(of: Spot): Place {
  const { tree, node, key } = of;
  const plain = isScalar(node) && node.value !== null;
  const offset = (plain || key === undefined ? node : key)?.range?.[0] ?? 0;
  return placeIn(tree.starts, offset);
}

/** The place of the character `index` (from 0) of a text value. */
function placeInText(of: Spot, index: number): Place {
  if (!isScalar(of.node)) return placeOf(of);
  return placeIn(of.tree.starts, offsetInScalar(of.node, of.tree.text, index));
}

/** The places of characters of a text value that are no blanks; `indexes` from 0, ascending. */
export function placesInText(of: Spot, indexes: readonly number[]): readonly Place[] {
  const { node, tree } = of;
  if (!isScalar(node)) return indexes.map(() => placeOf(of));
  return offsetsInScalar(node, tree.text, indexes).map((offset) => placeIn(tree.starts, offset));
}

/** The error that says what is wrong with a value, at its place or at the character `index` (from 0) of its text. */
export function wrong(of: Spot, code: FileErrorCode, sentence: string, index?: number): FileError {
  const place = index === undefined ? placeOf(of) : placeInText(of, index);
  return new FileError(code, sentence, of.tree.file, place);
}

/** The place of the value at the end of a path; undefined when the document has none there. */
export function placeAt(tree: Tree, path: Path): Place | undefined {
  let here: Spot | undefined = root(tree);
  for (const step of path) {
    here = typeof step === "string" ? at(here, step) : item(here, step);
    if (here === undefined) return undefined;
  }
  return placeOf(here);
}
