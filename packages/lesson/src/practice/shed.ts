import { type CrossingCause, causeOf } from "../why/cause.js";
import type { PracticePlan } from "./plan.js";

/** What one end does in a shed, and why. */
export interface ShedEnd {
  /** Whether the end lies over the shed. */
  readonly raised: boolean;
  /** What decides it: the treadle, a handle, or neither. */
  readonly cause: CrossingCause;
  /** Why, in a sentence without its end. */
  readonly why: string;
}

/**
 * The shed that a treadle and some handles make, end by end.
 * @param plan the piece of a loom
 * @param treadle the treadle that is pressed, from 1; 0 for none
 * @param handles the handles that are drawn
 * @example shedOf(practicePlan(recipe), 0, []).every(({ raised }) => !raised) // true
 */
export function shedOf(plan: PracticePlan, treadle: number, handles: readonly number[]): readonly ShedEnd[] {
  const { raise = [], sink = [] } = plan.treadles[treadle - 1] ?? {};
  return plan.ends.map(({ shaft, unit }): ShedEnd => {
    const hangsOn = plan.units.find(({ number }) => number === unit)?.hangsOn ?? [];
    const drawn = hangsOn.some((handle) => handles.includes(handle));
    const cause = causeOf(raise.includes(shaft), sink.includes(shaft), drawn);
    const by = hangsOn.filter((handle) => handles.includes(handle)).join(" and ");
    const why = {
      raised: `treadle ${treadle} raises shaft ${shaft}`,
      sunk: `treadle ${treadle} sinks shaft ${shaft}${drawn ? `, although handle ${by} draws unit ${unit}` : ""}`,
      drawn: `handle ${by} draws unit ${unit}, and no treadle sinks shaft ${shaft}`,
      left: `no treadle raises shaft ${shaft}, and nothing draws ${unit === 0 ? "the selvedge" : `unit ${unit}`}`,
    }[cause];
    return { raised: cause === "raised" || cause === "drawn", cause, why };
  });
}
