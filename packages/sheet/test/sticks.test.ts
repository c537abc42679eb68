import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draft } from "../../units/test/arbitraries.js";
import { leaveAndTake, pass, sticksOf } from "../src/card/sticks.js";
import { makeSheet } from "../src/index.js";
import { weave } from "../src/woven.js";
import { exampleRecipe } from "./recipes.js";

describe("a plan as half-heddle sticks", () => {
  it("weaves the same cloth: in each row the stick that names it raises the units that it carries", () => {
    fc.assert(
      fc.property(draft(), fc.boolean(), (from, fromRight) => {
        const { squares } = weave(from).expansion;
        const sticks = sticksOf(weave(from), fromRight);
        for (let row = 0; row < squares.rows; row++) {
          const used = sticks.filter(({ rows }) => rows.includes(row + 1));
          expect(used.length).toBeLessThanOrEqual(1);
          for (let unit = 0; unit < squares.columns; unit++) {
            const place = fromRight ? squares.columns - unit : unit + 1;
            expect(used[0]?.units.includes(place) ?? false).toBe(squares.get(row, unit));
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it("is counted out as it is: units left and taken by turns", () => {
    const sets = fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 1 });
    fc.assert(
      fc.property(sets, (list) => {
        const units = list.sort((a, b) => a - b);
        const taken: number[] = [];
        let at = 1;
        for (const [turn, number] of leaveAndTake(units).entries()) {
          if (turn % 2 === 1) for (let i = 0; i < number; i++) taken.push(at + i);
          if (turn > 0) expect(number).toBeGreaterThan(0);
          at += number;
        }
        expect(taken).toEqual(units);
      }),
    );
  });

  it("lets two sticks pass where one lies wholly under the other", () => {
    expect(pass([2, 3], [1, 2, 3])).toBe(true);
    expect(pass([1, 2, 3], [2, 3])).toBe(true);
    expect(pass([1, 2], [2, 3])).toBe(false);
    expect(pass([1], [2])).toBe(false);
  });

  it("of the runner takes a stick for each of its unlike lifts that draw a unit", () => {
    const recipe = exampleRecipe("runner");
    const unlike = new Set(recipe.draft.lifts.map((lift) => lift.join(" ")).filter((lift) => lift !== ""));
    const [part] = makeSheet(recipe, { parts: ["sticks"] }).parts;
    const table = part!.blocks.find((block) => block.kind === "table");
    expect(table?.kind === "table" && table.rows.length).toBe(unlike.size);
  });
});
