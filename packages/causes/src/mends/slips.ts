import {
  type Figure,
  lopsided,
  measureDraft,
  type Slip,
  slipOfLifts,
  slipOfThreading,
  unlikeUnits,
} from "@drawcord/check/measure";
import { type Change, expand, type UnitDraft } from "@drawcord/units";
import type { Twin } from "./twin.js";
import type { Way } from "./way.js";

/** A threading made symmetric: a unit hung as its counterpart, or the other way round, or left out. */
export function threadingWays(draft: UnitDraft): Way[] {
  const slip = slipOfThreading(draft);
  if (slip === undefined) return [];
  const { threading } = draft;
  const twin = twinOf("units", slip, threading.length);
  if (slip.kind === "odd-one") return [{ changes: [{ change: "remove-unit", unit: slip.at + 1 }], twin }];
  const hangAs = (unit: number, other: number): Way => ({
    changes: [{ change: "thread", unit: unit + 1, shafts: threading[other]! }],
    twin,
  });
  if (slip.symmetry === "repeat") return [hangAs(slip.at, slip.other)];
  const isOther = odd(threading, slip.at) < odd(threading, slip.other);
  const [unit, other] = isOther ? [slip.other, slip.at] : [slip.at, slip.other];
  return [hangAs(unit, other), { ...hangAs(other, unit), unlikely: true }];
}

/**
 * How ill a unit goes with its neighbours. Threadings go by steps, in most by one shaft up or down: the seldomer a
 * threading has the steps at both sides of a unit, the likelier the slip is there.
 */
function odd(threading: UnitDraft["threading"], unit: number): number {
  const stepTo = (next: number) => Math.abs((threading[next]?.[0] ?? 0) - (threading[next - 1]?.[0] ?? 0));
  const times = new Map<number, number>();
  for (let next = 1; next < threading.length; next++) {
    times.set(stepTo(next), (times.get(stepTo(next)) ?? 0) + 1);
  }
  const sides = [unit, unit + 1].filter((next) => next > 0 && next < threading.length);
  return sides.reduce((sum, next) => sum + 1 / times.get(stepTo(next))!, 0);
}

/** A lift plan made symmetric by a change to one row, or to those that alone are not alike from both sides. */
export function liftWays(draft: UnitDraft): Way[] {
  const { figure } = measureDraft(draft, expand(draft), {});
  if (figure === undefined) return [];
  const slip = slipOfLifts(figure);
  if (slip === undefined) return lopsidedWays(draft, figure);
  const twin = twinOf("rows", slip, draft.lifts.length);
  if (slip.kind === "odd-one") return [{ changes: [{ change: "remove-row", row: slip.at + 1 }], twin }];
  const liftAs = (row: number, other: number): Way => ({
    changes: [{ change: "lift", row: row + 1, shafts: draft.lifts[other]! }],
    twin,
  });
  if (slip.symmetry === "repeat") return [liftAs(slip.at, slip.other)];
  const isOther = steep(figure, slip.at) < steep(figure, slip.other);
  const [row, other] = isOther ? [slip.other, slip.at] : [slip.at, slip.other];
  return [liftAs(row, other), { ...liftAs(other, row), unlikely: true }];
}

/** In how many units a row differs from its neighbours: figures grow and shrink by few units from row to row. */
function steep(figure: Figure, row: number): number {
  const beside = [row - 1, row + 1].filter((other) => other >= 0 && other < figure.squares.rows);
  return beside.reduce((sum, other) => sum + unlikeUnits(figure, row, other).length, 0);
}

/** Draws on both sides what a row draws on one, or leaves it on both. */
function lopsidedWays(draft: UnitDraft, figure: Figure): Way[] {
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
  const twin: Twin = { of: "units", symmetry: "mirror", by: draft.threading.length + 1 };
  if (rows.length === 0) return [];
  return [
    { changes: wider, twin },
    { changes: narrower, twin, unlikely: true },
  ];
}

/** The counterparts in the sequence as it will be, places from 1. */
function twinOf(of: Twin["of"], { at, kind, other, symmetry }: Slip, length: number): Twin {
  if (symmetry === "repeat") return { of, symmetry, by: other - at };
  return { of, symmetry, by: kind === "odd-one" ? length : length + 1 };
}

/** The shafts that are picked from those of the units, each once, ascending. */
function shaftsOf(
  draft: UnitDraft,
  units: readonly number[],
  pick: (shafts: readonly number[]) => readonly number[],
): number[] {
  return [...new Set(units.flatMap((unit) => pick(draft.threading[unit]!)))].sort((a, b) => a - b);
}
