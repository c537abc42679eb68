/** Sound plans that a rule once took for faulty. */
import { fromText } from "@drawcord/grid";
import type { UnitDraft } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { check, checkGrid, findingsOf } from "../src/index.js";
import { cleanTwill, onTabby } from "../src/rules/examples.js";

it("a texture of single squares is the manner of the figure, a square that stands alone is not", () => {
  const threading = Array.from({ length: 16 }, (_, unit) => [unit + 1]);
  // Every row of dots unlike every other, so that none comes again in the same company.
  const dots = Array.from({ length: 18 }, (_, row) =>
    row % 2 === 0 || row > 16 ? [] : [3 + ((row * 5) % 11), 5 + ((row * 5) % 11)],
  );
  const plan = { ground: cleanTwill, unitEnds: 4, picksPerRow: 4, threading };
  expect(findingsOf(check({ ...plan, lifts: dots }), "thin-area")).toEqual([]);
  expect(
    findingsOf(check({ ...plan, lifts: dots.map((row, i) => (i === 5 ? row.slice(1) : [])) }), "thin-area"),
  ).not.toEqual([]);
});

it("an eye that the threading draws again, or the motif, is meant; one that is in one of two copies is not", () => {
  const bird = [[2, 3], [1, 2, 3, 4, 5], [1, 2, 3, 5, 6], [2, 3, 4, 5, 6, 7], [4, 5, 6], [6]];
  const up = Array.from({ length: 7 }, (_, unit) => [unit + 1]);
  const still = [[], [], []];
  const plan = { ground: cleanTwill, unitEnds: 4, picksPerRow: 4 };
  const eyes = (threading: typeof up, lifts: typeof bird) =>
    findingsOf(check({ ...plan, threading, lifts: [...still, ...lifts, ...still] }), "thin-area").length;
  const once = [...still, ...up, ...still];
  expect(eyes(once, bird)).toBe(1);
  expect(eyes([...once, ...up.toReversed(), ...still], bird)).toBe(0);
  expect(eyes([...once, ...up, ...still], bird)).toBe(0);
  expect(eyes(once, [...bird, ...still, ...bird.toReversed()])).toBe(0);
  expect(eyes(once, [...bird, ...still, ...bird.with(2, [1, 2, 3, 4, 5, 6])])).toBe(1);
});

it("the outermost unit beside a selvedge has no edge of the figure there", () => {
  const draft: UnitDraft = {
    ground: cleanTwill,
    unitEnds: 4,
    picksPerRow: 4,
    threading: [[1], []],
    lifts: [[1], [1]],
    selvedge: { left: [2, 2] },
  };
  const sides = findingsOf(check(draft), "open-cut").filter(({ system }) => system === "weft");
  expect(sides.filter(({ ends }) => ends![0] <= 2)).toEqual([]);
});

describe("over the seam where the cloth repeats", () => {
  it("a stretch goes on", () => {
    const draft: UnitDraft = { ...onTabby, threading: [[1], [2]], lifts: [[1], [2], [2], [1, 2], [1]] };
    const stretch = { picks: 4 };
    expect(findingsOf(check(draft, { limits: { stretch } }), "long-stretch")).toMatchObject([
      { measured: 6 },
    ]);
    const seam = findingsOf(check(draft, { limits: { stretch }, repeat: "picks" }), "long-stretch");
    expect(seam.reduce((sum, { count = 1 }) => sum + count, 0)).toBe(2);
  });
});

it("unlike-sides names the place of the longest float", () => {
  const twill = fromText("...#\n..#.\n.#..\n#...");
  const found = findingsOf(checkGrid(twill, { repeat: "both" }), "unlike-sides");
  const places = found.map(({ ends, measured, picks, system }) => {
    const [threads, passed] = system === "warp" ? [ends!, picks!] : [picks!, ends!];
    expect(threads[0]).toBe(threads[1]);
    // As far as the seam, where the float goes on over it.
    expect(passed[1] - passed[0] + 1).toBeLessThanOrEqual(measured);
    return system;
  });
  expect(places.sort()).toEqual(["warp", "weft"]);
});
