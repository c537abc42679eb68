import { toHtml } from "@drawcord/page";
import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draft } from "../../units/test/arbitraries.js";
import { makeSheet } from "../src/index.js";
import { draftOnPage, pageOf, tableOf } from "./read-back.js";
import { bareRecipe, exampleRecipe } from "./recipes.js";

describe("a weaver with nothing but the page", () => {
  it.each(["runner", "napkin", "band", "faulty-runner"] as const)("weaves the %s", (name) => {
    const recipe = exampleRecipe(name);
    const page = toHtml(makeSheet(recipe));
    expect(expand(draftOnPage(page)).drawdown.equals(expand(recipe.draft).drawdown)).toBe(true);
  });

  it("weaves any draft, read either way", () => {
    fc.assert(
      fc.property(draft(), fc.constantFrom("right-to-left", "left-to-right"), (from, reading) => {
        const page = toHtml(makeSheet(bareRecipe(from), { reading }));
        return expand(draftOnPage(page)).drawdown.equals(expand(from).drawdown);
      }),
      { numRuns: 60 },
    );
  });

  it("weaves what repeats as often as it is told, from rows that are printed once", () => {
    fc.assert(
      fc.property(
        draft(),
        fc.integer({ min: 2, max: 14 }),
        fc.integer({ min: 0, max: 3 }),
        (from, times, more) => {
          fc.pre(from.lifts.length > 1);
          const again = <T>(rows: readonly T[]) => [
            ...Array.from({ length: times }, () => rows).flat(),
            ...rows.slice(0, more),
          ];
          const { lifts, picksPerRow } = from;
          const long = {
            ...from,
            lifts: again(lifts),
            picksPerRow: typeof picksPerRow === "number" ? picksPerRow : again(picksPerRow),
          };
          const page = toHtml(makeSheet(bareRecipe(long)));
          return expand(draftOnPage(page)).drawdown.equals(expand(long).drawdown);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("finds the repeat of the runner once, 12 times to be woven", () => {
    const page = pageOf(toHtml(makeSheet(exampleRecipe("runner"))));
    expect(tableOf(page, "lift-order").map((row) => `${row["Rows"]}: ${row["Woven as rows"]}`)).toEqual([
      "1–8: 1–8",
      ...Array.from({ length: 12 }, (_, i) => `${9 + 29 * i}–${37 + 29 * i}: 9–37, time ${i + 1} of 12`),
      "357–366: 357–366",
    ]);
    expect(tableOf(page, "lift-list").map((row) => row["Row"])).not.toContain("38");
  });

  it("is told the order of threading from the right", () => {
    const [first] = tableOf(pageOf(toHtml(makeSheet(exampleRecipe("runner")))), "unit-threading-list");
    expect(first!["Units"]).toBe("81–72");
    expect(first!["Pattern shafts in order"]).toBe("X X 13 X 4 3 2 1 2 3");
  });
});
