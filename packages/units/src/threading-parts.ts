import { threadingShape } from "./threading-shape.js";
import type { UnitShafts } from "./types.js";

/**
 * The part of a threading that each unit is of, in words: a border, a repeat by its number, or the part of one that begins
 * or closes the order.
 * @param threading one entry a unit, unit 1 first
 * @returns one entry a unit
 * @example threadingParts(parseThreading("X (1-3 2)*2 X"))[5] // "repeat 2"
 */
export function threadingParts(threading: readonly UnitShafts[]): readonly string[] {
  const { end, left, repeat, right, start, times } = threadingShape(threading);
  const of = (units: readonly UnitShafts[], part: string) => units.map(() => part);
  const middle =
    times === 1
      ? of(repeat, "middle")
      : Array.from({ length: times }, (_, i) => of(repeat, `repeat ${i + 1}`)).flat();
  return [
    ...of(left, "left border"),
    ...of(start, "beginning"),
    ...middle,
    ...of(end, "close"),
    ...of(right, "right border"),
  ];
}
