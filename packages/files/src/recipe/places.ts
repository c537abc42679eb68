import type { Range } from "@drawcord/base";
import { keyOf, type Path, placeOf, type Spot, spotAt, wholeOf } from "../tree/spot.js";
import { readTree } from "../tree/tree.js";
import { rowPlaces, unitPlaces } from "./part-places.js";
import type { Recipe } from "./types.js";

/** Where everything of a recipe stands in its text. Positions in the lists of a path count from 0. */
export interface RecipePlaces {
  /**
   * The value at the end of a path: a text, a number or an entry of a list as a whole, anything else at its key; undefined
   * where there is none.
   * @param path keys and list positions (from 0) to the value
   */
  at(path: Path): Range | undefined;
  /**
   * The value at the end of a path as a whole, a section or a list from its first sign to its last.
   * @param path keys and list positions (from 0) to the value
   */
  whole(path: Path): Range | undefined;
  /**
   * The key of the value at the end of a path; undefined for an entry of a list too.
   * @param path keys and list positions (from 0) to the value
   */
  key(path: Path): Range | undefined;
  /**
   * Each row of the lift plan of a piece (from 0; the first when left out), row 1 first: its line, in a block or a picture too.
   * @param piece the piece, from 0
   */
  rows(piece?: number): readonly Range[];
  /** Each unit of the threading, unit 1 first: the shaft or the run that it is written by. */
  units(): readonly Range[];
  /**
   * Each end of a selvedge that is threaded end by end, from left to right; none of one in a weave.
   * @param side which of the two selvedges
   */
  selvedge(side: "left" | "right"): readonly Range[];
}

/**
 * The places of a recipe, found in the text that it was read from, which is taken apart once, when the first is asked for.
 * A recipe that was made as data, its text empty, has none.
 * @param recipe a recipe as it was read, or a clone of it
 * @throws {FileError} for a text that no recipe was read from
 * @example placesOf(soundRecipe(text, "least")).units()[1] // { file: "least", line: 3, column: 32, offset: 134, end: { line: 3, column: 33, offset: 135 } }
 */
export function placesOf(recipe: Pick<Recipe, "file" | "pieces" | "text" | "unread">): RecipePlaces {
  const { file, pieces, text, unread } = recipe;
  const tree = remembered((whole: string) => {
    const read = readTree(whole, file);
    for (const path of unread) read.problems.left.set(JSON.stringify(path), path);
    return read;
  });
  const spot = (path: Path) => (text === "" ? undefined : spotAt(tree(text), path));
  const find = <T>(path: Path, place: (of: Spot) => T): T | undefined => {
    const found = spot(path);
    return found && place(found);
  };
  const rowsOf = remembered((number: number) => {
    const piece = pieces[number];
    if (piece === undefined) return [];
    const lifts = spot([...piece.path, "lifts"]);
    return lifts === undefined ? [] : rowPlaces(lifts, spot(["lifts"]), piece);
  });
  const unitsOf = remembered((key: string) => find(JSON.parse(key) as Path, unitPlaces) ?? []);
  return {
    at: (path) => find(path, placeOf),
    whole: (path) => find(path, wholeOf),
    key: (path) => find(path, keyOf),
    rows: (piece = 0) => rowsOf(piece),
    units: () => unitsOf(JSON.stringify(["units", "threading"])),
    selvedge: (side) => unitsOf(JSON.stringify(["ground", "selvedge", side])),
  };
}

/** A function that works each answer out once. */
function remembered<Of, T>(make: (of: Of) => T): (of: Of) => T {
  const made = new Map<Of, T>();
  return (of) => {
    if (!made.has(of)) made.set(of, make(of));
    return made.get(of)!;
  };
}
