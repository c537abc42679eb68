import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseThreading, printThreading } from "../src/index.js";
import { threading } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

/** The units of a threading, written short: one shaft as a number. */
const units = (text: string) => parseThreading(text).map((unit) => (unit.length === 1 ? unit[0] : unit));

describe("the threading notation", () => {
  it("reads a unit on a shaft, a static unit, a unit on two shafts", () => {
    expect(parseThreading("7 X 3+9")).toEqual([[7], [], [3, 9]]);
    expect(parseThreading("9+3 x")).toEqual([[3, 9], []]);
  });

  it("reads runs upwards and downwards", () => {
    expect(units("1-4 3-1")).toEqual([1, 2, 3, 4, 3, 2, 1]);
    expect(units("5-5")).toEqual([5]);
  });

  it("reads repeats of a unit and of a group, and groups within groups", () => {
    expect(units("5*4")).toEqual([5, 5, 5, 5]);
    expect(units("(1-3 2)*2")).toEqual([1, 2, 3, 2, 1, 2, 3, 2]);
    expect(units("((1 X)*2 3)*2")).toEqual([1, [], 1, [], 3, 1, [], 1, [], 3]);
  });

  it("takes blanks, commas, new lines and nothing at all between units", () => {
    expect(units("1,2, 3\n4\t(5)6")).toEqual([1, 2, 3, 4, 5, 6]);
    expect(units("5 *2")).toEqual([5, 5]);
  });

  it("reads the runner's threading: borders and a point repeat four times", () => {
    const runner = units("X*2 9 (1-8 7-2)*4 1 9 X*2");
    expect(runner).toHaveLength(2 + 1 + 4 * 14 + 1 + 1 + 2);
    expect(runner.slice(0, 6)).toEqual([[], [], 9, 1, 2, 3]);
  });

  it("reads the shaft that stands for static units as none", () => {
    expect(parseThreading("10*2 9 1+10", { staticShaft: 10 })).toEqual([[], [], [9], [1]]);
  });

  it("is read back as it was printed", () => {
    fc.assert(
      fc.property(threading(), (units) => {
        expect(parseThreading(printThreading(units))).toEqual(units);
      }),
    );
  });
});

describe("a threading that cannot be read", () => {
  const refuse = (
    text: string,
    code: Parameters<typeof expectRefusal>[1],
    sentence: string,
    column: number,
  ) => expectRefusal(() => parseThreading(text), code, sentence, { column });

  it("has a column for every fault", () => {
    refuse("1 2 0", "bad-shaft", "column 5: shaft 0 was found; shafts are counted from 1", 5);
    refuse("(1-8 7-2*4", "bad-run", `"*" was found after a run of shafts`, 9);
    refuse("(1-8 7-2", "unbalanced-bracket", `the bracket "(" is never closed`, 1);
    refuse("1-8) 7", "unbalanced-bracket", `the bracket ")" closes nothing`, 4);
    refuse("1 5*0", "bad-repeat", `"0" was found after "*"; expected how many times, 1 or more`, 5);
    refuse("5*", "bad-repeat", "the end of the text was found", 3);
    refuse("1-", "bad-run", `the end of the text was found after "-"`, 3);
    refuse("1 ()", "empty-group", "the brackets hold no units", 3);
    refuse("3+X", "bad-run", `"X" was found after "+"; expected a shaft number`, 3);
    refuse("3+3", "repeated-shaft", "the unit hangs on shaft 3 twice", 3);
    refuse("1 2; 3", "bad-character", `";" has no meaning here`, 4);
    refuse("1 \u{1F9F6}", "bad-character", `"\u{1F9F6}" has no meaning here`, 3);
    refuse("1 y", "bad-run", `"y" was found; expected a shaft number`, 3);
    refuse("", "no-units", "the threading names no units", 1);
    refuse("999999999999999999", "bad-shaft", "the highest shaft read is 100000", 1);
  });

  it("is refused for its size before memory is taken", () => {
    refuse("5*999999999999", "too-large", "more than 1000000 units", 1);
    refuse(`${"(".repeat(60)}1${")*9".repeat(60)}`, "too-large", "more than 1000000 units", 80);
    expectRefusal(() => parseThreading("1-5 1-5", { mostUnits: 9 }), "too-large", "more than 9 units");
    expect(parseThreading("1-9", { mostUnits: 9 })).toHaveLength(9);
    expectRefusal(() => parseThreading("(1+2 3)*3", { mostShafts: 8 }), "too-large", "more than 8 shafts");
    expect(parseThreading("(1+2 3)*3", { mostShafts: 9 })).toHaveLength(6);
  });

  it("opens brackets as deep as it likes without running out of stack", () => {
    expect(units(`${"(".repeat(50_000)}1 2${")".repeat(50_000)}`)).toEqual([1, 2]);
  });

  it("never fails with anything but a sentence, whatever the text", () => {
    const texts = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(..."0123456789X-+*() ,") }));
    fc.assert(
      fc.property(texts, (text) => {
        try {
          expect(parseThreading(text, { mostUnits: 1000 }).length).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toMatchObject({ name: "UnitsError", facts: { column: expect.any(Number) } });
        }
      }),
    );
  });
});
