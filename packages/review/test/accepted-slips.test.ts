import { soundRecipe } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { checkRecipe } from "../src/index.js";

/** A point threading with unit 12 on shaft 5 for 6, and what the recipe says of slips. */
const recipe = (more: string) => `recipe: 1
title: a point with a slip
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X 1-9 8 7 5 5-1 X }
lifts:
  picks: 4
  rows: [ none, 1, 1-2, 1-3, 2-4, 3-5, 4-6, 5-7, 6-8, 7-9, 8-9, 9, none ]
${more}`;
const slipsIn = (more: string) =>
  checkRecipe(soundRecipe(recipe(more), "point.recipe.yaml")).causes.filter(({ message }) =>
    message.startsWith("unit "),
  );

describe("slips that no finding tells of", () => {
  it("are told by their cause alone", () => {
    expect(slipsIn("")).toMatchObject([
      { message: expect.stringContaining("unit 13 hangs on shaft 5"), severity: "warning", sure: true },
    ]);
  });

  it("have the level that the recipe gives them", () => {
    expect(slipsIn("limits: { levels: { slip: error } }\n")).toMatchObject([{ severity: "error" }]);
    expect(slipsIn("limits: { levels: { slip: off } }\n")).toEqual([]);
  });

  it("are accepted where the recipe says why, within the places that it names", () => {
    const waive = (units: string) =>
      `waive: [ { rule: slip, units: ${units}, reason: the moth looks back } ]\n`;
    expect(slipsIn(waive("13"))).toMatchObject([{ waived: "the moth looks back", sure: false }]);
    expect(slipsIn(waive("1-5"))).toMatchObject([{ sure: true }]);
    expect(slipsIn(waive("1-5"))[0]!.waived).toBeUndefined();
  });

  it("are said to have a waiver too many where it accepts none, at its own place in the list", () => {
    const told = (waive: string) =>
      checkRecipe(soundRecipe(recipe(waive), "point.recipe.yaml")).findings.filter(
        ({ rule }) => rule === "unused-waiver",
      );
    const slip = (units: string) => `  - { rule: slip, units: ${units}, reason: the moth looks back }\n`;
    const other = "  - { rule: loose-thread, rows: 2, reason: none }\n";
    expect(told(`waive:\n${slip("13")}`)).toEqual([]);
    expect(told(`waive:\n${slip("1-5")}${slip("13")}${other}`)).toMatchObject([
      { waives: "loose-thread", waiver: 3 },
      {
        waives: "slip",
        waiver: 1,
        units: [1, 5],
        severity: "note",
        message: "the waiver of slip matches no finding: units 1-5",
      },
    ]);
    expect(told(`limits: { levels: { slip: off } }\nwaive:\n${slip("1-5")}`)).toEqual([]);
    const error = `limits: { levels: { unused-waiver: error } }\nwaive:\n${slip("1-5")}`;
    expect(checkRecipe(soundRecipe(recipe(error), "point.recipe.yaml"))).toMatchObject({
      ok: false,
      summary: { error: 1 },
    });
  });

  it("are called slips and nothing else", () => {
    expect(() => slipsIn("limits: { levels: { slips: off } }\n")).toThrow('did you mean "slip"?');
  });
});
