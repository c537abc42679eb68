import { tell } from "../tree/problems.js";
import { need, type Spot, wayTo, wholeOf, wrong } from "../tree/spot.js";

/** Numbers for as many things as there are; where there are others, that is told, and they are cut short or go on with the last. */
export function fitted(
  section: Spot | undefined,
  key: string,
  counts: number | readonly number[],
  wanted: number,
  things: string,
): number | readonly number[] {
  if (typeof counts === "number" || counts.length === wanted) return counts;
  if (section === undefined) return counts;
  const of = need(section, key);
  // Where a word of either could not be read, their numbers say nothing.
  if (!isTroubled(section)) {
    const sentence = `${wayTo(of.path)} gives ${counts.length} numbers; there are ${wanted} ${things}`;
    tell(of.tree.problems, wrong(of, "bad-value", sentence));
  }
  return Array.from({ length: wanted }, (_, i) => counts[i] ?? counts.at(-1)!);
}

/** Whether a problem is told of anything in a section. */
export function isTroubled(section: Spot): boolean {
  const { end, offset } = wholeOf(section);
  return section.tree.problems.found.some((one) => one.offset >= offset && one.offset < end.offset);
}
