import type { Recipe } from "@drawcord/files";
import { type Table, toHtml, toMarkdown } from "@drawcord/page";
import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toPdf } from "../../page/src/print.js";
import { draft } from "../../units/test/arbitraries.js";
import { makeSheet } from "../src/index.js";
import { type Printed, printedHtml, printedMarkdown, printedPdf } from "./printed.js";
import { pageOf, tableOf } from "./read-back.js";
import { bareRecipe, exampleRecipe } from "./recipes.js";
import { draftsOn } from "./weaver.js";

const names = ["runner", "napkin", "band", "faulty-runner", "seasons"] as const;

/** Whether the drafts that a weaver reads off a sheet weave the pieces of a recipe, interlacement by interlacement. */
function weaves(printed: readonly Printed[], { pieces }: Recipe): boolean {
  const drafts = draftsOn(printed);
  expect(drafts.length).toBe(pieces.length);
  return pieces.every(({ draft: wanted }, i) => expand(drafts[i]!).drawdown.equals(expand(wanted).drawdown));
}

describe("a weaver with nothing but the lift card, the threading list and the tie-up", () => {
  describe.each(names)("weaves the %s", (name) => {
    const recipe = exampleRecipe(name);
    const sheet = makeSheet(recipe, { parts: ["threading", "ground", "lifts"] });

    it("from the page in a browser", () => expect(weaves(printedHtml(toHtml(sheet)), recipe)).toBe(true));

    it("from Markdown", () => expect(weaves(printedMarkdown(toMarkdown(sheet)), recipe)).toBe(true));

    it("from paper", async () => {
      const bytes = await toPdf(sheet);
      expect(weaves(await printedPdf(bytes), recipe)).toBe(true);
    });
  });

  it("weaves any draft, read either way", () => {
    fc.assert(
      fc.property(draft(), fc.constantFrom("right-to-left", "left-to-right"), (from, reading) => {
        const recipe = bareRecipe(from);
        const sheet = makeSheet(recipe, { reading });
        return (
          weaves(printedHtml(toHtml(sheet)), recipe) && weaves(printedMarkdown(toMarkdown(sheet)), recipe)
        );
      }),
      { numRuns: 25 },
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
          const recipe = bareRecipe(long);
          return weaves(printedHtml(toHtml(makeSheet(recipe))), recipe);
        },
      ),
      { numRuns: 25 },
    );
  });

  it("finds each row of the runner by its number, the twelve moths in two groups of six", () => {
    const card = cardOf(exampleRecipe("runner"));
    expect(card.rows.map(([row]) => row)).toContain("27 56 85 114 143 172");
    const numbers = card.rows.flatMap(([row]) => String(row).split(" ")).filter((word) => word !== "·");
    expect(numbers.map(Number).sort((a, b) => a - b)).toEqual(Array.from({ length: 366 }, (_, i) => i + 1));
  });

  it("is told the order of threading from the right", () => {
    const lines = tableOf(pageOf(toHtml(makeSheet(exampleRecipe("runner")))), "threading-list");
    expect(lines[0]).toMatchObject({ Unit: "Units 81–74: right edge" });
    expect(lines[1]).toMatchObject({ Unit: "81", Pattern: "X", Ground: "4 3 2 1", Ends: "4" });
    expect(lines.at(-1)).toMatchObject({ Unit: "1", Ends: "324" });
  });
});

function cardOf(recipe: Recipe): Table {
  const blocks = makeSheet(recipe, { parts: ["lifts"] }).parts.flatMap((part) => part.blocks);
  return blocks.find((block): block is Table => block.kind === "table")!;
}
