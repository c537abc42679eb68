import type { Range } from "@drawcord/base";
import { recipeSchema } from "../schema/recipe.js";
import { checkShape } from "../tree/shape.js";
import { at, keyOf, need, type Path, placeOf, root, spotAt, wholeOf } from "../tree/spot.js";
import { readTree } from "../tree/tree.js";
import { rowPlaces, unitPlaces } from "./part-places.js";
import type { Recipe } from "./types.js";

/** Where everything of a recipe stands in its text. Positions in the lists of a path count from 0. */
export interface RecipePlaces {
  /** The value at the end of a path: a text, a number or an entry of a list as a whole, anything else at its key; undefined where there is none. */
  at(path: Path): Range | undefined;
  /** The value at the end of a path as a whole, a section or a list from its first sign to its last. */
  whole(path: Path): Range | undefined;
  /** The key of the value at the end of a path; undefined for an entry of a list too. */
  key(path: Path): Range | undefined;
  /** Each row of a piece, row 1 first: its line, in a block or a picture too; `piece` counts from 0, default the first. */
  rows(piece?: number): readonly Range[];
  /** Each unit of the threading, unit 1 first: the shaft or the run that it is written by. */
  units(): readonly Range[];
  /** Each end of a selvedge that is threaded end by end, from left to right; none of one in a weave. */
  selvedge(side: "left" | "right"): readonly Range[];
}

/** The places of a recipe that was not read from a text. */
const nowhere: RecipePlaces = {
  at: () => undefined,
  whole: () => undefined,
  key: () => undefined,
  rows: () => [],
  units: () => [],
  selvedge: () => [],
};

/**
 * The places of a recipe, found in the text that it was read from; a recipe without a text has none. The text is taken
 * apart once for all that is asked.
 * @throws {FileError} for a text that no recipe was read from
 * @example placesOf(soundRecipe(text, "least")).units()[1] // { file: "least", line: 3, column: 32, offset: 134, end: { line: 3, column: 33, offset: 135 } }
 */
export function placesOf({ file, pieces, text }: Pick<Recipe, "file" | "pieces" | "text">): RecipePlaces {
  if (text === "") return nowhere;
  const tree = readTree(text, file);
  const top = root(tree);
  checkShape(top, recipeSchema);
  const rows = pieces.map((piece) =>
    once(() => rowPlaces(need(spotAt(tree, piece.path), "lifts"), at(top, "lifts"), piece)),
  );
  const units = once(() => unitPlaces(need(need(top, "units"), "threading")));
  const find = (path: Path) => spotAt(tree, path);
  return {
    at: (path) => place(find(path), placeOf),
    whole: (path) => place(find(path), wholeOf),
    key: (path) => place(find(path), keyOf),
    rows: (piece = 0) => rows[piece]!(),
    units,
    selvedge: (side) => place(find(["ground", "selvedge", side]), unitPlaces) ?? [],
  };
}

function place<From, To>(of: From | undefined, find: (of: From) => To): To | undefined {
  return of === undefined ? undefined : find(of);
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
