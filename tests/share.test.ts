import { assert, property, string } from "fast-check";
import { expect, it } from "vitest";
import { fragmentOf, recipeIn } from "../docs/bench/share.js";

it("a text comes back from the link that holds it, whatever its letters", () =>
  assert(property(string({ unit: "grapheme" }), (text) => recipeIn(fragmentOf(text)) === text)));

it("a fragment that holds no text, or a broken one, is none", () => {
  expect(recipeIn("#rules")).toBeUndefined();
  expect(recipeIn("#recipe=***")).toBeUndefined();
  expect(recipeIn(fragmentOf("recipe: 1").slice(0, -4))).toBeUndefined();
});
