import type { Recipe } from "@drawcord/files";
import { type Table, toHtml } from "@drawcord/page";
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

  it("finds each row of the runner by its number, the twelve moths in two groups of six", () => {
    const card = cardOf(exampleRecipe("runner"));
    expect(card.rows.map(([row]) => row)).toContain("27 56 85 114 143 172");
    const numbers = card.rows.flatMap(([row]) => String(row).split(" ")).filter((word) => word !== "·");
    expect(numbers.map(Number).sort((a, b) => a - b)).toEqual(Array.from({ length: 366 }, (_, i) => i + 1));
  });

  it("is told the order of threading from the right", () => {
    const [first] = tableOf(pageOf(toHtml(makeSheet(exampleRecipe("runner")))), "threading-list");
    expect(first).toMatchObject({ Unit: "81", Pattern: "X", Ground: "4 3 2 1", "Ends so far": "4" });
  });
});

function cardOf(recipe: Recipe): Table {
  const blocks = makeSheet(recipe, { parts: ["lifts"] }).parts.flatMap((part) => part.blocks);
  return blocks.find((block): block is Table => block.kind === "table")!;
}
