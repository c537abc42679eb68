/** The drawn squares of a recipe asked again: on fewer shafts, or with fewer lifts unlike each other. */
import type { NearestCloth } from "@drawcord/chart";
import { type Recipe, type RecipePiece, reviseDraft, soundRecipe } from "@drawcord/files";
import { type BitGrid, fromCells, mirror, toText, transpose } from "@drawcord/grid";
import { bordersOf, expand } from "@drawcord/units";
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
 * @param keep rows x units, raised where a square may not change besides
 * @throws {FileError} as `soundRecipe`; {CliError} `bad-mask` for a mask of another size
 */
export function chartOfRecipe(bytes: Uint8Array, name: string, keep: BitGrid | undefined): RecipeChart {
  const recipe = soundRecipe(bytes, name);
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

/**
 * The text of the recipe with another threading and other lifts.
 * @throws {CliError} `several-pieces` for a recipe that several pieces are woven of; {FileError} as `reviseDraft`
 */
export function recipeBy(bytes: Uint8Array, { recipe }: RecipeChart, cloth: NearestCloth): string {
  if (recipe.pieces.some(({ path }) => path.length > 0)) {
    const sentence = `${recipe.file}: the threading of all pieces would change; a recipe with "pieces" is shown on other shafts, but not written`;
    throw new CliError("several-pieces", sentence, { file: recipe.file });
  }
  const { threading, lifts } = cloth;
  return reviseDraft(bytes, recipe.file, { ...recipe.draft, threading, lifts }).text;
}
