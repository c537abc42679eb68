import { readdirSync } from "node:fs";
import type { Schema } from "@drawcord/files";
import { editorSchema } from "@drawcord/review";
import { parseWovenBlock } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";
import { numberKeys, planOf, stretches, wholeWarp } from "./support/number-pictures.js";
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

  it("draws the measures of a warp as long as the plan says that it is", () => {
    const drawn = stretches.reduce((sum, [, mm]) => sum + mm, 0);
    expect(toMetric(planOf(wholeWarp).warpLength!).value).toBeCloseTo(drawn, 6);
    const lengths = numberKeys().map(({ bars }) =>
      bars.map(({ parts }) => parts.reduce((sum, { mm }) => sum + mm, 0)),
    );
    expect(lengths.flat().every((mm) => mm > 0)).toBe(true);
    const of = (word: string) => numberKeys().find((one) => one.word === word)!.bars;
    for (const [word, share] of [
      ["cloth: draw-in", 0.9],
      ["cloth: shrinkage", 0.9],
    ] as const) {
      const widths = of(word).map(({ parts }) => parts[0]!.mm);
      expect(widths.at(-1)! / widths[0]!).toBeCloseTo(share, 6);
    }
    const [cloth, warp] = of("cloth: take-up").map(({ parts }) => parts.reduce((sum, { mm }) => sum + mm, 0));
    expect(warp! / cloth!).toBeCloseTo(1.1, 6);
    expect(of("project: spare")[1]!.parts[1]!.mm).toBeCloseTo(10, 6);
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
