import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { type Recipe, recipeOfPiece, revisePieces, soundRecipe } from "../../src/index.js";

const seasons = readFileSync(
  new URL("../../../../shared/recipes/seasons.recipe.yaml", import.meta.url),
  "utf8",
);

function alone(source: string, name: string): Recipe {
  return recipeOfPiece(soundRecipe(source, "course"), name)!;
}

it.each(["tulips", "daisies", "acorns", "stars"])(
  "of %s alone every line is one of the whole, and weaves the same",
  (name) => {
    const wanted = alone(seasons, name);
    const text = revisePieces(seasons, wanted);
    const found = soundRecipe(text, "course");
    expect(found.pieces.map((piece) => piece.name)).toEqual([name]);
    expect(found.draft).toEqual(wanted.draft);
    expect(found.pieces[0]!.wefts).toEqual(wanted.pieces[0]!.wefts);
    expect(text).toContain("# The border along the edges");
    const lines = seasons.split("\n");
    expect(text.split("\n").filter((line) => !lines.includes(line))).toEqual([]);
  },
);

/** Three pieces with blank lines and comments between them, a weft of all, and brackets. */
const course = `recipe: 1
# what the course weaves
ground: { weave: plain }
units: { ends: 2, threading: 1-4 }
lifts:
  picks: 2
  blocks: { leaf: { rows: [1 2, 3 4] }, dot: { rows: [1], weft: gold }, edge: { rows: [4] } }

pieces:
  # the first
  - name: leaves
    lifts: { order: [leaf] } # one leaf

  # the second
  - name: dots
    weft: madder
    lifts:
      order:
        - dot # one dot
        - edge

  # the third
  - { name: rows, weft: woad, lifts: { rows: [1-4] } }
# of all
colours: { warp: white, weft: woad }
yarns:
  # undyed
  white: { colour: white }
  gold: { colour: gold } # for the dots
  madder: { colour: red }
  woad: { colour: blue }
`;
const part = (name: string, of = course) => revisePieces(of, alone(of, name));

it("takes the other pieces out of lines and brackets with their comments, blocks and yarns", () => {
  expect(part("dots")).toBe(
    course
      .replace(/ {2}# the first[\s\S]*?\n\n/, "")
      .replace(/\n {2}# the third\n.*\n/, "")
      .replace("leaf: { rows: [1 2, 3 4] }, ", "")
      .replace(", weft: woad }", " }")
      .replace(/ {2}woad.*\n/, ""),
  );
  expect(part("leaves")).toBe(
    course
      .replace(/\n {2}# the second[\s\S]*?(?=# of all)/, "")
      .replace(/, dot: .*(?= \}\n)/, "")
      .replace(/ {2}gold.*\n {2}madder.*\n/, ""),
  );
  // The picks that stood with the blocks stand in its lifts, for no block is left.
  expect(part("rows")).toBe(
    course
      .replace(/lifts:[\s\S]*?(?=\npieces:)/, "")
      .replace(/ {2}# the first[\s\S]*?(?= {2}# the third)/, "")
      .replace("[1-4] }", "[1-4], picks: 2 }")
      .replace(", weft: woad }\nyarns", " }\nyarns")
      .replace(/ {2}gold.*\n {2}madder.*\n/, ""),
  );
});

it("of blocks of its own alone leaves none that are shared", () => {
  const own = course.replace("{ rows: [1-4] }", "{ blocks: { bar: { rows: [1-4] } }, order: [bar *2] }");
  const text = part("rows", own);
  expect(text).toContain("lifts: { blocks: { bar: { rows: [1-4] } }, order: [bar *2], picks: 2 }");
  expect(text).not.toContain("leaf");
});

it("is written anew where values stand elsewhere, and weaves the same", () => {
  const again = course
    .replace("lifts: { order: [leaf] }", "lifts: &one { order: [leaf] }")
    .replace("lifts: { rows: [1-4] }", "lifts: *one");
  const text = part("rows", again);
  expect(text).not.toContain("*one");
  expect(soundRecipe(text, "course").draft.lifts).toEqual(alone(again, "rows").draft.lifts);
});
