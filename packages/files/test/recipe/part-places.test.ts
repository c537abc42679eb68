import { parseRows, printThreading } from "@drawcord/units";
import { array, assert, constantFrom, integer, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { placesOf } from "../../src/recipe/places.js";
import { soundRecipe } from "../../src/recipe/read.js";

const recipeOf = (lifts: string, threading = "1-4") =>
  `recipe: 1
ground: { weave: plain }
units:
  ends: 2
  threading: ${threading}
lifts:
  picks: 2
${lifts}`;

/** The text of each row from its place to the end of the line. */
function rowTexts(text: string): readonly string[] {
  const lines = text.split("\n");
  return placesOf(soundRecipe(text, "x"))
    .rows()
    .map(({ column, line }) => lines[line - 1]!.slice(column - 1));
}

describe("the place of a row of the lift plan", () => {
  it("is its entry in the list, or its line in a text", () => {
    expect(rowTexts(recipeOf("  rows:\n    - 1\n    - 2 *3\n    - none\n"))).toEqual([
      "1",
      "2 *3",
      "2 *3",
      "2 *3",
      "none",
    ]);
    expect(rowTexts(recipeOf('  rows: "1\\n2"\n')).every((text) => text === '"1\\n2"')).toBe(true);
    expect(rowTexts(recipeOf("  rows: |\n    1\n\n     2 *2\n    none\n"))).toEqual([
      "1",
      "2 *2",
      "2 *2",
      "none",
    ]);
  });

  it("is its line in a picture, row 1 the last", () => {
    const text = recipeOf("  picture: |\n    #...\n    .##.\n    ....\n");
    expect(rowTexts(text)).toEqual(["....", ".##.", "#..."]);
  });

  it("is its line in a block, however the block is changed, and the line of the order for a border", () => {
    const text = recipeOf(`  blocks:
    moth: { rows: [1, 2 3, 4] }
    leaf:
      picture: |
        ##..
        ..#.
  order:
    - leaf
    - moth mirrored on 1-4 upside-down
    - leaf exchanged framed 1 rows of 1-4
    - moth *2 every-other turned
    - leaf half-drop on 1-2 beside 3-4
    - leaf brick fitted to 9 rows
`);
    const found = rowTexts(text).map((row) => row.replace(/[,\]].*/, ""));
    const framed = "leaf exchanged framed 1 rows of 1-4";
    expect(found).toEqual([
      ...["..#.", "##.."],
      ...["4", "2 3", "1"],
      ...[framed, "..#.", "##..", framed],
      ...["1", "2 3", "4", "4", "2 3", "1"],
      ...["..#.", "##.."],
      ...["..#.", "##..", "..#.", "##..", "..#.", "##..", "..#.", "##.."],
    ]);
  });

  it("holds the row's own lift wherever blocks are only put in order", () => {
    const lines = array(constantFrom("1", "2 3", "none", "4 *2", "1-3"), { minLength: 1, maxLength: 5 });
    const order = array(constantFrom("a", "b", "a upside-down", "b *3", "a fitted to 30 rows"), {
      minLength: 1,
    });
    assert(
      property(lines, lines, order, (a, b, parts) => {
        const text = recipeOf(
          `  blocks:\n    a: { rows: ${JSON.stringify(a)} }\n    b:\n      rows:\n${b.map((row) => `        - ${row}\n`).join("")}  order: ${JSON.stringify(parts)}\n`,
        );
        const written = rowTexts(text).map((row) => /^"?([\d\s*-]+|none(?: \*\d)?)/.exec(row)![1]!);
        expect(written.map((row) => parseRows(row)[0])).toEqual(soundRecipe(text, "x").draft.lifts);
      }),
    );
  });
});

describe("the place of a unit", () => {
  it("is the shaft or the run that hangs it, however the threading is written", () => {
    const shafts = array(constantFrom<readonly number[]>([], [1], [2], [3], [4], [2, 4]), {
      minLength: 1,
      maxLength: 40,
    });
    assert(
      property(shafts, integer({ min: 1, max: 3 }), (units, times) => {
        const text = recipeOf(
          "  rows: [1]\n",
          `>-\n    (${printThreading(units).replaceAll(" ", "\n    ")})*${times}`,
        );
        const lines = text.split("\n");
        const recipe = soundRecipe(text, "x");
        const places = placesOf(recipe).units();
        expect(places).toHaveLength(recipe.draft.threading.length);
        recipe.draft.threading.forEach((unit, i) => {
          const { column, line } = places[i]!;
          const [written = ""] = /^(X|\d+(-\d+|(\+\d+)*))/.exec(lines[line - 1]!.slice(column - 1)) ?? [];
          const [first, last] = written.split("-").map(Number);
          if (written === "X") expect(unit).toEqual([]);
          else if (written.includes("+")) expect(written.split("+").map(Number)).toEqual(unit);
          else if (last === undefined) expect([first]).toEqual(unit);
          else {
            expect(unit[0]).toBeGreaterThanOrEqual(Math.min(first!, last));
            expect(unit[0]).toBeLessThanOrEqual(Math.max(first!, last));
          }
        });
      }),
    );
  });
});
