/** The drawn squares of a recipe asked again: on fewer shafts, or with fewer lifts unlike each other. */
import type { NearestCloth } from "@drawcord/chart";
import { type Recipe, type RecipePiece, revisePieces, soundRecipe } from "@drawcord/files";
import { type BitGrid, fromCells, mirror, toText, transpose } from "@drawcord/grid";
import { bordersOf, expand, renumberedShafts } from "@drawcord/units";
import { chosenPiece } from "../chosen-piece.js";
import { CliError } from "../error.js";
import { shaftsUsed } from "./weave-chart.js";

/** The drawn squares of a recipe, to be woven by other means. */
export interface RecipeChart {
  readonly recipe: Recipe;
  /** Rows x units: the rows of its pieces one after another, row 1 of the first piece first. */
  readonly wanted: BitGrid;
  /** Rows x units, raised where a square may not change. */
  readonly fixed: BitGrid;
  /** What can be had without a change, as a sentence; none where there is nothing. */
  readonly saving: string | undefined;
}

/** Whether a file may be a recipe, where it is no picture. */
export function looksLikeRecipe(bytes: Uint8Array): boolean {
  return /^\s*["']?recipe["']?\s*:/m.test(new TextDecoder().decode(bytes));
}

/**
 * The squares that a recipe draws; its borders and the squares of a mask are not to change.
 * @param asked a piece by its name, else all in weaving order; `keep` is rows x units, raised where a square may not change
 * besides
 * @throws {FileError} as `soundRecipe`; {CliError} `unknown-piece`; `bad-mask` for a mask of another size
 */
export async function chartOfRecipe(
  bytes: Uint8Array,
  name: string,
  { keep, piece }: { readonly keep: BitGrid | undefined; readonly piece: string | undefined },
): Promise<RecipeChart> {
  const recipe = await chosenPiece(soundRecipe(bytes, name), piece);
  const { threading } = recipe.draft;
  const wanted = stacked(recipe.pieces, threading.length);
  if (keep !== undefined && (keep.rows !== wanted.rows || keep.columns !== wanted.columns)) {
    const sentence = `the squares to keep are ${keep.rows} rows x ${keep.columns} units; those of ${name} are ${wanted.rows} x ${wanted.columns}`;
    throw new CliError("bad-mask", sentence, { file: name });
  }
  const { left, right } = bordersOf(threading);
  const fixed = fromCells(wanted.rows, wanted.columns, (row, unit) => {
    const isOfBorder = unit < left || unit >= wanted.columns - right;
    return isOfBorder || keep?.get(row, unit) === true;
  });
  return { recipe, wanted, fixed, saving: savingOf(recipe, wanted) };
}

/** The squares of pieces one after another. */
function stacked(pieces: readonly RecipePiece[], units: number): BitGrid {
  const squares = pieces.map(({ draft }) => expand(draft).squares);
  const rows = squares.flatMap((grid) => Array.from({ length: grid.rows }, (_, row) => ({ grid, row })));
  return fromCells(rows.length, units, (row, unit) => {
    const at = rows[row]!;
    return at.grid.get(at.row, unit);
  });
}

/** Shafts that can be saved while every square stays, and why they can. */
function savingOf({ draft }: Recipe, wanted: BitGrid): string | undefined {
  const columns = toText(transpose(wanted)).split("\n");
  const taken = new Set(columns.filter((column) => column.includes("#"))).size;
  const now = shaftsUsed(draft);
  if (taken >= now) return undefined;
  const why = mirror(wanted).equals(wanted)
    ? "the right half mirrors the left, so both can hang on the same shafts"
    : "units on different shafts are drawn in the same rows";
  return `${taken} shafts for ${now} weave the same squares: ${why}`;
}

/** The cloth with its shafts numbered in the order of those that its units hung on. */
export function inOrderOf({ draft }: Recipe, cloth: NearestCloth): NearestCloth {
  const shafts = [...new Set(cloth.threading.flat())];
  const first = (shaft: number) =>
    cloth.threading.reduce(
      (least, [of], unit) => (of === shaft ? Math.min(least, ...draft.threading[unit]!) : least),
      Number.POSITIVE_INFINITY,
    );
  const order = shafts.toSorted((a, b) => first(a) - first(b) || a - b);
  return { ...cloth, ...renumberedShafts(cloth, order) };
}

/**
 * The text of the recipe with another threading and other lifts, its blocks and comments kept; of the piece that was asked
 * for alone without the others.
 * @throws {FileError} as `revisePieces`
 */
export function recipeBy(bytes: Uint8Array, { recipe }: RecipeChart, cloth: NearestCloth): string {
  const { threading, lifts } = cloth;
  let row = 0;
  const pieces = recipe.pieces.map(({ order: _order, blocks: _blocks, ...piece }) => {
    const own = lifts.slice(row, row + piece.draft.lifts.length);
    row += own.length;
    return { ...piece, draft: { ...piece.draft, threading, lifts: own } };
  });
  const whole = { ...recipe, pieces, draft: pieces[0]!.draft };
  return revisePieces(bytes, whole);
}
