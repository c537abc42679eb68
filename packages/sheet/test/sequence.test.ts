import { parseThreading } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findRepeat } from "../src/repeat.js";
import { sectionsOf } from "../src/sections.js";

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
    expect(findRepeat([..."XX9121312131219XX"])).toEqual({ start: 4, period: 4, times: 2 });
    expect(findRepeat([..."1234"])).toBeUndefined();
  });

  it("begins at a point where it can, so that its figure is the same from either side", () => {
    const units = parseThreading("4-2 (1-12 11-2)*3 1-4").map(String);
    expect(findRepeat(units)).toEqual({ start: 3, period: 22, times: 3 });
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

describe("the sections of a lift plan", () => {
  it("hold every row, what repeats once, and save ten rows or more a repeat", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom("a", "b", "c"), { maxLength: 60 }), (keys) => {
        const sections = sectionsOf(keys);
        const rows = sections.flatMap(({ start, end, times }) =>
          Array.from({ length: times }, () => keys.slice(start, end)).flat(),
        );
        expect(rows).toEqual(keys);
        for (const { start, end, times } of sections) {
          if (times > 1) expect((times - 1) * (end - start)).toBeGreaterThanOrEqual(10);
        }
        const saved = sections.some(({ times }) => times > 1);
        const { period = 0, times = 1 } = findRepeat(keys) ?? {};
        expect(saved).toBe((times - 1) * period >= 10);
      }),
    );
  });

  it("find a repeat before another and after it", () => {
    const keys = [..."abcde".repeat(3), ..."xyzvwu".repeat(4), ..."fghij".repeat(3), "q"];
    expect(sectionsOf(keys)).toEqual([
      { start: 0, end: 5, times: 3 },
      { start: 15, end: 21, times: 4 },
      { start: 39, end: 44, times: 3 },
      { start: 54, end: 55, times: 1 },
    ]);
  });
});
