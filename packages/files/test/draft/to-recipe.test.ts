import { readFileSync } from "node:fs";
import { drawdownOfDraft, settOf } from "@drawcord/check";
import { parseColour } from "@drawcord/draw";
import { toText } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  coloursOfRecipe,
  draftOfRecipe,
  drawdownOfRecipe,
  recipeOfDraft,
  recipeOfPiece,
  soundRecipe,
  soundWif,
  writeWif,
} from "../../src/index.js";
import { shaftDrafts } from "../arbitraries.js";
import { refusal } from "../refusals.js";

const examples = new URL("../../../../shared/", import.meta.url);
const towel = soundWif(readFileSync(new URL("drafts/towel.wif", examples)), "towel.wif").draft;

describe("a recipe made of a draft", () => {
  it("weaves the draft's cloth in its colours, at its setts", () => {
    fc.assert(
      fc.property(shaftDrafts(), (draft) => {
        const recipe = soundRecipe(recipeOfDraft(draft), "made");
        expect(toText(drawdownOfRecipe(recipe))).toBe(toText(drawdownOfDraft(draft)));
        const { warp, weft } = coloursOfRecipe(recipe);
        const ends = draft.threading.length;
        expect(warp).toEqual(draft.warp.colours?.slice(0, ends));
        expect(weft).toEqual(draft.weft.colours?.slice(0, expand(recipe.draft).drawdown.rows));
        const { endsPerCm } = settOf(draft);
        const { sett } = recipe.cloth;
        expect(sett === undefined).toBe(endsPerCm === undefined);
      }),
      { numRuns: 50 },
    );
  });

  it("of the WIF of a recipe weaves the same cloth in the same colours, of one piece and of all", () => {
    const seasons = soundRecipe(readFileSync(new URL("recipes/seasons.recipe.yaml", examples)), "seasons");
    for (const [asked, shedding] of [
      [seasons, "lift-plan"],
      [recipeOfPiece(seasons, "stars")!, "tie-up"],
    ] as const) {
      const { draft } = soundWif(writeWif(draftOfRecipe(asked, { shedding })), "there.wif");
      const again = soundRecipe(recipeOfDraft(draft), "again");
      expect(drawdownOfRecipe(again).equals(drawdownOfRecipe(asked))).toBe(true);
      expect(coloursOfRecipe(again)).toEqual(coloursOfRecipe(asked));
      expect(again.title).toBe(asked.title);
    }
  });

  it("keeps threading, tie-up and treadling to be read", () => {
    const text = recipeOfDraft(towel);
    const { ground } = soundRecipe(text, "towel").draft;
    expect(ground.threading).toEqual(towel.threading.map(([shaft]) => shaft));
    if (towel.shedding.kind !== "tie-up") throw new Error("the towel has treadles");
    const { tieUp, treadling } = towel.shedding;
    expect(ground.steps.map(({ raise }) => raise)).toEqual(treadling.map(([treadle]) => tieUp[treadle! - 1]));
    const beside = [...text.matchAll(/ # treadle (\d+)$/gm)].map(([, treadle]) => [Number(treadle)]);
    expect(beside).toEqual(treadling);
  });

  it("says what a draft does not", () => {
    const text = recipeOfDraft({ ...towel, rising: false, threading: [[1, 2], ...towel.threading.slice(1)] });
    for (const said of [
      "the count and fibre of the yarns, the reed, width and length",
      "all of its shafts are ground shafts",
      "Its treadles sink the shafts",
      "Ends on several shafts",
      "which of them a pattern harness would draw is not to be seen",
      "which yarn has them it does not say",
    ])
      expect(text).toContain(said);
    const plain = recipeOfDraft({ ...towel, warp: {}, weft: {} });
    expect(plain).not.toContain("which yarn has them");
    expect(plain).not.toContain("sink the shafts");
    expect(soundRecipe(plain, "plain").yarns).toEqual([]);
  });

  it("names yarns by their colours, and gives none a count", () => {
    const { yarns } = soundRecipe(recipeOfDraft(towel), "towel");
    expect(yarns.map(({ name }) => name)).toEqual(["warp", "weft", "rust", "cream"]);
    expect(yarns.every(({ count }) => count === undefined)).toBe(true);
    for (const { colour } of yarns) expect(parseColour(colour!)).toBeDefined();
  });

  it("is refused past the shafts of a recipe", () => {
    const threading = Array.from({ length: 1025 }, (_, end) => [end + 1]);
    const draft = { ...towel, shafts: 1025, threading, warp: {} };
    expect(refusal(() => recipeOfDraft(draft))).toMatchObject({ code: "too-many-shafts" });
  });
});
