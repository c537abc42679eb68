import { expect, it } from "vitest";
import { formatRecipe, soundRecipe, starterRecipe } from "../../src/index.js";

it("the starter recipe is laid out as recipes are", () => {
  expect(formatRecipe(starterRecipe(), "starter")).toBe(starterRecipe());
});

it.each(["Moth: and lantern", "# moth", '"moth"', "true", "1905", "moth\nlimits: {}"])(
  "may be titled %j",
  (title) => {
    expect(soundRecipe(starterRecipe(title), "starter").title).toBe(title);
  },
);
