import { check } from "@drawcord/check";
import { expect, it } from "vitest";
import { checkOptions, formatRecipe, readRecipe, starterRecipe } from "../../src/index.js";

it("the starter recipe checks clean", () => {
  const recipe = readRecipe(starterRecipe(), "starter");
  const { findings, integrity } = check(recipe.draft, checkOptions(recipe));
  expect(findings).toEqual([]);
  expect(integrity.hangsTogether).toBe(true);
});

it("the starter recipe is laid out as recipes are", () => {
  expect(formatRecipe(starterRecipe(), "starter")).toBe(starterRecipe());
});

it.each(["Moth: and lantern", "# moth", '"moth"', "true", "1905", "moth\nlimits: {}"])(
  "may be titled %j",
  (title) => {
    expect(readRecipe(starterRecipe(title), "starter").title).toBe(title);
  },
);
