import type { ShaftSet } from "@drawcord/ground";
import {
  blocksTogether,
  changedLifts,
  exchangedLifts,
  parseShafts,
  parseWovenBlock,
  printShafts,
  printThreading,
  printWovenBlock,
  UnitsError,
  type WovenBlock,
} from "@drawcord/units";
import { FileError } from "../../error.js";
import { at, items, root, type Spot, spotAt, textOf } from "../../tree/spot.js";
import { readTree } from "../../tree/tree.js";
import { soundRecipe } from "../read.js";
import { inline } from "../revise.js";
import { type Splice, spliced } from "../text-edits.js";
import { highestShaft } from "../threading.js";
import type { Recipe } from "../types.js";
import { type BlockRows, rowsOfBlocks } from "./block-rows.js";
import { ownBlocks } from "./own-blocks.js";
import { rowSplices } from "./row-splices.js";
import { mappedLine, type ShaftMap, shaftMap } from "./shaft-map.js";

type Rows = readonly ShaftSet[];

/**
 * The text of a recipe on another threading, the lifts of its pieces with it: blocks and pieces stay, each written as it was,
 * a picture as a picture and rows as rows, with their comments. A line of a weaving order that the new shafts cannot weave
 * as it stands gets a block of its own.
 * @param recipe what it is to weave: as it was read, with another threading and other lifts in its pieces
 * @returns undefined where that cannot be written in this way
 */
export function rethreaded(text: string, recipe: Recipe): string | undefined {
  const before = soundRecipe(text, recipe.file);
  const map = shaftMap(before.draft.threading, recipe.draft.threading);
  if (map === undefined || before.pieces.length !== recipe.pieces.length) return undefined;
  try {
    const splices = splicesOf(text, before, recipe, map);
    if (splices === undefined) return undefined;
    const made = spliced(
      text,
      splices.toSorted((a, b) => a.from - b.from),
    );
    return isAsWanted(soundRecipe(made, recipe.file), recipe, before) ? made : undefined;
  } catch (error) {
    if (error instanceof FileError || error instanceof UnitsError) return undefined;
    throw error;
  }
}

function isAsWanted(found: Recipe, wanted: Recipe, before: Recipe): boolean {
  const told = ({ draft, pieces }: Recipe, wefts: Recipe) =>
    JSON.stringify([
      draft.threading,
      pieces.map((piece, i) => [piece.draft.lifts, wefts.pieces[i]?.wefts, piece.draft.picksPerRow]),
    ]);
  return told(found, found) === told(wanted, before);
}

/** A block where it stands. */
interface StandingBlock extends BlockRows {
  readonly spot: Spot;
}

function splicesOf(
  text: string,
  before: Recipe,
  recipe: Recipe,
  map: ShaftMap,
): readonly Splice[] | undefined {
  const tree = readTree(text, recipe.file);
  const top = root(tree);
  const [shafts, now] = [before, recipe].map(({ draft }) => highestShaft(draft.threading)) as [
    number,
    number,
  ];
  const splices: Splice[] = [];
  const threading = at(at(top, "units")!, "threading")!;
  if (!isSame(before.draft.threading, recipe.draft.threading)) {
    splices.push(valueSplice(threading, printThreading(recipe.draft.threading)));
  }
  const standing = new Map<string, StandingBlock>();
  const pieces = recipe.pieces.map(({ draft }, i) => {
    const was = before.pieces[i]!;
    const section = spotAt(tree, was.path) ?? top;
    const exchanged = was.path.length === 0 ? undefined : at(section, "counterchange");
    const on = exchanged && map.all(parseShafts(textOf(exchanged)));
    if (exchanged !== undefined && printShafts(parseShafts(textOf(exchanged))) !== printShafts(on!)) {
      splices.push(valueSplice(exchanged, printShafts(on!)));
    }
    const wanted = on === undefined ? draft.lifts : exchangedLifts(draft.lifts, on);
    return { lifts: at(section, "lifts")!, was, wanted };
  });
  for (const { lifts, was, wanted } of pieces) {
    if (was.order === undefined) continue;
    for (const [name, rows] of rowsOfBlocks({ order: was.order, blocks: was.blocks!, wanted }, map, shafts)) {
      const spot = blockAt(name, lifts, top);
      if (spot === undefined) return undefined;
      const key = spot.path.join("\n");
      if (standing.get(key)?.isShown !== true) standing.set(key, { ...rows, spot });
    }
  }
  const widthOf = (columns: number) =>
    map.all(Array.from({ length: columns }, (_, i) => i + 1)).at(-1) ?? columns;
  for (const { isPlaced, rows, spot } of standing.values()) {
    const made = rowSplices(text, spot, rows, isPlaced ? undefined : widthOf);
    if (made === undefined) return undefined;
    splices.push(...made);
  }
  const own = ownBlocks(text, top, now);
  for (const { lifts, was, wanted } of pieces) {
    if (was.order === undefined) {
      const made = rowSplices(text, lifts, wanted, () => now);
      if (made === undefined) return undefined;
      splices.push(...made);
      continue;
    }
    const lines = items(at(lifts, "order")!);
    if (lines.length !== was.order.length) return undefined;
    const rowsOf = (name: string) => {
      const spot = blockAt(name, lifts, top);
      return spot && standing.get(spot.path.join("\n"))?.rows;
    };
    let row = 0;
    for (const [i, line] of lines.entries()) {
      const written = parseWovenBlock(textOf(line));
      const length = linesRows(was.order[i]!, (name) => was.blocks![name], shafts)!.length;
      const stretch = wanted.slice(row, row + length);
      row += length;
      const woven = tryRows(mappedLine(map, was.order[i]!), rowsOf, now);
      const after = isSame(woven, stretch)
        ? printWovenBlock(mappedLine(map, written))
        : own.lineFor(blockAt(written.block, lifts, top)!, written, stretch);
      if (after === undefined) return undefined;
      if (after !== printWovenBlock(written)) splices.push(valueSplice(line, after));
    }
  }
  return [...splices, ...own.splices()];
}

function blockAt(name: string, lifts: Spot, top: Spot): Spot | undefined {
  const shared = at(top, "lifts");
  for (const owner of [lifts, shared]) {
    const blocks = owner && at(owner, "blocks");
    const spot = blocks && at(blocks, name);
    if (spot !== undefined) return spot;
  }
  return undefined;
}

/** The rows of a line of a weaving order; undefined where one of its blocks is not there. */
function linesRows(
  line: WovenBlock,
  rowsOf: (name: string) => Rows | undefined,
  shafts: number,
): Rows | undefined {
  const parts = [line, ...(line.beside ?? [])].map(({ block, changes }) => {
    const rows = rowsOf(block);
    return rows && changes.reduce((made, change) => changedLifts(made, change, shafts, rowsOf), rows);
  });
  const known = parts.flatMap((lifts, i) => (lifts === undefined ? [] : [{ name: String(i), lifts }]));
  if (known.length < parts.length) return undefined;
  return known.length === 1 ? known[0]!.lifts : blocksTogether(known, line.cutShort);
}

/** The same, or nothing where the new shafts refuse it. */
function tryRows(...of: Parameters<typeof linesRows>): Rows | undefined {
  try {
    return linesRows(...of);
  } catch (error) {
    if (error instanceof UnitsError) return undefined;
    throw error;
  }
}

function isSame(a: Rows | undefined, b: Rows): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function valueSplice({ node, tree }: Spot, value: string): Splice {
  const [from = 0, to = 0] = node?.range ?? [];
  const by = inline(/^\d+$/.test(value) ? Number(value) : value);
  return { from, to: from + tree.text.slice(from, to).trimEnd().length, by };
}
