import type { ShaftDraft } from "@drawcord/check";
import { convert, quantity } from "@drawcord/yarn";
import { expect, it } from "vitest";
import { projectOfDraft } from "../../src/project-draft.js";

const draft: ShaftDraft = {
  shafts: 2,
  threading: [[1], [2], [1]],
  shedding: { kind: "lift-plan", liftPlan: [[1], [2], [1], [2]] },
  rising: true,
  warp: {},
  weft: {},
};

it("a bare draft tells its ends and picks, and no sett", () => {
  expect(projectOfDraft(draft)).toEqual({ ends: 3, picks: 4, wefts: [{ name: "weft", picks: 4 }] });
});

it("a treadled draft has a pick a treadling step", () => {
  const shedding: ShaftDraft["shedding"] = { kind: "tie-up", tieUp: [[1], [2]], treadling: [[1], [2]] };
  expect(projectOfDraft({ ...draft, shedding }).picks).toBe(2);
});

it("the setts follow from the spacing, in each of a draft's units", () => {
  const inch = (warp: ShaftDraft["warp"]) =>
    convert(projectOfDraft({ ...draft, warp }).sett!, "per inch").value;
  expect(inch({ unit: "inches", spacing: { all: 0.05 } })).toBeCloseTo(20, 9);
  // 720 decipoints make an inch.
  expect(inch({ spacing: { all: 36 } })).toBeCloseTo(20, 9);
  expect(inch({ unit: "inches", spacing: { each: [0.25, 0.5, 0.75] } })).toBeCloseTo(2, 9);
  expect(projectOfDraft({ ...draft, warp: { spacing: { all: 0 } } }).sett).toBeUndefined();
  const pickSett = { unit: "centimeters", spacing: { all: 0.125 } } as const;
  expect(projectOfDraft({ ...draft, weft: pickSett }).pickSett).toEqual(quantity(8, "per cm"));
});

it("picks are told by their colours, in the order in which they are woven", () => {
  const colours = ["#ffffff", "#000000", "#ffffff", "#ffffff"] as const;
  expect(projectOfDraft({ ...draft, weft: { colours } }).wefts).toEqual([
    { name: "#ffffff", colour: "#ffffff", picks: 3 },
    { name: "#000000", colour: "#000000", picks: 1 },
  ]);
  const alike = projectOfDraft({ ...draft, weft: { colours: ["#000000", "#000000", "#000000", "#000000"] } });
  expect(alike.wefts).toEqual([{ name: "weft", colour: "#000000", picks: 4 }]);
});
