import type { Range, TextPoint } from "@drawcord/base";
import { type Cause, findCauses, type SearchBounds, type Written } from "@drawcord/causes";
import type { CheckOptions, Report } from "@drawcord/check";
import type { Path, Recipe, RecipePlaces } from "@drawcord/files";
import type { Change, UnitDraft } from "@drawcord/units";
import { acceptedSlips } from "./accepted-slips.js";

/** A cause with its place in the text of the recipe. */
export interface PlacedCause extends Cause {
  /** The line in which the slip was written, from 1; left out with the rest where the recipe has no place for it. */
  readonly line?: number;
  /** The column, from 1, in UTF-16 units. */
  readonly column?: number;
  /** The place in the whole text, from 0, in UTF-16 units. */
  readonly offset?: number;
  /** The point behind what was written. */
  readonly end?: TextPoint;
  /** The piece, where there are several and not all have it; rows count from its first. */
  readonly piece?: string;
  /** All pieces that have it, `piece` first, where there are several and not all have it. */
  readonly pieces?: readonly string[];
  /** Why the recipe accepts the slip, where it does; it is then not sure, and not counted. */
  readonly waived?: string;
}

/** The causes of a recipe, each where it was written, and what was not tried. */
export function recipeCauses(
  recipe: Recipe,
  places: RecipePlaces,
  options: CheckOptions,
  report: Report,
  search: SearchBounds,
): { readonly causes: readonly PlacedCause[]; readonly untried: readonly string[] } {
  const { causes, untried } = findCauses(recipe.draft, options, {
    ...search,
    report,
    written: writtenRows(recipe.draft, places),
    lines: writtenLines(places),
    writtenUnits: writtenUnits(recipe.draft, places),
  });
  return {
    causes: acceptedSlips(recipe, causes).map((cause) => {
      const place = placeOf(cause.changes[0], places);
      if (place === undefined) return cause;
      const { column, end, line, offset } = place;
      return { ...cause, line, column, offset, end };
    }),
    untried,
  };
}

/**
 * The rows (from 0) that each line of the lifts weaves, in the order in which the lines are first woven: what `findCauses`
 * takes as `written`.
 * @param draft the draft of the recipe
 * @param places the places of the recipe, as `placesOf` gives them
 * @example writtenRows(recipe.draft, placesOf(recipe)).flat().length === recipe.draft.lifts.length // true
 */
export function writtenRows(draft: UnitDraft, places: RecipePlaces): Written {
  const lines = new Map<string, number[]>();
  places.rows().forEach(({ column, line }, row) => {
    // A block that is woven changed draws other shafts from the same line.
    const key = `${line} ${column} ${draft.lifts[row]!.join()}`;
    const rows = lines.get(key);
    if (rows === undefined) lines.set(key, [row]);
    else rows.push(row);
  });
  return [...lines.values()];
}

/**
 * The line in which each row of the lifts is written, by a number: what `findCauses` takes as `lines`.
 * @param places the places of the recipe, as `placesOf` gives them
 * @example writtenLines(placesOf(recipe)).length === recipe.draft.lifts.length // true
 */
export function writtenLines(places: RecipePlaces): readonly number[] {
  const numbers = new Map<string, number>();
  return places.rows().map(({ column, line }) => {
    const key = `${line} ${column}`;
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  });
}

/**
 * The units (from 0) that each unit of the threading as it is written threads, in a group that comes again more than one:
 * what `findCauses` takes as `writtenUnits`.
 * @param draft the draft of the recipe
 * @param places the places of the recipe, as `placesOf` gives them
 * @example writtenUnits(recipe.draft, placesOf(recipe)).flat().length === recipe.draft.threading.length // true
 */
export function writtenUnits(draft: UnitDraft, places: RecipePlaces): Written {
  const written = new Map<string, number[]>();
  let before = "";
  let times = 0;
  const ranges = places.units();
  draft.threading.forEach((shafts, unit) => {
    const { column = 0, line = 0 } = ranges[unit] ?? {};
    const key = `${line} ${column} ${shafts.join()}`;
    // `5*4` are four units, and a group that comes again begins anew.
    times = key === before ? times + 1 : 0;
    before = key;
    const one = `${key} ${times}`;
    const units = written.get(one);
    if (units === undefined) written.set(one, [unit]);
    else units.push(unit);
  });
  return [...written.values()];
}

/** Where what a change is about was written. */
function placeOf(change: Change | undefined, { at, rows, units }: RecipePlaces): Range | undefined {
  if (change === undefined) return undefined;
  const first = (...paths: Path[]) => paths.map(at).find((found) => found !== undefined);
  switch (change.change) {
    case "thread":
    case "remove-unit":
      return units()[change.unit - 1];
    case "insert-unit": {
      const places = units();
      return places[Math.min(change.unit, places.length) - 1];
    }
    case "swap-units":
      return units()[change.units[0] - 1];
    case "lift":
    case "draw":
    case "leave":
    case "remove-row":
      return rows()[change.row - 1];
    case "insert-row": {
      const places = rows();
      return places[Math.min(change.row, places.length) - 1];
    }
    case "swap-rows":
    case "shift":
      return rows()[change.rows[0] - 1];
    case "row-picks":
      return first(["lifts", "picks", change.row - 1], ["lifts", "picks"]);
    case "tie":
      return first(["ground", "steps", change.step - 1], ["ground", "weave"], ["ground"]);
    case "start-ground":
    case "swap-ground":
      return first(["ground", "steps"], ["ground", "weave"], ["ground"]);
    case "ground-threading":
      return first(["ground", "threading"], ["ground"]);
    case "selvedge":
      return first(["ground", "selvedge", change.side], ["ground", "selvedge"]);
    case "number":
      return first(change.key.split("."));
  }
}
