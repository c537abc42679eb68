import { assert, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { parseWeave, printWeave } from "../src/index.js";
import { description } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

describe("a weave written down", () => {
  it.each([
    ["plain", { base: { kind: "plain" } }],
    ["hopsack 2/2 by 3/3", { base: { kind: "hopsack", picks: [2, 2], ends: [3, 3] } }],
    ["warp rib 2/1", { base: { kind: "warp rib", group: [2, 1] } }],
    ["twill 2/1/1/2 z", { base: { kind: "twill", ratio: [2, 1, 1, 2], direction: "z" } }],
    ["twill 3/1/1/3 step 3 s", { base: { kind: "twill", ratio: [3, 1, 1, 3], step: 3, direction: "s" } }],
    ["pointed twill 2/2 along picks", { base: { kind: "pointed twill", ratio: [2, 2], alongPicks: true } }],
    [
      "undulating twill 4/4 moves 0 1 1 2",
      { base: { kind: "undulating twill", ratio: [4, 4], moves: [0, 1, 1, 2] } },
    ],
    ["herringbone twill 2/2 after 8", { base: { kind: "herringbone twill", ratio: [2, 2], after: 8 } }],
    ["broken twill", { base: { kind: "broken twill" } }],
    [
      "broken twill 1/7 by fourths",
      { base: { kind: "broken twill", ratio: [1, 7], break: { by: "fourths" } } },
    ],
    [
      "broken twill 2/2 take 2 skip 1",
      { base: { kind: "broken twill", ratio: [2, 2], break: { by: "skipping", take: 2, skip: 1 } } },
    ],
    ["satin 8 step 3", { base: { kind: "satin", ends: 8, step: 3 } }],
    [
      "satin 6 order 1 4 2 6 3 5 s warp-faced",
      {
        base: { kind: "satin", ends: 6, order: [1, 4, 2, 6, 3, 5], direction: "s", warpFaced: true },
      },
    ],
    [
      "satin 8 plus right 1, above 1",
      {
        base: { kind: "satin", ends: 8 },
        plus: [
          { right: 1, above: 0 },
          { right: 0, above: 1 },
        ],
      },
    ],
    [
      "crepe 8 step 3 plus left 2 below 1",
      {
        base: { kind: "crepe", ends: 8, step: 3 },
        plus: [{ right: -2, above: -1 }],
      },
    ],
    ["corkscrew 7", { base: { kind: "corkscrew", ends: 7 } }],
    ["plain with pattern weft", { base: { kind: "plain" }, patternWeft: true }],
  ])("%s is read and printed back the same", (text, read) => {
    expect(parseWeave(text)).toEqual(read);
    expect(printWeave(parseWeave(text))).toBe(text);
  });

  it("is read whatever its case and blanks", () => {
    expect(printWeave(parseWeave("  Twill\t2/1/1/2   Z "))).toBe("twill 2/1/1/2 z");
    expect(printWeave(parseWeave("satin 8 plus right 1 ,above 1"))).toBe("satin 8 plus right 1, above 1");
  });

  it("reads back as what was printed", () =>
    assert(
      property(description, (weave) => {
        expect(parseWeave(printWeave(weave))).toEqual(weave);
      }),
    ));
});

describe("a weave that cannot be read", () => {
  it.each([
    ["satin 8 step", "column 13: the description ends where the step (a whole number) was expected"],
    ["satin 8 step three", 'column 14: found "three" where the step (a whole number) was expected'],
    [
      "satin 8 stop 3",
      'column 9: found "stop" where "order", "step", "z", "s", "warp-faced", "plus", "with" or the end of the description was expected',
    ],
    ["broken satin 4", 'column 8: found "satin" where "twill" was expected'],
    ["twill 2//2", 'column 7: found "2//2" where a ratio of ends up and down, as in 1/3 was expected'],
    ["hopsack 2/2/1", 'column 9: found "2/2/1" where two numbers were expected, as in 2/2'],
    [
      "satin 8 step 3 plus right 0",
      'column 27: found "0" where the number of ends (a whole number) was expected',
    ],
    ["crepe 8 step 3", 'column 15: the description ends where "z", "s" or "plus" was expected'],
    ["broken twill by quarters", 'column 17: found "quarters" where "halves" or "fourths" was expected'],
    ["plain with", 'column 11: the description ends where "pattern" was expected'],
  ])("%s: the column and what was expected", (text, sentence) => {
    expectRefusal(() => parseWeave(text), "bad-description", sentence);
  });

  it("names the nearest weave, or all of them", () => {
    expectRefusal(
      () => parseWeave(" sattin 8"),
      "unknown-weave",
      'column 2: "sattin" is no weave known here; did you mean "satin"?',
    );
    expectRefusal(
      () => parseWeave("velvet"),
      "unknown-weave",
      'column 1: "velvet" is no weave known here; the weaves are plain, hopsack, warp rib, weft rib, twill, pointed twill, undulating twill, herringbone twill, broken twill, satin, crepe, corkscrew',
    );
    expectRefusal(
      () => parseWeave(`plain ${"x".repeat(1e6)}`),
      "bad-description",
      `column 7: found "${"x".repeat(40)}…" where "plus", "with" or the end of the description was expected`,
    );
    expectRefusal(
      () => parseWeave(" "),
      "unknown-weave",
      'column 1: the description is empty; a weave was expected, such as "plain", "twill 1/3" or "satin 8 step 3"',
    );
  });
});
