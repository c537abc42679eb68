import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { formatRecipe } from "../../src/index.js";
import { type Json, slips } from "../arbitraries.js";
import { leastRecipe, wholeRecipe } from "../samples.js";
import { meaning } from "./meaning.js";

/** Recipes that can be read, in all kinds of layout, with comments put in wherever they change nothing. */
const laidOut: fc.Arbitrary<{ readonly text: string; readonly comments: readonly string[] }> = fc
  .record({
    document: fc.oneof(
      fc.constant(parse(wholeRecipe) as Json),
      slips(parse(wholeRecipe) as Json),
      slips(parse(leastRecipe) as Json),
    ),
    layout: fc.record({
      indent: fc.integer({ min: 1, max: 5 }),
      indentSeq: fc.boolean(),
      lineWidth: fc.constantFrom(0, 20, 40, 80),
      collectionStyle: fc.constantFrom("any" as const, "block" as const, "flow" as const),
      defaultStringType: fc.constantFrom("PLAIN" as const, "QUOTE_DOUBLE" as const, "QUOTE_SINGLE" as const),
      defaultKeyType: fc.constantFrom("PLAIN" as const, "QUOTE_DOUBLE" as const),
    }),
    places: fc.array(fc.tuple(fc.nat(80), fc.nat(8), fc.constantFrom("above", "beside", "blank")), {
      maxLength: 8,
    }),
  })
  .map(({ document, layout, places }) => {
    let text = stringify(document, layout);
    const before = JSON.stringify(meaning(text));
    const comments: string[] = [];
    for (const [at, indent, where] of places) {
      const lines = text.split("\n");
      const comment = `# comment ${comments.length}.`;
      const line = at % lines.length;
      if (where === "above") lines.splice(line, 0, `${" ".repeat(indent)}${comment}`);
      else if (where === "beside") lines[line] += ` ${comment}`;
      else lines.splice(line, 0, "");
      const changed = lines.join("\n");
      if (before === undefined || JSON.stringify(meaning(changed)) !== before) continue;
      text = changed;
      if (where !== "blank") comments.push(comment);
    }
    return { text, comments };
  })
  .filter(({ text }) => meaning(text) !== undefined);

describe("a recipe laid out", () => {
  it("means what it meant, keeps its comments, and is not changed by being laid out again", () => {
    fc.assert(
      fc.property(laidOut, ({ text, comments }) => {
        const once = formatRecipe(text, "recipe");
        expect(meaning(once)).toEqual(meaning(text));
        expect(formatRecipe(once, "recipe")).toBe(once);
        for (const comment of comments) expect(once).toContain(comment);
      }),
      { numRuns: 40 },
    );
  });

  it("is the same however it was laid out before", () => {
    const styles = fc.record({
      indent: fc.integer({ min: 1, max: 5 }),
      lineWidth: fc.constantFrom(0, 20, 80),
      collectionStyle: fc.constantFrom("any" as const, "block" as const, "flow" as const),
      sortMapEntries: fc.constantFrom(false, (a: { key: unknown }, b: { key: unknown }) =>
        `${a.key}` < `${b.key}` ? 1 : -1,
      ),
    });
    const document: unknown = parse(leastRecipe);
    const canonical = formatRecipe(leastRecipe, "least");
    fc.assert(
      fc.property(styles, (style) => formatRecipe(stringify(document, style), "least") === canonical),
    );
  });

  it("has its keys in order, its sections apart, short lists of settings on one line, and few quotes", () => {
    const untidy = `# For the winter course.

# Two rows are enough.
lifts:
    rows: [1,   "2",
      "1-2 *3"]  # the last
    picks: 2


units:
     threading:   "1   2"
     ends: 2 # two
ground: { shafts: 2, threading: 1 2,
  steps: [{ sink: 2, raise: 1 }, { raise: 2, sink: 1 }] }
notes: "Weave\\nslowly."
recipe: 1
title: 'Moth'
# The end.
`;
    expect(formatRecipe(untidy, "moth")).toBe(`# For the winter course.

recipe: 1

title: Moth

ground:
  shafts: 2
  threading: 1 2
  steps:
    - { raise: 1, sink: 2 }
    - { raise: 2, sink: 1 }

units:
  ends: 2 # two
  threading: 1 2

# Two rows are enough.
lifts:
  picks: 2
  rows:
    - 1
    - 2
    - 1-2 *3
    # the last

notes: |-
  Weave
  slowly.

# The end.
`);
  });

  it("keeps the order of its keys where it uses a value again", () => {
    const again = leastRecipe
      .replace("threading: 1 2, steps", "threading: &straight 1 2, steps")
      .replace("ends: 2, threading: 1 2", "threading: *straight, ends: 2");
    const once = formatRecipe(again, "again");
    expect(once).toContain("units:\n  threading: *straight\n  ends: 2\n");
    expect(meaning(once)).toEqual(meaning(leastRecipe));
  });

  it("is refused where it cannot be read", () => {
    expect(() => formatRecipe("recipe: 1\n", "moth")).toThrow('moth:1:1: a recipe needs the key "ground"');
  });
});

const shipped = new URL("../../../../shared/recipes/", import.meta.url);

it.each(readdirSync(shipped))("the shipped %s is laid out as every recipe is to be", (name) => {
  const text = readFileSync(new URL(name, shipped), "utf8");
  expect(formatRecipe(text, name)).toBe(text);
});
