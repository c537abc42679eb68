/** What to write in a recipe so that it makes another draft: no more of its text than what differs. */
import type { Path, Recipe, RecipeValue, Revision } from "@drawcord/files";
import { printLifts, printShafts, printThreading, type UnitDraft } from "@drawcord/units";
import { CliError } from "../error.js";

/**
 * The revisions that turn the draft of a recipe into `draft`.
 * @throws {CliError} `unmendable` for lifts that are written as a picture or in blocks
 */
export function revisionsFor(recipe: Recipe, draft: UnitDraft): readonly Revision[] {
  const { draft: before } = recipe;
  return [
    ...set(["units", "threading"], before.threading, draft.threading, printThreading),
    ...set(["units", "ends"], before.unitEnds, draft.unitEnds, (ends) => ends),
    ...lifts(recipe, draft),
    ...set(["lifts", "picks"], before.picksPerRow, draft.picksPerRow, (picks) => picks),
    ...ground(recipe, draft),
    ...set(["ground", "selvedge", "left"], before.selvedge?.left, draft.selvedge?.left, endsText),
    ...set(["ground", "selvedge", "right"], before.selvedge?.right, draft.selvedge?.right, endsText),
  ];
}

/** A revision where the value is another than before. */
function set<Value>(
  path: Path,
  before: Value | undefined,
  after: Value | undefined,
  print: (value: Value) => RecipeValue,
): Revision[] {
  if (after === undefined || same(before, after)) return [];
  return [{ path, value: print(after) }];
}

export function same(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function endsText(shafts: readonly number[]): string {
  return shafts.join(" ");
}

/** The rows that differ, each where it stands, if every row has a line of its own; else all rows anew. */
function lifts(recipe: Recipe, draft: UnitDraft): Revision[] {
  const { lifts: before } = recipe.draft;
  const { lifts: after } = draft;
  if (same(before, after)) return [];
  const place = recipe.place(["lifts", "rows"]);
  if (place === undefined) {
    const where = recipe.place(["lifts"]);
    throw new CliError(
      "unmendable",
      `${recipe.file}:${where?.line ?? 1}: the rows to be mended are drawn in a picture or put together from blocks; mend them there`,
      { file: recipe.file },
    );
  }
  const aLineEach =
    recipe.place(["lifts", "rows", before.length - 1]) !== undefined &&
    recipe.place(["lifts", "rows", before.length]) === undefined;
  if (aLineEach && before.length === after.length) {
    return after.flatMap((lift, row) =>
      same(lift, before[row]) ? [] : [{ path: ["lifts", "rows", row], value: printShafts(lift) }],
    );
  }
  return [{ path: ["lifts", "rows"], value: printLifts(after) }];
}

/** The treadling, step by step; a ground that was only named is written out. */
function ground(recipe: Recipe, draft: UnitDraft): Revision[] {
  const { shafts, threading, steps } = draft.ground;
  if (same(recipe.draft.ground.steps, steps)) return [];
  const written = steps.map(({ raise, sink, weft }) => ({
    raise: printShafts(raise),
    sink: printShafts(sink),
    ...(weft !== undefined && { weft }),
  }));
  if (recipe.place(["ground", "steps"]) !== undefined) return [{ path: ["ground", "steps"], value: written }];
  const { left, right } = recipe.draft.selvedge ?? {};
  const selvedge = { ...(left && { left: endsText(left) }), ...(right && { right: endsText(right) }) };
  const value = {
    shafts,
    threading: endsText(threading),
    steps: written,
    ...(Object.keys(selvedge).length > 0 && { selvedge }),
  };
  return [{ path: ["ground"], value }];
}
