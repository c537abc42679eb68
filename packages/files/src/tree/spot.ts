/** A value in a tree together with the way to it, so that whatever is said of it can name its place. */
import type { Range } from "@drawcord/base";
import { isMap, isScalar, isSeq, type Node } from "yaml";
import { FileError, type FileErrorCode } from "../error.js";
import { stretchIn } from "../place.js";
import { Unread } from "./problems.js";
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

/** Leaves a value out of what is read: `at`, `items` and `entries` know it no more. */
export function leaveOut({ path, tree }: Spot): void {
  tree.problems.left.set(wayKey(path), path);
}

function wayKey(path: Path): string {
  return JSON.stringify(path);
}

/** Whether a value is left out of what is read, for a problem that is told. */
export function isLeftOut({ path, tree }: Spot): boolean {
  const { left } = tree.problems;
  return left.size > 0 && left.has(wayKey(path));
}

/** Whether every key of a section can be read, or every one of some. */
export function isWhole(of: Spot, names?: readonly string[]): boolean {
  return allEntries(of).every(([name, value]) => !isLeftOut(value) || names?.includes(name) === false);
}

/** The keys of a section that can be read, each once, with their values; none when it is no section. */
export function entries(of: Spot): readonly (readonly [key: string, value: Spot])[] {
  const seen = new Set<string>();
  return allEntries(of).filter(([name, value]) => {
    const again = seen.has(name);
    seen.add(name);
    return !again && !isLeftOut(value);
  });
}

/** The keys of a section with their values as they stand, in the order of the text; none when it is no section. */
export function allEntries(of: Spot): readonly (readonly [key: string, value: Spot])[] {
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

/** The value under a key; undefined when the section has no such key that can be read. */
export function at(of: Spot, name: string): Spot | undefined {
  if (!isMap<Node, Node | null>(of.node)) return undefined;
  const pair = of.node.items.find(({ key }) => keyText(key) === name);
  if (pair === undefined) return undefined;
  const value = spot(of.tree, [...of.path, name], pair.value, pair.key);
  return isLeftOut(value) ? undefined : value;
}

/**
 * The value under a key that its section must have.
 * @throws {Unread} when it is not there, or cannot be read: that is told already
 */
export function need(of: Spot | undefined, name: string): Spot {
  const value = of === undefined ? undefined : at(of, name);
  if (value === undefined) throw new Unread();
  return value;
}

/** The entries of a list that can be read; none when it is no list. */
export function items(of: Spot): readonly Spot[] {
  return allItems(of).filter((item) => !isLeftOut(item));
}

/** The entries of a list as they stand; none when it is no list. */
export function allItems(of: Spot): readonly Spot[] {
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

/** Where a value stands: a text, a number or an entry of a list as a whole, anything else at its key. */
export function placeOf(of: Spot): Range {
  const { node, key } = of;
  const plain = isScalar(node) && node.value !== null;
  const [from = 0, to = from] = (plain || key === undefined ? node : key)?.range ?? [];
  return rangeIn(of.tree, from, of.path.length > 0 ? to : from);
}

/** Where the whole of a value stands, a section or a list from its first sign to its last. */
export function wholeOf({ key, node, tree }: Spot): Range {
  const [from = 0, to = from] = (node ?? key)?.range ?? [];
  return rangeIn(tree, from, to);
}

/** Where the key of a value stands; undefined at the top and in lists. */
export function keyOf({ key, tree }: Spot): Range | undefined {
  const [from, to] = key?.range ?? [];
  return from === undefined || to === undefined ? undefined : rangeIn(tree, from, to);
}

/** From an offset up to another, without the blanks and line ends before the latter. */
function rangeIn({ file, starts, text }: Tree, from: number, to: number): Range {
  const solid = from + text.slice(from, to).trimEnd().length;
  return { file, ...stretchIn(starts, from, solid) };
}

/** The piece of a text value from the character `from` (from 0) up to `to`. */
function placeInText(of: Spot, from: number, to: number): Range {
  const { node, tree } = of;
  if (!isScalar(node)) return placeOf(of);
  const begins = offsetInScalar(node, tree.text, from);
  const last = to - 1 > from ? offsetInScalar(node, tree.text, to - 1) : begins;
  const end = Math.min(Math.max(begins, last) + (to > from ? 1 : 0), tree.text.length);
  return { file: tree.file, ...stretchIn(tree.starts, begins, end) };
}

/** A piece of a text value: from the character `from` (from 0) up to `to`. */
export interface Piece {
  readonly from: number;
  readonly to: number;
}

/** The places of pieces of a text value that begin and end with no blank, in their order and apart. */
export function placesInText(of: Spot, pieces: readonly Piece[]): readonly Range[] {
  const { node, tree } = of;
  if (!isScalar(node)) return pieces.map(() => placeOf(of));
  const marks = pieces.flatMap(({ from, to }) => [from, Math.max(from, to - 1)]);
  const offsets = offsetsInScalar(node, tree.text, marks);
  return pieces.map((_, i) => ({
    file: tree.file,
    ...stretchIn(tree.starts, offsets[2 * i]!, offsets[2 * i + 1]! + 1),
  }));
}

/** The error that says what is wrong with a value, at its place or at a piece of its text. */
export function wrong(of: Spot, code: FileErrorCode, sentence: string, piece?: Piece): FileError {
  const place = piece === undefined ? placeOf(of) : placeInText(of, piece.from, piece.to);
  return new FileError(code, sentence, of.tree.file, place);
}

/** The value at the end of a path; undefined when the document has none there. */
export function spotAt(tree: Tree, path: Path): Spot | undefined {
  let here: Spot | undefined = root(tree);
  for (const step of path) {
    here = typeof step === "string" ? at(here, step) : item(here, step);
    if (here === undefined) return undefined;
  }
  return here;
}
