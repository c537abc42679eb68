import { soundRecipe } from "@drawcord/files";
import { followPlan } from "@drawcord/follow";
import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  back,
  backRow,
  forward,
  forwardRow,
  placeWithin,
  START,
  takeOut,
  turnsOf,
  type WarpPlace,
} from "../src/place/place.js";
import { stepAt } from "../src/place/step.js";
import { placeInWords } from "../src/place/words.js";
import type { FollowPlan } from "../src/plan/types.js";
import { anyRecipe, planAndPlace } from "./arbitraries.js";
import { exampleRecipe, smallRecipe } from "./recipes.js";

/** Every place from the first pick to the end of the last piece. */
function wayThrough(plan: FollowPlan): WarpPlace[] {
  const way = [START];
  for (let next = forward(plan, START); next !== way.at(-1); next = forward(plan, next)) way.push(next);
  return way;
}

const hands = (
  held: ReadonlySet<number>,
  { draw, letGo }: { draw: readonly number[]; letGo: readonly number[] },
) => {
  for (const handle of draw) expect(held.has(handle)).toBe(false);
  for (const handle of letGo) expect(held.has(handle)).toBe(true);
  return new Set([...held, ...draw].filter((handle) => !letGo.includes(handle)));
};

describe("the way through a warp", () => {
  it("hands that do as they are told hold the lift of every row, in every piece", () =>
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const plan = followPlan(recipe);
        const { rowOfPick } = expand(recipe.draft);
        let held: ReadonlySet<number> = new Set();
        for (const place of wayThrough(plan)) {
          const step = stepAt(plan, place);
          if (step === undefined) {
            held = new Set();
            continue;
          }
          held = hands(held, step);
          const lift = recipe.draft.lifts[rowOfPick[place.woven]!]!;
          expect([...held].sort((a, b) => a - b)).toEqual([...new Set(lift)]);
        }
      }),
    ));

  it("every treadle moves the shafts of its pick's step, and no treadle means that none moves", () =>
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const plan = followPlan(recipe);
        const { steps } = recipe.draft.ground;
        for (const place of wayThrough(plan)) {
          const step = stepAt(plan, place);
          if (step === undefined) continue;
          const { raise, sink } = steps[place.woven % steps.length]!;
          const treadle = plan.treadles[step.treadle - 1];
          expect(treadle ?? { raise: [], sink: [] }).toEqual({ raise, sink });
        }
      }),
    ));

  it("a shuttle is thrown from where it lies", () =>
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const plan = followPlan(recipe);
        let lies = new Map<number, string>();
        for (const place of wayThrough(plan)) {
          if (place.woven === 0) lies = new Map();
          const step = stepAt(plan, place);
          if (step === undefined) continue;
          const { firstPickFrom, firstPickOf = {} } = recipe.cloth;
          const yarn = recipe.pieces[0]!.wefts[step.pickOfPiece % recipe.pieces[0]!.wefts.length]!;
          expect(step.from).toBe(lies.get(step.weft) ?? firstPickOf[yarn] ?? firstPickFrom);
          lies.set(step.weft, step.from === "left" ? "right" : "left");
        }
      }),
    ));

  it("goes back as it went on", () =>
    fc.assert(
      fc.property(planAndPlace, ({ plan, place }) => {
        const next = forward(plan, place);
        if (next !== place) expect(back(plan, next)).toEqual(place);
      }),
    ));

  it("goes on by rows to the first pick of each, and back by rows to the same", () =>
    fc.assert(
      fc.property(planAndPlace, ({ plan, place }) => {
        const next = forwardRow(plan, place);
        const step = stepAt(plan, next);
        if (step !== undefined) expect(step.pickOfRow).toBe(0);
        if (next.turn === place.turn && next.woven > place.woven) {
          const begun = backRow(plan, next);
          expect(begun.woven).toBeLessThanOrEqual(place.woven);
          expect(stepAt(plan, begun)!.row).toBe(stepAt(plan, place)!.row);
        }
      }),
    ));

  it("picks come out in the shed in which they went in, the last first, and then weaving goes on", () =>
    fc.assert(
      fc.property(planAndPlace, fc.nat(), ({ plan, place }, n) => {
        if (place.woven === 0) return;
        const until = n % place.woven;
        let out = takeOut(place, until);
        for (let pick = place.woven - 1; pick >= until; pick--) {
          const taken = stepAt(plan, out)!;
          const woven = stepAt(plan, { turn: place.turn, woven: pick })!;
          expect({ ...taken, draw: [], letGo: [], out: false }).toEqual({ ...woven, draw: [], letGo: [] });
          expect(taken.out).toBe(true);
          out = forward(plan, out);
        }
        expect(out).toEqual({ turn: place.turn, woven: until });
      }),
    ));

  it("hands that take out as they are told hold the lift of every row", () =>
    fc.assert(
      fc.property(planAndPlace, ({ plan, place }) => {
        const { picks } = turnsOf(plan)[place.turn]!;
        let held: ReadonlySet<number> = new Set();
        let at = takeOut({ turn: place.turn, woven: picks }, 0);
        while (at.until !== undefined) {
          const step = stepAt(plan, at)!;
          held = hands(held, step);
          expect([...held].sort((a, b) => a - b)).toEqual([...step.lift.handles]);
          at = forward(plan, at);
        }
      }),
    ));

  it("a place that was written down for another cloth is made one of this", () =>
    fc.assert(
      fc.property(planAndPlace, fc.double(), fc.double(), ({ plan }, turn, woven) => {
        const place = placeWithin(plan, { turn, woven });
        const { picks } = turnsOf(plan)[place.turn]!;
        expect(place.woven).toBeGreaterThanOrEqual(0);
        expect(place.woven).toBeLessThanOrEqual(picks);
      }),
    ));
});

describe("pieces and blocks", () => {
  it("every row of the runner stands in its block, by its name and its repeat", () => {
    const { blocks, rows } = followPlan(exampleRecipe("runner")).pieces[0]!;
    let next = 0;
    for (const block of blocks) {
      expect(block.start).toBe(next);
      next += block.rows;
    }
    expect(next).toBe(rows.length);
    // 6 rows of ground, a line, 2 of the edge, 12 moths of 29 rows, 2 of the edge, a line, 6 of ground: 366.
    expect(next).toBe(366);
    expect(blocks.filter(({ name }) => name === "moth").map(({ rows: each, time }) => [each, time])).toEqual(
      Array.from({ length: 12 }, (_, i) => [29, i + 1]),
    );
  });

  it("pieces unlike each other follow one another, each with its own weft", () => {
    const recipe = soundRecipe(
      `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X 1-3 2 1 X }
lifts: { picks: 4, blocks: { dot: { rows: [2] }, bar: { rows: [1-3, none] } } }
yarns: { warp: { count: 20/2 Ne }, weft: { count: 20/2 Ne }, madder: { count: 20/2 Ne } }
pieces:
  - { name: dots, count: 2, lifts: { picks: 4, order: [dot*2] } }
  - { name: bars, weft: madder, lifts: { picks: 4, order: [bar] } }
`,
      "mats",
    );
    const plan = followPlan(recipe);
    expect(turnsOf(plan).map(({ piece, time, picks }) => [piece.name, time, picks])).toEqual([
      ["dots", 1, 8],
      ["dots", 2, 8],
      ["bars", 1, 8],
    ]);
    const step = stepAt(plan, { turn: 2, woven: 0 })!;
    expect(plan.wefts[step.weft]!.name).toBe("madder");
    expect(step.block).toEqual({ name: "bar", start: 0, rows: 2, time: 1, times: 1 });
    expect(step.draw).toEqual([1, 2, 3]);
  });
});

describe("what is said", () => {
  const plan = followPlan(smallRecipe);

  it("names the row, the hands, the treadle and the side where a row begins, and no more at its other picks", () => {
    expect(placeInWords(plan, { turn: 0, woven: 4 })).toBe(
      "Row 2. Draw 2. Let go 1, 3. Treadle 1, from the left.",
    );
    expect(placeInWords(plan, { turn: 0, woven: 5 })).toBe("Treadle 2, from the right.");
    expect(placeInWords(plan, { turn: 0, woven: 8 })).toBe("Row 3. Let go all. Treadle 1, from the left.");
    expect(placeInWords(plan, { turn: 0, woven: 12 })).toBe("This piece is woven. Let go all handles.");
    expect(placeInWords(plan, { turn: 1, woven: 12 })).toBe("The last pick is woven.");
    expect(placeInWords(plan, { turn: 0, woven: 5, until: 2 })).toBe("Treadle 1, to the left.");
  });

  it("names the weft where there are several", () => {
    const band = followPlan(exampleRecipe("band"));
    expect(placeInWords(band, START)).toBe("Row 1. Draw nothing. Treadle 1, pattern, from the left.");
    expect(placeInWords(band, { turn: 0, woven: 1 })).toBe("Treadle 2, ground weft, from the left.");
    expect(placeInWords(band, { turn: 0, woven: 2 })).toBe("Treadle 1, pattern, from the right.");
  });
});
