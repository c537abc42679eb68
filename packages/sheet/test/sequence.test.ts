import { parseThreading } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { threading } from "../../units/test/arbitraries.js";
import { findRepeat } from "../src/repeat.js";
import { threadingGroups } from "../src/threading-groups.js";

/** Every stretch of two or more equal pieces that are not of one kind: the slow, obvious way. */
function repeatBySearch(keys: readonly string[]): number {
  let longest = 0;
  for (let start = 0; start < keys.length; start++) {
    for (let period = 2; start + 2 * period <= keys.length; period++) {
      const piece = keys.slice(start, start + period);
      if (new Set(piece).size === 1) continue;
      let times = 1;
      while (
        start + (times + 1) * period <= keys.length &&
        piece.every((key, i) => keys[start + times * period + i] === key)
      ) {
        times++;
      }
      if (times > 1) longest = Math.max(longest, times * period);
    }
  }
  return longest;
}

describe("the repeat of a threading or a lift plan", () => {
  it("lies between the borders", () => {
    expect(findRepeat([..."XX9121312131219XX"])).toEqual({ start: 3, period: 4, times: 2 });
    expect(findRepeat([..."1234"])).toBeUndefined();
  });

  it("is none in plain stripes of one kind", () => {
    expect(findRepeat([..."aaaaaaaa"])).toBeUndefined();
  });

  it("is the longest there is", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom("a", "b", "c"), { maxLength: 24 }), (keys) => {
        const found = findRepeat(keys);
        expect(found === undefined ? 0 : found.period * found.times).toBe(repeatBySearch(keys));
        if (found === undefined) return;
        const { start, period, times } = found;
        for (let i = start; i < start + period * (times - 1); i++) expect(keys[i]).toBe(keys[i + period]);
      }),
    );
  });
});

describe("counted groups of a threading", () => {
  it("hold every unit once, in the order of threading", () => {
    fc.assert(
      fc.property(threading(9, 60), fc.boolean(), (units, fromRight) => {
        const groups = threadingGroups(
          units,
          units.map(() => 4),
          fromRight,
        );
        const text = groups.map(({ shafts, units: many }) =>
          shafts.includes("-") ? shafts : `${shafts}*${many}`,
        );
        const read = parseThreading(text.join(" "));
        expect(fromRight ? [...read].reverse() : read).toEqual(units);
        expect(groups.every((group) => group.units <= 12)).toBe(true);
      }),
    );
  });

  it("turn at the points", () => {
    const units = parseThreading("X*2 1-4 3-1 X");
    const groups = threadingGroups(
      units,
      units.map(() => 4),
      true,
    );
    expect(groups.map(({ shafts }) => shafts)).toEqual(["X", "1-4", "3-1", "X"]);
    expect(groups.map(({ first, last }) => [first, last])).toEqual([
      [10, 10],
      [9, 6],
      [5, 3],
      [2, 1],
    ]);
  });
});
