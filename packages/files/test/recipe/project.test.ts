import { draftSize } from "@drawcord/units";
import { interlacing, plan, quantity } from "@drawcord/yarn";
import { expect, it } from "vitest";
import { projectOf } from "../../src/project.js";
import { soundRecipe } from "../../src/recipe/read.js";
import { leastRecipe, wholeRecipe } from "../samples.js";

const whole = soundRecipe(wholeRecipe, "whole");

it("the least recipe makes a project of ends, picks and units alone", () => {
  const { ground, ...rest } = projectOf(soundRecipe(leastRecipe, "least"));
  expect(interlacing(ground!).warp).toEqual({ threads: 2, intersections: 2 });
  expect(rest).toEqual({
    ends: 4,
    picks: 4,
    units: 2,
    lingos: 2,
    wefts: [{ name: "weft", picks: 4 }],
  });
});

it("every section of the whole recipe reaches the project", () => {
  const project = projectOf(whole);
  expect(project).toMatchObject({
    pieces: 4,
    reed: { system: "inch", count: 12 },
    sley: [2],
    sett: quantity(24, "per inch"),
    pickSett: quantity(10, "per cm"),
    drawIn: quantity(6, "%"),
    takeUp: quantity(10, "%"),
    shrinkage: { width: quantity(6, "%"), length: quantity(8, "%") },
    width: quantity(40, "cm"),
    length: quantity(1.2, "m"),
    hems: quantity(6, "cm"),
    fringe: quantity(0, "cm"),
    gaps: quantity(3, "cm"),
    sampling: quantity(30, "cm"),
    waste: quantity(36, "in"),
    warp: {
      yarn: { system: "cotton", count: 20, plies: 2 },
      package: quantity(250, "g"),
      stock: quantity(1.2, "kg"),
    },
  });
});

it("wefts are counted as they are really woven: in this treadling every third of four picks is gold", () => {
  const { picks, wefts } = projectOf(whole);
  expect(picks % 4).toBe(0);
  expect(wefts).toEqual([
    {
      name: "weft",
      fibre: "linen",
      picks: (picks * 3) / 4,
      yarn: { system: "linen-lea", count: 16, plies: 1, resultant: false },
    },
    { name: "gold", picks: picks / 4, yarn: { system: "tex", count: 20, plies: 2, resultant: false } },
  ]);
});

it("the ground is the weave where nothing is drawn, and picks of a pattern weft are no part of it", () => {
  const ground = (steps: string) =>
    projectOf(soundRecipe(leastRecipe.replace(/steps: \[.*\]/, `steps: [${steps}]`), "ground")).ground;
  const tabby = "{ raise: 1, sink: 2 }, { raise: 2, sink: 1 }";
  const pattern = "{ raise: none, sink: none, weft: gold }";
  expect(interlacing(ground(tabby)!)).toEqual(interlacing(ground(`${pattern}, ${tabby}, ${pattern}`)!));
  expect(ground(pattern)).toBeUndefined();
});

it("a treadling that is cut short at the end of the cloth counts pick by pick", () => {
  const text = leastRecipe.replace(
    "{ raise: 2, sink: 1 }",
    "{ raise: 2, sink: 1, weft: gold }, { raise: 1, sink: 2, weft: gold }",
  );
  const recipe = soundRecipe(text, "three steps, four picks");
  const names = Array.from(
    { length: draftSize(recipe.draft).picks },
    (_, pick) => recipe.draft.ground.steps[pick % 3]!.weft ?? "weft",
  );
  for (const { name, picks } of projectOf(recipe).wefts!) {
    expect(picks).toBe(names.filter((one) => one === name).length);
  }
});

it("a warp that is wound already makes the pieces", () => {
  const text = wholeRecipe.replace("project: { pieces: 4,", "project: { warp: 8 yd,");
  const found = plan(projectOf(soundRecipe(text, "wound")));
  expect(found.warpLength).toEqual(quantity(8, "yd"));
  expect(found.pieces.value).toBeGreaterThan(1);
});
