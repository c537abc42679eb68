import { expand, type UnitDraft } from "@drawcord/units";
import { measureDraft } from "../measure/measure.js";
import { slipOfLifts } from "../rules/lift-slip.js";
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
  const slip = figure && slipOfLifts(figure);
  if (slip === undefined) return undefined;
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

function firstThatWillDo(
  draft: UnitDraft,
  ways: readonly Change[],
  accept: (mended: UnitDraft) => boolean,
): readonly Change[] | undefined {
  const way = ways.find((change) => accept(applyChange(draft, change)));
  return way && [way];
}
