/** How a plan is written: a slip in what is woven again and again is one slip. */
import type { Change } from "@drawcord/units";
import type { Suspect } from "./suspect.js";

/** A plan as it is written: for each line (or each unit) that was written, the rows (or units), from 0, that it makes. */
export type Written = readonly (readonly number[])[];

/** A plan of which everything is written by itself. */
export function eachByItself({ length }: { readonly length: number }): Written {
  return Array.from({ length }, (_, i) => [i]);
}

/** How many other times what is written at a place is woven or threaded; behind the last place it is that of the last. */
export function otherTimes(written: Written, at: number): number {
  const made = written[Math.min(at, written.length - 1)];
  return Math.max(0, (made?.length ?? 1) - 1);
}

/**
 * The slips of a plan as it is written and of the plan as it is woven: what is written once may be out of order in the
 * whole, as in a border that the other side has too.
 * @param written how the plan is written
 * @param length of how many rows or units it is
 * @param suspectsOf the slips of a plan written so
 */
export function writtenAndWhole(
  written: Written,
  length: number,
  suspectsOf: (written: Written) => readonly Suspect[],
): Suspect[] {
  const asWritten = suspectsOf(written);
  if (written.length === length) return [...asWritten];
  const once = new Set(written.flatMap((made) => (made.length === 1 ? [made[0]! + 1] : [])));
  if (once.size === 0) return [...asWritten];
  const found = [...asWritten];
  for (const whole of suspectsOf(eachByItself({ length }))) {
    const places = placesOf(whole.changes);
    if (!places.every((place) => once.has(place))) continue;
    const same = found.findIndex(({ changes }) => placesOf(changes).some((place) => places.includes(place)));
    if (same < 0) found.push(whole);
    else if (whole.gain > found[same]!.gain) found[same] = whole;
  }
  return found.sort((a, b) => b.gain - a.gain);
}

/** The rows or units, from 1, that changes name; of one that is put in, the one that it comes after. */
function placesOf(changes: readonly Change[]): number[] {
  return changes.flatMap((change): number[] => {
    if (change.change === "insert-row") return [Math.max(1, change.row - 1)];
    if (change.change === "insert-unit") return [Math.max(1, change.unit - 1)];
    if ("row" in change) return [change.row];
    if ("rows" in change) return [...change.rows];
    if ("unit" in change) return [change.unit];
    return "units" in change ? [...change.units] : [];
  });
}
