import { allowedFloat, check, findingsOf, projectNumbers } from "@drawcord/check";
import { projectOf, soundRecipe, starterRecipe } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { leastRecipe, wholeRecipe } from "../../files/test/samples.js";
import { checkRecipe } from "../src/check-recipe.js";
import { optionsOf } from "../src/options.js";

describe("a recipe is checked", () => {
  it("with its sett, its limits, its loom and what it accepts", () => {
    const options = optionsOf(soundRecipe(wholeRecipe, "runner.recipe.yaml"));
    // 24 ends an inch: 24 / 2.54 a centimetre, by the definition of the inch.
    expect(options.sett?.endsPerCm).toBeCloseTo(24 / 2.54, 12);
    expect(options.sett?.picksPerCm).toBe(10);
    expect(options.limits).toEqual({
      warpFloat: { threads: 7 },
      weftFloat: { mm: 6 },
      floatOfWeft: { gold: { threads: 11 } },
      openCuts: 2,
      takeUp: 20,
      stretch: { picks: 200 },
      drawnArea: { mm: 120 },
      undrawnArea: { squares: 900 },
      faceShare: 25,
      thinArea: 2,
      unlikeSides: 2.5,
    });
    expect(options.loom).toEqual({ patternShafts: 20, groundShafts: 4, treadles: 6, lingos: 150 });
    expect(options.repeat).toBe("picks");
    expect(options.firstPickFrom).toBe("right");
    expect(options.stated?.map(({ name, claim }) => [name, claim])).toEqual([
      ["ends", 288],
      ["longest-float", 7],
      ["width-in-reed", 12],
      ["warp-yarn", 210],
    ]);
    expect(options.staticShaft).toBe(10);
    expect(options.levels).toEqual({ "idle-shaft": "off" });
    expect(options.waive).toEqual([
      { rule: "open-cut", reason: "the ground shows through on purpose", ends: [7, 7], rows: [3, 5] },
    ]);
  });

  it("with nothing but its draft, where it says no more", () => {
    const recipe = soundRecipe(leastRecipe, "least");
    const rest = { sett: {}, limits: {}, loom: {}, levels: {}, waive: [] };
    expect(optionsOf(recipe)).toMatchObject({ ...rest, project: { facts: { ends: 4, picks: 4 } } });
    const options = { ...rest, project: projectNumbers(projectOf(recipe)) };
    const { causes, places, untried, ...report } = checkRecipe(recipe);
    expect([causes, untried]).toEqual([[], []]);
    expect(report).toEqual(check(recipe.draft, options));
    expect(places).toHaveLength(report.findings.length);
  });

  it("by the rules asked for alone", () => {
    const recipe = soundRecipe(wholeRecipe, "runner");
    const all = checkRecipe(recipe);
    const one = checkRecipe(recipe, { rules: ["stated-number"] });
    expect(one.findings).toEqual(all.findings.filter(({ rule }) => rule === "stated-number"));
    expect(one.findings.length).toBeGreaterThan(0);
    expect(one.rules.ran).toEqual(["stated-number"]);
    expect(new Set(one.rules.skipped.map(({ reason }) => reason))).toEqual(new Set(["it was not asked for"]));
  });
});

it("the starter recipe checks clean", () => {
  const { findings, integrity } = checkRecipe(soundRecipe(starterRecipe(), "starter"));
  expect(findings).toEqual([]);
  expect(integrity.hangsTogether).toBe(true);
});

describe("limits in mm", () => {
  // 24 ends and 30 picks an inch of 25.4 mm: a float along an end passes picks, one along a pick passes ends.
  const recipe = soundRecipe(
    wholeRecipe
      .replace("picks: 10 per cm", "picks: 30 per inch")
      .replace(/^measured:.*\n/m, "")
      .replace("float: { warp: 7, weft: 6 mm, gold: 11 }", "float: { warp: 6 mm, weft: 5 mm, gold: 9 mm }"),
    "mm.recipe.yaml",
  );

  it("are counted at the recipe's own sett, for each system and each weft", () => {
    const options = optionsOf(recipe);
    expect(allowedFloat(options, "warp").threads).toBe(Math.floor((6 / 25.4) * 30));
    expect(allowedFloat(options, "weft").threads).toBe(Math.floor((5 / 25.4) * 24));
    expect(allowedFloat(options, "weft", "gold").threads).toBe(Math.floor((9 / 25.4) * 24));
  });

  it("are what the findings are told in", () => {
    const floats = findingsOf(checkRecipe(recipe), "float-length");
    expect(new Set(floats.map(({ unit }) => unit))).toEqual(new Set(["mm"]));
    for (const { system, weft, limit, measured } of floats) {
      expect(limit).toBe(system === "warp" ? 6 : weft === "gold" ? 9 : 5);
      expect(measured).toBeGreaterThan(limit);
    }
  });
});
