import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatRecipe, type Recipe, revisePieces, soundRecipe, writeRecipe } from "../../src/index.js";
import { meaning } from "./meaning.js";

/** A recipe of pieces and colours as somebody might write it, with numbered comments above lines and beside them. */
const recipes = fc
  .record({
    pieces: fc.array(
      fc.record({
        count: fc.option(fc.integer({ min: 1, max: 5 }), { nil: undefined }),
        weft: fc.constantFrom(undefined, "gold", "weft*3 gold", "(gold weft)*2 weft"),
        counterchange: fc.boolean(),
        limits: fc.boolean(),
        lifts: fc.oneof<fc.Arbitrary<readonly string[]>[]>(
          fc
            .array(
              fc.constantFrom(
                "moth",
                "moth *2",
                "moth upside-down",
                "moth turned on 1-4",
                "moth *2 every-other mirrored on 1-4",
                "moth with edge on 5-6 cut-short",
                "moth *2 exchanged on 1-4 with edge on 5-6 cut-short",
                "moth framed in edge mitred on 1-4 beside 5-6",
                "moth framed in edge meeting beside 6-5",
                "moth framed 1 row of 1-6 beside 5-6",
                "moth half-drop on 1-2 beside 3-4",
                "moth fitted to 9 rows brick on 1-4",
                "dots",
                "edge on 5 6 *3",
              ),
              { minLength: 1, maxLength: 4 },
            )
            .map((order) => ["order:", ...order.map((line) => `  - ${line}`)]),
          fc.constant(["rows:", "  - 1-4", "  - none *2", "  - 2 6"]),
          fc.constant(["picture: |", "  #..#..", "  .##..#"]),
        ),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    warp: fc.constantFrom("gold*8 warp*16 gold*8", "warp", "warp gold"),
    marks: fc.infiniteStream(fc.constantFrom("none", "none", "above", "beside")),
  })
  .map(({ marks, pieces, warp }) => {
    const lines = [
      "ground: { weave: broken twill, ends: 4 }",
      "units:",
      "  ends: 4",
      "  threading: X 5-6 1-4 3-1 6-5 X",
      "lifts:",
      "  picks: 4",
      "  blocks:",
      "    moth:",
      "      picture: |",
      "        #..#",
      "        .##.",
      "        ..##",
      "        ...#",
      "    edge: { rows: [1, 1-2, 2] }",
      "    dots:",
      "      weft: gold*2 weft",
      "      rows:",
      "        - 1 3",
      "        - 6 *2",
      "pieces:",
      ...pieces.flatMap(({ count, counterchange, lifts, limits, weft }, i) => [
        `  - name: piece ${i + 1}`,
        ...(count === undefined ? [] : [`    count: ${count}`]),
        ...(weft === undefined ? [] : [`    weft: ${weft}`]),
        ...(counterchange ? ["    counterchange: 1-4"] : []),
        ...(limits ? ["    limits: { float: 7 }"] : []),
        "    lifts:",
        ...lifts.map((line) => `      ${line}`),
      ]),
      `colours: { warp: ${warp}, weft: gold weft }`,
      "yarns:",
      '  warp: { count: Nm 22/2, colour: "#efe8d8" }',
      "  weft: { colour: rust }",
      "  gold: { count: Nm 16/2 }",
    ];
    // What stands in a picture is no comment.
    const isPicture = (i: number) => /^ *[#.]+$/.test(lines[i] ?? "");
    const commented = lines.flatMap((line, i) => {
      const mark = marks.next().value;
      if (isPicture(i) || mark === "none") return [line];
      const indent = /^ */.exec(line)![0];
      return mark === "above" && !isPicture(i - 1)
        ? [`${indent}# above ${i}`, line]
        : [line.endsWith("|") ? line : `${line} # beside ${i}`];
    });
    return ["recipe: 1", ...commented].join("\n").concat("\n");
  });

const comments = (text: string) => text.match(/# (above|beside) \d+/g) ?? [];

describe("any recipe of pieces and colours", () => {
  it("that is laid out keeps what it says and its comments, and is laid out then", () => {
    fc.assert(
      fc.property(recipes, (text) => {
        const laid = formatRecipe(text, "test");
        expect(meaning(text)).toBeDefined();
        expect(meaning(laid)).toEqual(meaning(text));
        expect(comments(laid).toSorted()).toEqual(comments(text).toSorted());
        expect(formatRecipe(laid, "test")).toBe(laid);
      }),
      { numRuns: 25 },
    );
  });

  it("that is written reads back as the same", () => {
    fc.assert(
      fc.property(recipes, (text) => {
        expect(meaning(writeRecipe(soundRecipe(text, "test")))).toEqual(meaning(text));
      }),
      { numRuns: 25 },
    );
  });

  it("on another threading weaves what it should, its comments kept, and on its own is what it was", () => {
    let made = 0;
    let whole = 0;
    fc.assert(
      fc.property(recipes, (text) => {
        const recipe = soundRecipe(text, "test");
        expect(revisePieces(text, recipe)).toBe(text);
        const wanted = withTwoAlike(recipe);
        const revised = revisePieces(text, wanted);
        const after = soundRecipe(revised, "test");
        expect(after.draft.threading).toEqual(wanted.draft.threading);
        expect(after.pieces.map(({ draft }) => draft.lifts)).toEqual(
          wanted.pieces.map(({ draft }) => draft.lifts),
        );
        expect(after.pieces.map(({ wefts }) => wefts)).toEqual(recipe.pieces.map(({ wefts }) => wefts));
        made++;
        if (!revised.includes("    moth:")) return;
        whole++;
        expect(comments(revised)).toEqual(comments(text));
      }),
      { numRuns: 25 },
    );
    // Written out anew only where blocks cannot be kept.
    expect(whole / made).toBeGreaterThan(0.9);
  });
});

/** The recipe with shafts 3 and 4 as one, which is drawn where shaft 3 was; the border's shafts move up. */
function withTwoAlike(recipe: Recipe): Recipe {
  const less = (sets: readonly (readonly number[])[]) =>
    sets.map((set) => set.filter((shaft) => shaft !== 4).map((shaft) => (shaft > 4 ? shaft - 1 : shaft)));
  const threading = recipe.draft.threading.map((set) => set.map((shaft) => (shaft > 3 ? shaft - 1 : shaft)));
  const pieces = recipe.pieces.map((piece) => ({
    ...piece,
    draft: { ...piece.draft, threading, lifts: less(piece.draft.lifts) },
  }));
  return { ...recipe, pieces, draft: pieces[0]!.draft };
}
