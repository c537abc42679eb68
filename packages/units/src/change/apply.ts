import { UnitsError } from "../error.js";
import { picksOfEachRow } from "../sizes.js";
import type { UnitDraft } from "../types.js";
import type { Change } from "./change.js";

/**
 * The draft with a change made to it.
 * @param draft the draft, which stays as it is
 * @param change the change; what it makes of the draft is not checked, `expand` does that
 * @throws {UnitsError} `bad-size` where the change names a unit, row, step or end that the draft has not
 * @example applyChange(draft, { change: "lift", row: 1, shafts: [2] }).lifts // [[2], [2], [1, 2]]
 */
export function applyChange(draft: UnitDraft, change: Change): UnitDraft {
  const { ground, lifts, threading } = draft;
  switch (change.change) {
    case "thread":
      checkPlace("unit", change.unit, threading.length);
      return { ...draft, threading: threading.with(change.unit - 1, change.shafts) };
    case "insert-unit":
      checkPlace("unit", change.unit, threading.length + 1);
      return {
        ...draft,
        threading: threading.toSpliced(change.unit - 1, 0, change.shafts),
        unitEnds: withCopy(draft.unitEnds, change.unit),
      };
    case "remove-unit":
      checkPlace("unit", change.unit, threading.length);
      return {
        ...draft,
        threading: threading.toSpliced(change.unit - 1, 1),
        unitEnds: without(draft.unitEnds, change.unit),
      };
    case "swap-units":
      for (const unit of change.units) checkPlace("unit", unit, threading.length);
      return { ...draft, threading: swapped(threading, change.units) };
    case "lift":
      return withLift(draft, change.row, () => change.shafts);
    case "draw":
      return withLift(draft, change.row, (lift) =>
        [...new Set([...lift, ...change.shafts])].sort((a, b) => a - b),
      );
    case "leave":
      return withLift(draft, change.row, (lift) => lift.filter((shaft) => !change.shafts.includes(shaft)));
    case "insert-row":
      checkPlace("row", change.row, lifts.length + 1);
      return {
        ...draft,
        lifts: lifts.toSpliced(change.row - 1, 0, change.shafts),
        picksPerRow: withCopy(draft.picksPerRow, change.row),
      };
    case "remove-row":
      checkPlace("row", change.row, lifts.length);
      return {
        ...draft,
        lifts: lifts.toSpliced(change.row - 1, 1),
        picksPerRow: without(draft.picksPerRow, change.row),
      };
    case "swap-rows":
      for (const row of change.rows) checkPlace("row", row, lifts.length);
      return { ...draft, lifts: swapped(lifts, change.rows) };
    case "shift": {
      const [first, last] = change.rows;
      for (const row of change.rows) checkPlace("row", row, lifts.length);
      return {
        ...draft,
        lifts: lifts.map((lift, row) =>
          row >= first - 1 && row < last ? lift.map((shaft) => shaft + change.by) : lift,
        ),
      };
    }
    case "row-picks": {
      checkPlace("row", change.row, lifts.length);
      return { ...draft, picksPerRow: picksOfEachRow(draft).with(change.row - 1, change.picks) };
    }
    case "tie": {
      checkPlace("step", change.step, ground.steps.length);
      const { raise, sink } = change;
      const step = { ...ground.steps[change.step - 1]!, raise, sink };
      return { ...draft, ground: { ...ground, steps: ground.steps.with(change.step - 1, step) } };
    }
    case "start-ground": {
      const { steps } = ground;
      const first = ((change.steps % steps.length) + steps.length) % steps.length;
      return { ...draft, ground: { ...ground, steps: [...steps.slice(first), ...steps.slice(0, first)] } };
    }
    case "swap-ground":
      return {
        ...draft,
        ground: {
          ...ground,
          steps: ground.steps.map((step) => ({ ...step, raise: step.sink, sink: step.raise })),
        },
      };
    case "ground-threading":
      checkPlace("end", change.end, ground.threading.length);
      return {
        ...draft,
        ground: { ...ground, threading: ground.threading.with(change.end - 1, change.shaft) },
      };
    case "selvedge":
      return { ...draft, selvedge: { ...draft.selvedge, [change.side]: change.shafts } };
    case "number":
      return draft;
  }
}

/**
 * The draft with all the changes made to it, one after the other.
 * @param draft the draft, which stays as it is
 * @param changes the changes; each names places as the changes before it left them
 * @throws {UnitsError} as `applyChange`
 * @example applyChanges(draft, [{ change: "remove-row", row: 1 }, { change: "remove-row", row: 1 }]).lifts // [[1, 2]]
 */
export function applyChanges(draft: UnitDraft, changes: readonly Change[]): UnitDraft {
  return changes.reduce(applyChange, draft);
}

function checkPlace(thing: "unit" | "row" | "step" | "end", place: number, most: number): void {
  if (Number.isInteger(place) && place >= 1 && place <= most) return;
  throw new UnitsError("bad-size", `the change names ${thing} ${place}; expected 1 to ${most}`, {
    [thing]: place,
    most,
  });
}

function withLift(
  draft: UnitDraft,
  row: number,
  lift: (was: readonly number[]) => readonly number[],
): UnitDraft {
  checkPlace("row", row, draft.lifts.length);
  return { ...draft, lifts: draft.lifts.with(row - 1, lift(draft.lifts[row - 1]!)) };
}

function swapped<T>(items: readonly T[], [one, other]: readonly [number, number]): readonly T[] {
  return items.with(one - 1, items[other - 1]!).with(other - 1, items[one - 1]!);
}

function without(sizes: number | readonly number[], place: number): number | readonly number[] {
  return typeof sizes === "number" ? sizes : sizes.toSpliced(place - 1, 1);
}

/** The sizes with that of a place once more, at the end with the last once more. */
function withCopy(sizes: number | readonly number[], place: number): number | readonly number[] {
  if (typeof sizes === "number") return sizes;
  return sizes.toSpliced(place - 1, 0, sizes[Math.min(place, sizes.length) - 1]!);
}
