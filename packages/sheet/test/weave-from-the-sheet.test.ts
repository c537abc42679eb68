import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draft } from "../../units/test/arbitraries.js";
import { makeSheet, toHtml } from "../src/index.js";
import { draftOnPage } from "./read-back.js";
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

  it("is told the order of threading from the right", () => {
    const page = toHtml(makeSheet(exampleRecipe("runner")));
    const first = page.indexOf('<th scope="row">1</th>', page.indexOf("unit-threading-list"));
    expect(page.slice(first, first + 300)).toContain('<td class="number">81–80</td><td>X</td>');
  });
});
