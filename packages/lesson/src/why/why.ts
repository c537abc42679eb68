/** How one crossing of a cloth comes about, by the two harnesses. */
import type { ShaftSet } from "@drawcord/ground";
import { expand, type UnitDraft } from "@drawcord/units";
import { LessonError } from "../error.js";
import { type CrossingCause, causeOf } from "./cause.js";

/** One crossing, with all that decides it. Everything counts from 1. */
export interface Crossing {
  /** The end, from 1 at the left, selvedges included. */
  readonly end: number;
  /** The pick, from 1. */
  readonly pick: number;
  /** The ground shaft of the end. */
  readonly shaft: number;
  /** The unit of the end; none for an end of a selvedge. */
  readonly unit?: number;
  /** The row of the lift plan, from 1. */
  readonly row: number;
  /** Which pick of the row it is. */
  readonly pickOfRow: number;
  /** The step of the treadling, and what it raises and sinks. */
  readonly step: number;
  /** The ground shafts that the step raises, from 1. */
  readonly raise: ShaftSet;
  /** The ground shafts that the step sinks, from 1. */
  readonly sink: ShaftSet;
  /** The pattern shafts that the unit hangs on, and those that the row draws. */
  readonly hangsOn: ShaftSet;
  /** The pattern shafts that the row draws, from 1. */
  readonly draws: ShaftSet;
  /** Whether the pattern harness draws the unit. */
  readonly drawn: boolean;
  /** What decides it: `raised` or `sunk` by the treadle, else `drawn` or `left` by the pattern harness. */
  readonly cause: CrossingCause;
  /** Whether the end lies over the pick on the face. */
  readonly raised: boolean;
}

/**
 * How the crossing of an end and a pick comes about: the treadle raises the shaft of the end, or sinks it, or leaves it
 * where the pattern harness puts it, drawn or not.
 * @param draft the draft of a recipe
 * @param end the end, from 1, the left selvedge first
 * @param pick the pick, from 1, woven first
 * @throws {LessonError} `no-crossing` for an end or a pick that the cloth has not
 * @throws {UnitsError} for a draft that cannot be worked out
 * @example whyCrossing(draft, 5, 1).cause // "raised"
 */
export function whyCrossing(draft: UnitDraft, end: number, pick: number): Crossing {
  const { rowOfPick, shaftOfEnd, stepOfPick, unitOfEnd } = expand(draft);
  checkWithin("end", end, shaftOfEnd.length);
  checkWithin("pick", pick, rowOfPick.length);
  const shaft = shaftOfEnd[end - 1]!;
  const unit = unitOfEnd[end - 1]!;
  const row = rowOfPick[pick - 1]!;
  const step = stepOfPick[pick - 1]!;
  const { raise, sink } = draft.ground.steps[step]!;
  const hangsOn = draft.threading[unit] ?? [];
  const draws = draft.lifts[row]!;
  const drawn = hangsOn.some((one) => draws.includes(one));
  const cause = causeOf(raise.includes(shaft), sink.includes(shaft), drawn);
  return {
    end,
    pick,
    shaft,
    ...(unit === -1 ? {} : { unit: unit + 1 }),
    row: row + 1,
    pickOfRow: pick - rowOfPick.indexOf(row),
    step: step + 1,
    raise,
    sink,
    hangsOn,
    draws,
    drawn,
    cause,
    raised: cause === "raised" || cause === "drawn",
  };
}

function checkWithin(thing: "end" | "pick", found: number, most: number): void {
  if (Number.isSafeInteger(found) && found >= 1 && found <= most) return;
  throw new LessonError(
    "no-crossing",
    `${thing} ${found} is asked for; the cloth has ${thing}s 1 to ${most}`,
    {
      [thing]: found,
      most,
    },
  );
}
