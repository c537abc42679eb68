/** Brings the lifts of a changed draft back into the text of its recipe. */
import type { Range } from "@drawcord/base";
import type { ShaftSet } from "@drawcord/ground";
import type { UnitDraft } from "@drawcord/units";
import { spotAt } from "../tree/spot.js";
import { readTree, type Tree } from "../tree/tree.js";
import { type LiftCell, liftCells } from "./lift-cells.js";
import { ownBlock } from "./own-block.js";
import { rowPlaces } from "./part-places.js";
import { areApart, followedByAll, type Splice, spliced } from "./text-edits.js";
import { firstThat, type Made, type Read } from "./tries.js";
import type { Recipe } from "./types.js";

/**
 * All rows that change at once, each where it stands. Where rows share a place, row by row: each change is tried wherever
 * the old lift stands, and kept where it brings the plan nearer; then with the use of a block that weaves the row as a block
 * of its own.
 */
export function* reviseLifts(recipe: Recipe, draft: UnitDraft, read: Read): Iterable<readonly Splice[]> {
  const before = recipe.draft.lifts;
  const wanted = draft.lifts.map(key);
  if (before.length === wanted.length + 1) yield* withoutRow(recipe, draft);
  if (before.length !== wanted.length) return;
  const atOnce = rowsAtOnce(recipe, draft);
  if (atOnce !== undefined) yield atOnce;
  const far = ({ lifts }: UnitDraft) =>
    lifts.length === wanted.length ? wanted.filter((row, i) => row !== key(lifts[i])).length : Infinity;
  let made: Made = { splices: [], recipe };
  while (far(made.recipe.draft) > 0) {
    const { lifts } = made.recipe.draft;
    const row = lifts.findIndex((lift, i) => key(lift) !== wanted[i]);
    const tries = rowTries(made.recipe, row, lifts[row]!, draft);
    const nearer = firstThat(tries, made.recipe.text, read, (one) => far(one) < far(made.recipe.draft));
    if (nearer === undefined) return;
    made = { splices: followedByAll(made.splices, nearer.splices), recipe: nearer.recipe };
  }
  yield made.splices;
}

/** A lift as a text to compare. */
function key(lift: ShaftSet | undefined): string {
  return lift?.join(" ") ?? "-";
}

/** Where each row of the plan that a recipe is of stands in its text. */
function placesOfRows(tree: Tree, { pieces: [piece] }: Recipe): readonly Range[] {
  const lifts = piece && spotAt(tree, [...piece.path, "lifts"]);
  return lifts === undefined ? [] : rowPlaces(lifts, spotAt(tree, ["lifts"]), piece!);
}

/** The rows of a recipe's text, first that of a row of the plan where one is asked for. */
function cellsFrom(recipe: Recipe, tree: Tree, row?: number): readonly LiftCell[] {
  const cells = liftCells(tree);
  const place = row === undefined ? undefined : placesOfRows(tree, recipe)[row];
  const isOwn = ({ from }: LiftCell) =>
    place !== undefined && from >= place.offset && from < place.end.offset;
  return [...cells.filter(isOwn), ...cells.filter((cell) => !isOwn(cell))];
}

/** What writes each row that changes where it stands; undefined where one has no place that is its own. */
function rowsAtOnce(recipe: Recipe, { lifts }: UnitDraft): readonly Splice[] | undefined {
  const tree = readTree(recipe.text, recipe.file);
  const cells = liftCells(tree);
  const places = placesOfRows(tree, recipe);
  const splices = recipe.draft.lifts.flatMap((was, row) => {
    if (key(was) === key(lifts[row])) return [];
    const [from = 0, to = 0] = [places[row]?.offset, places[row]?.end.offset];
    const cell = cells.find((one) => one.from >= from && one.from < to);
    return [cell !== undefined && key(cell.lift) === key(was) ? cell.with(lifts[row]!) : undefined];
  });
  const found = splices.filter((splice) => splice !== undefined).sort((a, b) => a.from - b.from);
  return found.length === splices.length && areApart(found) ? found : undefined;
}

/** What may take out the one row that a draft has no more. */
function* withoutRow(recipe: Recipe, draft: UnitDraft): Iterable<readonly Splice[]> {
  const { lifts } = recipe.draft;
  const differing = lifts.findIndex((lift, row) => key(lift) !== key(draft.lifts[row]));
  // Of rows alike it is all the same which is gone.
  let taken = differing;
  while (key(lifts[taken - 1]) === key(lifts[differing])) taken--;
  for (const { made, tree } of apart(recipe, taken)) {
    for (const cell of cellsFrom(recipe, tree, made.length === 0 ? taken : undefined)) {
      const splice = key(cell.lift) === key(lifts[differing]) ? cell.without() : undefined;
      if (splice !== undefined) yield followedByAll(made, [splice]);
    }
  }
}

/** What may write a row of a draft. */
function* rowTries(
  recipe: Recipe,
  row: number,
  was: ShaftSet,
  draft: UnitDraft,
): Iterable<readonly Splice[]> {
  const is = draft.lifts[row]!;
  for (const { made, tree } of apart(recipe, row)) {
    const cells = cellsFrom(recipe, tree, made.length === 0 ? row : undefined);
    // Of blocks that are woven together each has its own part of the row.
    const parts = cells.filter(({ lift }) => lift.length < was.length && isPart(lift, was));
    const splices = [
      ...cells.filter(({ lift }) => key(lift) === key(was)).map((cell) => cell.with(is)),
      ...parts.map((cell) => cell.with(changedAlike(cell.lift, was, is))),
    ];
    for (const splice of splices) if (splice !== undefined) yield followedByAll(made, [splice]);
  }
}

/** The text of a recipe as it is, and with the use of the block that weaves a row as a block of its own. */
function* apart({ file, text }: Recipe, row: number) {
  const tree = readTree(text, file);
  yield { made: [], tree };
  const made = ownBlock(tree, row);
  if (made !== undefined) yield { made, tree: readTree(spliced(text, made), file) };
}

function isPart(lift: ShaftSet, whole: ShaftSet): boolean {
  return lift.every((shaft) => whole.includes(shaft));
}

/** A lift with the shafts drawn and left by which one lift differs from another. */
function changedAlike(lift: ShaftSet, was: ShaftSet, is: ShaftSet): ShaftSet {
  const kept = lift.filter((shaft) => is.includes(shaft));
  return [...kept, ...is.filter((shaft) => !was.includes(shaft))].sort((a, b) => a - b);
}
