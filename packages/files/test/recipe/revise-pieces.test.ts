import { readFileSync } from "node:fs";
import { exchangedLifts } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { type Recipe, revisePieces, soundRecipe } from "../../src/index.js";

/** The lifts of a recipe on half of its shafts: shafts 1 and 2 become 1, 3 and 4 become 2, and so on. */
function onHalf(recipe: Recipe): Recipe {
  const half = (sets: readonly (readonly number[])[]) =>
    sets.map((set) => [...new Set(set.map((shaft) => Math.ceil(shaft / 2)))]);
  const pieces = recipe.pieces.map((piece) => ({
    ...piece,
    draft: {
      ...piece.draft,
      threading: half(piece.draft.threading),
      // Of two units side by side one that is drawn draws both.
      lifts: half(piece.draft.lifts),
    },
  }));
  return { ...recipe, pieces, draft: pieces[0]!.draft };
}

const course = `recipe: 1
# what the course weaves
ground: { weave: plain }
units:
  ends: 2
  threading: 7-8 1-6 8 7 # the border outside
lifts:
  picks: 2
  blocks:
    # as a picture
    leaf:
      picture: |
        ..##..
        ##....
        ....##
    edge: { rows: [1, 2] } # on shafts of its own
    dots:
      weft: gold
      rows:
        # the first dot
        - 1-2
        - 5-6 *2 # twice
        - none
pieces:
  # woven first
  - name: leaves
    weft: gold*2 weft
    lifts:
      order:
        - leaf *2 # two leaves
        - dots upside-down
        - dots *2 every-other mirrored on 1-6
  - name: borders
    counterchange: 1-6
    lifts: { order: [leaf with edge on 7-8 cut-short, dots] }
  - name: rows alone
    lifts:
      rows:
        - 1-4 # in the middle
        - 7-8
yarns: { gold: { count: 20/2 Ne } }
`;

describe("a recipe of pieces over another threading", () => {
  const before = soundRecipe(course, "course");
  const wanted = onHalf(before);
  // What was told of pairs of shafts is true of the half of them, counterchanged pieces too.
  const [leaves, borders] = wanted.pieces;
  const text = revisePieces(course, wanted);

  it("weaves what it should", () => {
    const after = soundRecipe(text, "course");
    expect(after.draft.threading).toEqual(wanted.draft.threading);
    expect(after.pieces.map(({ draft }) => draft.lifts)).toEqual(
      wanted.pieces.map(({ draft }) => draft.lifts),
    );
    expect(after.pieces.map(({ wefts }) => wefts)).toEqual(before.pieces.map(({ wefts }) => wefts));
    expect(exchangedLifts(borders!.draft.lifts, [1, 2, 3])[3]).toEqual(leaves!.draft.lifts[0] && [1]);
  });

  it("keeps blocks, pieces and comments, pictures as pictures and rows as rows", () => {
    const comments = (of: string) => of.match(/#(?![.#]) .*$/gm);
    expect(comments(text)).toEqual(comments(course));
    for (const kept of [
      "    # as a picture\n    leaf:\n      picture: |\n        .#.\n        #..\n        ..#\n",
      "    edge: { rows: [1, 1] } # on shafts of its own\n",
      "        # the first dot\n        - 1\n        - 3 *2 # twice\n        - none\n",
      "        - leaf *2 # two leaves\n        - dots upside-down\n        - dots *2 every-other mirrored on 1-3\n",
      "    counterchange: 1-3\n",
      "        - 1 2 # in the middle\n        - 4\n",
    ])
      expect(text).toContain(kept);
  });
});

it("a line that the new shafts cannot weave as it stands gets a block of its own", () => {
  const seasons = new URL("../../../../shared/recipes/seasons.recipe.yaml", import.meta.url);
  const source = readFileSync(seasons, "utf8");
  const recipe = soundRecipe(source, "seasons");
  // One square of the third tulip of the first piece is taken out.
  const pieces = recipe.pieces.map((piece, i) => {
    const lifts = piece.draft.lifts.map((lift, row) => (i === 0 && row === 71 ? lift.slice(1) : lift));
    return { ...piece, draft: { ...piece.draft, lifts } };
  });
  const text = revisePieces(source, { ...recipe, pieces, draft: pieces[0]!.draft });
  expect(text).toContain("        - tulip-2\n");
  expect(text).toContain(
    "    # tulip *fill with chain on 15 16, row by row\n    tulip-2:\n      picture: |\n",
  );
  const after = soundRecipe(text, "seasons");
  expect(after.pieces.map(({ draft }) => draft.lifts)).toEqual(pieces.map(({ draft }) => draft.lifts));
  // All other lines are as they were.
  const kept = text.split("\n").filter((line) => source.includes(line));
  expect(kept.length).toBeGreaterThanOrEqual(source.split("\n").length - 1);
});
