import { sized } from "@drawcord/units";
import fc from "fast-check";
import { expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { soundRecipe, starterRecipe, writeRecipe } from "../../src/index.js";
import { type Json, slips, unitDrafts } from "../arbitraries.js";
import { refusal } from "../refusals.js";
import { leastRecipe, wholeRecipe } from "../samples.js";
import { meaning } from "./meaning.js";

it("a recipe written reads back as the same", () => {
  const documents = fc.oneof(
    ...[wholeRecipe, leastRecipe, starterRecipe()].map((text) => slips(parse(text) as Json)),
  );
  let written = 0;
  fc.assert(
    fc.property(documents, (document) => {
      const text = stringify(document);
      const said = meaning(text);
      if (said === undefined) return;
      written++;
      const again = writeRecipe(soundRecipe(text, "recipe"));
      expect(meaning(again)).toEqual(said);
      expect(writeRecipe(soundRecipe(again, "recipe"))).toBe(again);
    }),
    { numRuns: 200 },
  );
  expect(written).toBeGreaterThan(9);
});

it.each([wholeRecipe, leastRecipe, starterRecipe()])("whole recipes do: %#", (text) => {
  expect(meaning(writeRecipe(soundRecipe(text, "recipe")))).toEqual(meaning(text));
});

it("any draft goes through a recipe unchanged", () => {
  const { draft: _, ...around } = soundRecipe(leastRecipe, "least");
  const counted = fc.tuple(
    unitDrafts(),
    fc.boolean(),
    fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 8, maxLength: 8 }),
  );
  fc.assert(
    fc.property(counted, ([plain, each, numbers]) => {
      const draft = each
        ? {
            ...plain,
            unitEnds: plain.threading.map((_, i) => numbers[i]!),
            picksPerRow: plain.lifts.map((_, i) => numbers[i]!),
          }
        : plain;
      expect(soundRecipe(writeRecipe({ ...around, draft }), "again").draft).toEqual(sized(draft));
    }),
    { numRuns: 100 },
  );
});

it("a ground keeps its name where its name gives it", () => {
  expect(writeRecipe(soundRecipe(starterRecipe(), "starter"))).toMatch(/ground:\n {2}weave: broken twill\n/);
  const other = soundRecipe(leastRecipe, "least");
  expect(writeRecipe({ ...other, weave: "satin 8" })).toMatch(/ground:\n {2}shafts: 2\n/);
});

it("what no recipe may hold is refused", () => {
  const recipe = soundRecipe(leastRecipe, "least");
  expect(refusal(() => writeRecipe({ ...recipe, title: "moth\u001b[2J" })).sentence).toBe(
    "the text holds the control character U+001B",
  );
});
