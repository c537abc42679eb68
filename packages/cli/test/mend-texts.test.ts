import { mend } from "@drawcord/causes";
import { check } from "@drawcord/check";
import { reviseDraft, soundRecipe, writeRecipe } from "@drawcord/files";
import { checkRecipe, optionsOf } from "@drawcord/review";
import fc from "fast-check";
import { expect, it } from "vitest";
import { slippedDraft } from "../../check/test/arbitraries.js";
import { applied } from "../../files/test/recipe/applied.js";

const recipeOf = (draft: Parameters<typeof writeRecipe>[0]["draft"], rows: readonly string[]) => {
  const written = writeRecipe({
    draft,
    yarns: [],
    cloth: {},
    project: {},
    loom: {},
    limits: { float: { threads: 7 } },
    levels: {},
    waive: [],
    stated: [],
  });
  // A comment in every line, numbered, and in the layout of a hand.
  let number = 0;
  return written
    .split("\n")
    .map((line) => (line === "" ? line : `${line}   # ${rows[number % rows.length]} ${++number};`))
    .join("\n");
};

it("a mend can be written into the text of any faulty recipe, and every comment is kept", () => {
  let mended = 0;
  const words = fc.array(fc.constantFrom("loom 3", "see page 5", "#", '"'), { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(slippedDraft, words, (draft, rows) => {
      const text = recipeOf(draft, rows);
      const recipe = soundRecipe(text, "r");
      const options = optionsOf(recipe);
      const mends = mend(recipe.draft, options);
      fc.pre(mends.length > 0);
      const last = mends.at(-1)!.draft;
      const { edits, rewritten, text: revised } = reviseDraft(text, "r", last);
      expect(applied(text, edits)).toBe(revised);
      const again = soundRecipe(revised, "r");
      expect(checkRecipe(again).findings).toEqual(check(last, options).findings);
      const removed = mends.flatMap(({ changes }) => changes).filter(({ change }) => change === "remove-row");
      const comments = text.match(/# .* \d+;/g)!;
      const gone = comments.filter((comment) => !revised.includes(comment));
      expect(gone.length).toBeLessThanOrEqual(rewritten.length === 0 ? removed.length : 0);
      const lines = text.split("\n");
      const changed = revised.split("\n").filter((line) => !lines.includes(line)).length;
      const most = mends.flatMap(({ changes }) => changes).length + draft.ground.steps.length;
      if (rewritten.length === 0) expect(changed).toBeLessThanOrEqual(most);
      mended++;
    }),
    { numRuns: 200 },
  );
  expect(mended).toBe(200);
}, 300_000);
