import { readdirSync } from "node:fs";
import type { Schema } from "@drawcord/files";
import { editorSchema } from "@drawcord/review";
import { parseWovenBlock } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { recipeLanguage } from "./support/recipe-language.js";

const files = recipeLanguage();
const page = files[0]!.text;

describe("the manual of the recipe's language", () => {
  it.each(files)("docs/$name is as the code has it", async ({ name, text }) => {
    await expect(text).toMatchFileSnapshot(`../docs/${name}`);
  });

  it("has no picture that it does not show", () => {
    const kept = readdirSync(new URL("../docs/recipe-language/", import.meta.url));
    expect(kept.map((name) => `recipe-language/${name}`).toSorted()).toEqual(
      files
        .slice(1)
        .map(({ name }) => name)
        .toSorted(),
    );
  });

  it("tells every key of the schema", () => {
    const keys = keysIn(editorSchema());
    expect(keys.length).toBeGreaterThan(80);
    for (const key of keys) expect(page).toMatch(new RegExp(`\\| \`[^\`|]*\\b${key}(\\[\\])?\``));
  });

  it("tells every word of a weaving order", () => {
    let words: readonly string[] = [];
    try {
      parseWovenBlock("moth unheard-of");
    } catch (error) {
      words = String(error).split("expected ")[1]!.split(", ");
    }
    expect(words.length).toBeGreaterThan(10);
    for (const word of [...words, "every-other", "beside", "cut-short"]) {
      const shown = word.replace("*N", "*3");
      expect(page).toMatch(new RegExp(`^### \`[^\`]*${shown.replace("*", "\\*")}`, "m"));
    }
  });
});

/** The names of all keys, wherever they stand. */
function keysIn({ additionalProperties, items, properties = {} }: Schema): readonly string[] {
  const below = [...Object.values(properties), items, additionalProperties || undefined];
  return [...Object.keys(properties), ...below.flatMap((of) => (of === undefined ? [] : keysIn(of)))];
}
