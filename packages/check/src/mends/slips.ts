import { expand, type UnitDraft } from "@drawcord/units";
import type { Figure } from "../cloth.js";
import { measureDraft } from "../measure/measure.js";
import { lopsided, slipOfLifts, unlikeUnits } from "../rules/lift-slip.js";
import { slipOfThreading } from "../rules/threading-slip.js";
import { applyChange, type Change } from "./change.js";

/** The change to one unit that makes the threading symmetric: hung as its counterpart, or the other way round, or left out. */
export function mendThreading(
  draft: UnitDraft,
  accept: (mended: UnitDraft) => boolean,
): readonly Change[] | undefined {
  const slip = slipOfThreading(draft);
  if (slip === undefined) return undefined;
  const hangAs = (unit: number, other: number): Change => ({
    change: "thread",
    unit: unit + 1,
    shafts: draft.threading[other]!,
  });
  const ways: readonly Change[] =
    slip.kind === "odd-one"
      ? [{ change: "remove-unit", unit: slip.at + 1 }]
      : slip.symmetry === "repeat"
        ? [hangAs(slip.at, slip.other)]
        : [hangAs(slip.at, slip.other), hangAs(slip.other, slip.at)];
  return firstThatWillDo(draft, ways, accept);
}

/** The change to one row that makes the lift plan symmetric. */
export function mendLifts(
  draft: UnitDraft,
  accept: (mended: UnitDraft) => boolean,
): readonly Change[] | undefined {
  const { figure } = measureDraft(draft, expand(draft), {});
  if (figure === undefined) return undefined;
  const slip = slipOfLifts(figure);
  if (slip === undefined) return mendLopsided(draft, figure, accept);
  const liftAs = (row: number, other: number): Change => ({
    change: "lift",
    row: row + 1,
    shafts: draft.lifts[other]!,
  });
  const ways: readonly Change[] =
    slip.kind === "odd-one"
      ? [{ change: "remove-row", row: slip.at + 1 }]
      : slip.symmetry === "repeat"
        ? [liftAs(slip.at, slip.other)]
        : [liftAs(slip.at, slip.other), liftAs(slip.other, slip.at)];
  return firstThatWillDo(draft, ways, accept);
}

/** Draws on both sides what a row draws on one, or leaves it on both. */
function mendLopsided(
  draft: UnitDraft,
  figure: Figure,
  accept: (mended: UnitDraft) => boolean,
): readonly Change[] | undefined {
  const rows = lopsided(figure);
  const wider = rows.map((row): Change => {
    const missing = unlikeUnits(figure, row).filter((unit) => !figure.squares.get(row, unit));
    return {
      change: "draw",
      row: row + 1,
      shafts: shaftsOf(draft, missing, ([first]) => (first === undefined ? [] : [first])),
    };
  });
  const narrower = rows.map((row): Change => {
    const odd = unlikeUnits(figure, row).filter((unit) => figure.squares.get(row, unit));
    return { change: "leave", row: row + 1, shafts: shaftsOf(draft, odd, (shafts) => shafts) };
  });
  return [wider, narrower].find((way) => way.length > 0 && accept(way.reduce(applyChange, draft)));
}

/** The shafts that are picked from those of the units, each once, ascending. */
function shaftsOf(
  draft: UnitDraft,
  units: readonly number[],
  pick: (shafts: readonly number[]) => readonly number[],
): number[] {
  return [...new Set(units.flatMap((unit) => pick(draft.threading[unit]!)))].sort((a, b) => a - b);
}

function firstThatWillDo(
  draft: UnitDraft,
  ways: readonly Change[],
  accept: (mended: UnitDraft) => boolean,
): readonly Change[] | undefined {
  const way = ways.find((change) => accept(applyChange(draft, change)));
  return way && [way];
}
