/** The text of a recipe of which one piece alone is left. */
import { isCollection, isMap, isPair, type Node } from "yaml";
import { FileError } from "../../error.js";
import { allEntries, allItems, type Path, type Spot, scalar, spotAt } from "../../tree/spot.js";
import { readTree, type Tree } from "../../tree/tree.js";
import { soundRecipe } from "../read.js";
import { revisionSplices } from "../revise.js";
import { type Splice, spliced } from "../text-edits.js";
import type { Recipe } from "../types.js";
import { recipeOfPiece } from "./of-piece.js";
import { yarnsUsed } from "./yarns-used.js";

/**
 * The text without the other pieces, the blocks that they alone weave and the yarns that are in them alone; all else stays
 * as it stands, comments too.
 * @returns undefined where it stands in a way that nothing can be taken out of
 */
export function pieceAlone(text: string, file: string, name: string): string | undefined {
  const tree = readTree(text, file);
  const whole = recipeOfPiece(soundRecipe(text, file), name);
  // What stands elsewhere and is used again by its name has no place of its own.
  if (whole === undefined || tree.aliases.size > 0) return undefined;
  const { blocks = {}, path } = whole.pieces[0]!;
  const yarns = yarnsUsed(whole);
  const parts = (isYarnLeft: (name: string) => boolean): readonly Part[] => [
    { path: ["pieces"], keep: (_key, place) => place === path[1] },
    { path: ["yarns"], keep: isYarnLeft },
    { path: ["cloth", "first-pick-from"], keep: isYarnLeft },
  ];
  const inColours = namesIn(spotAt(tree, ["colours"]));
  const ofOthers: Part = { path: ["colours"], keep: (key) => key === "warp" };
  const ofAll = spotAt(tree, ["lifts", "blocks"]);
  const isOfBlocks = ofAll !== undefined && allEntries(ofAll).some(([key]) => Object.hasOwn(blocks, key));
  const shared: Part = isOfBlocks
    ? { path: ["lifts", "blocks"], keep: (key) => Object.hasOwn(blocks, key) }
    : { path: [], keep: (key) => key !== "lifts" };
  const from = isOfBlocks ? text : withOwnPicks(tree, path);
  return (
    tried([...parts((yarn) => yarns.has(yarn)), shared, ofOthers]) ??
    tried([...parts((yarn) => yarns.has(yarn) || inColours.has(yarn)), shared])
  );

  /** The text without parts; undefined where the piece would be another then. */
  function tried(taken: readonly Part[]): string | undefined {
    try {
      const made = taken.reduce((now, part) => without(now, file, part), from);
      return isSame(soundRecipe(made, file), whole!) ? made : undefined;
    } catch (error) {
      if (error instanceof FileError) return undefined;
      throw error;
    }
  }
}

/** The text with the picks that all pieces share written in the lifts of one that has none of its own. */
function withOwnPicks(tree: Tree, piece: Path): string {
  const own = [...piece, "lifts", "picks"];
  const picks = spotAt(tree, ["lifts", "picks"]);
  const value = picks && scalar(picks);
  if (typeof value !== "number" || spotAt(tree, own) !== undefined) return tree.text;
  return spliced(tree.text, revisionSplices(tree, [{ path: own, value }]));
}

/** All words of a section, the names of yarns among them. */
function namesIn(section: Spot | undefined): ReadonlySet<string> {
  const [from = 0, to = 0] = section?.node?.range ?? [];
  return new Set(section?.tree.text.slice(from, to).match(/[^\s*,:"'()[\]{}]+/g));
}

/** A section or a list, and which of its entries stay. */
interface Part {
  readonly path: Path;
  readonly keep: (key: string, place: number) => boolean;
}

/** Whether the one piece of a recipe is woven as it was among others. */
function isSame(found: Recipe, wanted: Recipe): boolean {
  const told = ({ draft, pieces, warp }: Recipe) =>
    JSON.stringify([
      draft.threading,
      warp,
      pieces.map((piece) => [piece.name, piece.count, piece.draft, piece.wefts, piece.length, piece.limits]),
    ]);
  return told(found) === told(wanted);
}

/** A text without the entries of a part that do not stay; without the part where none does. */
function without(text: string, file: string, { keep, path }: Part): string {
  const tree = readTree(text, file);
  const part = spotAt(tree, path);
  if (part === undefined || !isCollection(part.node)) return text;
  const entries = isMap(part.node)
    ? allEntries(part)
    : allItems(part).map((item) => [String(item.path.at(-1)), item] as const);
  const stays = entries.map(([key], i) => keep(key, i));
  if (stays.every(Boolean)) return text;
  if (!stays.includes(true)) {
    const [owner, key] = [path.slice(0, -1), path.at(-1)];
    return without(text, file, { path: owner, keep: (other) => other !== key });
  }
  const spots = entries.map(([, spot]) => spot);
  const splices = part.node.flow === true ? inBrackets(spots, stays) : inLines(text, part, spots, stays);
  return spliced(text, splices);
}

/** What takes entries out of brackets, each with the comma behind it; the last ones with the comma before them. */
function inBrackets(entries: readonly Spot[], stays: readonly boolean[]): readonly Splice[] {
  const last = stays.lastIndexOf(true);
  const taken = entries.flatMap((entry, i) =>
    i < last && !stays[i] ? [{ from: startOf(entry), to: startOf(entries[i + 1]!), by: "" }] : [],
  );
  return last === entries.length - 1
    ? taken
    : [...taken, { from: endOf(entries[last]!), to: endOf(entries.at(-1)!), by: "" }];
}

/** What takes out entries with lines of their own, and the comments above them. */
function inLines(
  text: string,
  owner: Spot,
  entries: readonly Spot[],
  stays: readonly boolean[],
): readonly Splice[] {
  const lineAfter = (offset: number) => {
    const newline = text.indexOf("\n", offset);
    return newline < 0 ? text.length : newline + 1;
  };
  // What stands above the first of all sections is told of the whole recipe.
  const first = owner.key === undefined ? startOf(entries[0]!) : lineAfter(owner.key.range?.[1] ?? 0);
  const ends = entries.map((entry) => lineAfter(endOf(entry)));
  const firstKept = stays.indexOf(true);
  return entries.flatMap((_entry, i) => {
    if (stays[i]) return [];
    const from = i === 0 ? first : ends[i - 1]!;
    // No blank line is left between a section and its first entry.
    const blank = i === firstKept - 1 ? /^(?:[ \t]*\r?\n)*/.exec(text.slice(ends[i]!))![0].length : 0;
    return [{ from, to: ends[i]! + blank, by: "" }];
  });
}

function startOf({ key, node }: Spot): number {
  return (key ?? node)?.range?.[0] ?? 0;
}

/** Where the last of what an entry says ends: what a section in lines goes on with are comments. */
function endOf({ key, node, tree }: Spot): number {
  let here: Node | null | undefined = node;
  let before: Node | undefined = key;
  while (isCollection(here) && here.flow !== true && here.items.length > 0) {
    const last: unknown = here.items.at(-1);
    if (isPair<Node, Node | null>(last)) before = last.key;
    here = isPair<Node, Node | null>(last) ? last.value : (last as Node | null);
  }
  const of = here ?? before;
  const [from = 0, to = 0] = of?.range ?? [];
  return from + tree.text.slice(from, to).trimEnd().length;
}
