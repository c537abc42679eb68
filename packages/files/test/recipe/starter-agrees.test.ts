import { convert, plan } from "@drawcord/yarn";
import { expect, it } from "vitest";
import { projectOf } from "../../src/project.js";
import { soundRecipe } from "../../src/recipe/read.js";
import { starterRecipe } from "../../src/recipe/starter.js";

it("the starter recipe agrees with itself in every number", () => {
  const recipe = soundRecipe(starterRecipe(), "starter");
  const project = projectOf(recipe);
  const found = plan(project);
  // The rows make the length that it names, with no pick over.
  expect(found.picks.value).toBe(project.picks);
  const { length: _, ...byLifts } = project;
  expect(convert(plan(byLifts).finishedLength!, "cm").value).toBeCloseTo(40, 9);
  // Its sley gives its sett, and its setts suit its yarns.
  expect(found.reed).toMatchObject({ sley: [2], error: 0 });
  expect(found.firmness!.words).toBe("a balanced working sett");
  expect(found.notes).toEqual([]);
  expect(found.missing).toEqual([]);
});
