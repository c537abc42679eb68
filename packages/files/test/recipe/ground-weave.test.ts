import { groundFromWeave, withSelvedge } from "@drawcord/ground";
import { describe, expect, it } from "vitest";
import { soundRecipe } from "../../src/index.js";

const recipe = (ground: string, units = 4, picks = 4) => `recipe: 1
ground: ${ground}
units: { ends: ${units}, threading: X 1-3 2-1 X }
lifts: { picks: ${picks}, rows: [1, 2, 3, 2, 1] }
`;

describe("ground.weave", () => {
  it.each([
    "plain",
    "hopsack 2/2 by 3/3",
    "warp rib 2/2",
    "weft rib 2/1",
    "twill 1/3",
    "twill 2/1/1/2 z",
    "twill 3/1/1/3 step 3 s",
    "pointed twill 1/3 along picks",
    "undulating twill 1/3 moves 1 1 0",
    "herringbone twill 1/3 after 8",
    "broken twill",
    "broken twill 1/7 by fourths",
    "broken twill 2/2 take 2 skip 1",
    "satin 8 step 3",
    "satin 6",
    "satin 5 order 1 3 5 2 4 s warp-faced",
    "satin 8 plus right 1, above 1",
    "crepe 8 step 3 plus left 2 below 1",
    "corkscrew 7",
    "plain with pattern weft",
  ])("takes %s, planned for the recipe's units and rows", (weave) => {
    const read = soundRecipe(recipe(`{ weave: "${weave}" }`, 6, 3), "cloth.yaml");
    expect(read.draft.ground).toEqual(groundFromWeave(weave, { unitEnds: 6, picksPerRow: 3 }));
    expect(read.weave).toBe(weave);
  });

  it.each([
    ["", 12],
    ["cloth: { sett: 10 per cm }\n", 6],
    ["cloth: { sett: 10 per cm }\nlimits: { float: 9 }\n", 9],
    ["cloth: { sett: 10 per cm }\nlimits: { float: { pattern: 4 mm, warp: 3 } }\n", 4],
  ])("ties a pattern weft so that it floats no farther than the recipe allows: %j", (more, allowed) => {
    const { draft } = soundRecipe(
      `${recipe('{ weave: "plain with pattern weft" }', 8, 8)}${more}`,
      "cloth.yaml",
    );
    expect(draft.ground).toEqual(
      groundFromWeave("plain with pattern weft", { unitEnds: 8, picksPerRow: 8, longestFloat: allowed }),
    );
  });

  it("is begun as all rows but a few want it, and by what rows of many sizes have in common", () => {
    const begun = (picks: readonly number[]) =>
      soundRecipe(
        `recipe: 1\nground: { weave: satin 8 }\nunits: { ends: 8, threading: X 1 X }\nlifts: { picks: [${picks.join(", ")}], rows: [${picks.map(() => 1).join(", ")}] }\n`,
        "weave",
      ).draft.ground;
    const usual = groundFromWeave("satin 8", { unitEnds: 8, picksPerRow: 8 });
    expect(begun([8, 8, 8, 9, 8, 8, 8])).toEqual(usual);
    expect(begun([8, 4, 8, 4, 12, 4, 8])).toEqual(
      groundFromWeave("satin 8", { unitEnds: 8, picksPerRow: 4 }),
    );
    expect(usual).not.toEqual(groundFromWeave("satin 8", { unitEnds: 8, picksPerRow: 1 }));
  });

  it("is counted on the ends that the recipe states", () => {
    expect(soundRecipe(recipe("{ weave: plain, ends: 4 }"), "cloth.yaml").draft.ground.shafts).toBe(4);
    expect(soundRecipe(recipe("{ weave: satin, ends: 8 }"), "cloth.yaml").draft.ground).toEqual(
      groundFromWeave("satin 8", { unitEnds: 4, picksPerRow: 4 }),
    );
    expect(() => soundRecipe(recipe("{ weave: twill 1/4, ends: 4 }"), "cloth.yaml")).toThrow(
      "twill 1/4 is woven on 5 ends, not on 4; leave the ends out, or give a weave that adds up to 4",
    );
  });

  it("may have selvedges in a weave of their own, on shafts behind the ground's", () => {
    const { draft } = soundRecipe(
      recipe("{ weave: broken twill, selvedge: { weave: plain, ends: 6 } }"),
      "cloth.yaml",
    );
    const edged = withSelvedge(groundFromWeave("broken twill", { unitEnds: 4, picksPerRow: 4 }), { ends: 6 });
    expect(draft.ground).toEqual(edged.ground);
    expect(draft.ground.shafts).toBe(6);
    expect(draft.selvedge).toEqual({ left: [5, 6, 5, 6, 5, 6], right: [6, 5, 6, 5, 6, 5] });
  });

  it("takes selvedges in a weave or end by end, not both", () => {
    const both = recipe("{ weave: plain, selvedge: { weave: plain, left: 1 2 } }");
    expect(() => soundRecipe(both, "cloth.yaml")).toThrow(
      "ground.selvedge.left names shafts end by end; a selvedge in a weave brings its own",
    );
    const counted = recipe("{ weave: plain, selvedge: { left: 1 2, ends: 2 } }");
    expect(() => soundRecipe(counted, "cloth.yaml")).toThrow(/ground\.selvedge/);
  });
});
