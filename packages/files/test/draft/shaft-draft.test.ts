import { drawdownOfDraft, shaftsMoved } from "@drawcord/check";
import { toBooleans, transpose } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  draftOfRecipe,
  shaftDraftOf,
  soundRecipe,
  soundWif,
  withShedding,
  writeWif,
} from "../../src/index.js";
import { shaftDrafts, unitDrafts } from "../arbitraries.js";
import { refusal } from "../refusals.js";
import { wholeRecipe } from "../samples.js";

const ways = fc.constantFrom("lift-plan" as const, "tie-up" as const);

describe("a shaft draft with its shafts moved the other way", () => {
  it("weaves the same cloth, with no two treadles tied alike", () => {
    fc.assert(
      fc.property(shaftDrafts(), ways, (draft, way) => {
        const other = withShedding(draft, way);
        expect(other.shedding.kind).toBe(way);
        expect(drawdownOfDraft(other).equals(drawdownOfDraft(draft))).toBe(true);
        if (draft.shedding.kind === way) expect(other).toBe(draft);
        else if (other.shedding.kind === "tie-up") {
          const ties = other.shedding.tieUp.map((shafts) => shafts.join(" "));
          expect(new Set(ties).size).toBe(ties.length);
        }
      }),
    );
  });
});

describe("a unit draft as a shaft draft", () => {
  it("weaves the same cloth", () => {
    fc.assert(
      fc.property(unitDrafts(), ways, (draft, shedding) =>
        drawdownOfDraft(shaftDraftOf(draft, { shedding })).equals(expand(draft).drawdown),
      ),
    );
  });

  it("takes as many shafts as there are ends that weave differently, and as many treadles as picks that do", () => {
    fc.assert(
      fc.property(unitDrafts(), (draft) => {
        const { drawdown } = expand(draft);
        const different = (rows: boolean[][]) => new Set(rows.map((row) => row.join())).size;
        const plain = shaftDraftOf(draft, { shedding: "tie-up" });
        expect(plain.shafts).toBe(different(toBooleans(transpose(drawdown))));
        expect(plain.shedding.kind === "tie-up" && plain.shedding.tieUp.length).toBe(
          different(toBooleans(drawdown)),
        );
      }),
    );
  });

  it("is refused where it would take more shafts than there are", () => {
    const { draft } = soundRecipe(wholeRecipe, "runner");
    const { shafts } = shaftDraftOf(draft);
    expect(shaftDraftOf(draft, { mostShafts: shafts }).shafts).toBe(shafts);
    expect(refusal(() => shaftDraftOf(draft, { mostShafts: shafts - 1 }))).toMatchObject({
      code: "too-many-shafts",
      sentence: `the cloth takes ${shafts} shafts, for so many of its ends weave differently; ${shafts - 1} are allowed`,
    });
  });
});

describe("a recipe as a draft for other programs", () => {
  const recipe = soundRecipe(
    wholeRecipe
      .replace("weft: { count: 16/1 lea, fibre: linen }", 'weft: { count: 16/1 lea, colour: "#556b2f" }')
      .replace("gold: { count: 20 tex x 2 }", 'gold: { count: 20 tex x 2, colour: "#b8860b" }'),
    "runner",
  );

  it("goes through a file with its cloth, colours, title and sett", () => {
    const { draft } = soundWif(writeWif(draftOfRecipe(recipe, { shedding: "tie-up" })), "runner.wif");
    expect(drawdownOfDraft(draft).equals(expand(recipe.draft).drawdown)).toBe(true);
    expect(draft.title).toBe("Moth and lantern runner");
    expect(draft.notes).toEqual(["Weave the border first."]);
    expect(new Set(draft.warp.colours)).toEqual(new Set(["#f4efe1"]));
    expect(draft.weft.colours?.slice(0, 5)).toEqual(["#556b2f", "#556b2f", "#b8860b", "#556b2f", "#556b2f"]);
    expect(draft.warp.unit).toBe("centimeters");
    expect(1 / draft.warp.spacing!.all!).toBeCloseTo(24 / 2.54, 10);
    expect(draft.weft.spacing).toEqual({ all: 0.1 });
  });

  it("leaves out the colours of a system where one has none", () => {
    expect(draftOfRecipe(soundRecipe(wholeRecipe, "runner")).weft.colours).toBeUndefined();
  });
});

it("a pick moves every shaft of each of its treadles", () => {
  fc.assert(
    fc.property(shaftDrafts(), (draft) => {
      const { shedding } = draft;
      const byHand =
        shedding.kind === "lift-plan"
          ? shedding.liftPlan
          : shedding.treadling.map((treadles) =>
              Array.from({ length: draft.shafts }, (_, i) => i + 1).filter((shaft) =>
                treadles.some((treadle) => shedding.tieUp[treadle - 1]!.includes(shaft)),
              ),
            );
      expect(shaftsMoved(draft)).toEqual(byHand);
    }),
  );
});
