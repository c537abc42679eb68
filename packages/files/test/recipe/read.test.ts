import { groundFromWeave } from "@drawcord/ground";
import { parseThreading } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { placesOf, soundRecipe } from "../../src/index.js";
import { leastRecipe, wholeRecipe } from "../samples.js";

describe("a recipe with every section", () => {
  const recipe = soundRecipe(wholeRecipe, "runner.recipe.yaml");

  it("is titled and has its file's name", () => {
    expect(recipe.title).toBe("Moth and lantern runner");
    expect(recipe.file).toBe("runner.recipe.yaml");
    expect(recipe.notes).toBe("Weave the border first.\n");
  });

  it("is a single piece by the recipe's own title, woven as often as the project says", () => {
    const { draft, limits } = recipe;
    const [piece] = recipe.pieces;
    expect(recipe.pieces).toHaveLength(1);
    expect(piece).toMatchObject({
      name: "Moth and lantern runner",
      count: 4,
      draft,
      limits,
      path: [],
      over: 0,
    });
    expect(piece!.wefts).toEqual(["weft", "weft", "gold", "weft"]);
    expect(recipe.warp).toEqual(["warp"]);
    expect(soundRecipe(leastRecipe, "least").pieces).toMatchObject([{ name: "", count: 1 }]);
  });

  it("has its ground step by step, and selvedges on ground shafts of their own", () => {
    expect(recipe.draft.ground.steps).toEqual([
      { raise: [4], sink: [1] },
      { raise: [2], sink: [3] },
      { raise: [3], sink: [2], weft: "gold" },
      { raise: [1], sink: [4] },
    ]);
    expect(recipe.draft.selvedge).toEqual({ left: [1, 2, 1, 2], right: [3, 4, 3, 4] });
  });

  it("has its units threaded", () => {
    expect(recipe.draft.threading).toEqual(parseThreading("X*2 9 (1-8 7-2)*4 1 9 X*2"));
    expect(recipe.draft.unitEnds).toEqual(recipe.draft.threading.map(() => 4));
    expect(recipe.staticShaft).toBe(10);
  });

  it("has its blocks put together in weaving order, the last line of a picture woven first", () => {
    const moth = [
      [1, 8],
      [3, 4, 7, 8],
    ];
    expect(recipe.draft.lifts).toEqual([[9], ...moth, ...moth, ...moth, [9]]);
    expect(recipe.draft.picksPerRow).toEqual(recipe.draft.lifts.map(() => 4));
  });

  it("reads counts and reed, and keeps how they are written and where", () => {
    const line = wholeRecipe.split("\n").findIndex((text) => text.includes("20/2 Ne"));
    expect(recipe.yarns[0]).toEqual({
      name: "warp",
      count: {
        text: "20/2 Ne",
        value: { system: "cotton", count: 20, plies: 2, resultant: false },
        line: line + 1,
        column: 18,
      },
      fibre: "cotton",
      colour: "#f4efe1",
      package: { value: 250, unit: "g", kind: "mass" },
      stock: { value: 1.2, unit: "kg", kind: "mass" },
    });
    expect(recipe.yarns.map(({ name }) => name)).toEqual(["warp", "weft", "gold"]);
    expect(recipe.cloth.reed?.text).toBe("12 per inch");
    expect(recipe.cloth.sley?.text).toBe("2");
    expect(recipe.cloth.reed?.value).toEqual({ system: "inch", count: 12 });
    expect(recipe.cloth.sley?.value).toEqual([2]);
  });

  it("has its quantities with their units", () => {
    expect(recipe.cloth.sett).toEqual({ value: 24, unit: "per inch", kind: "sett" });
    expect(recipe.cloth.shrinkage?.length).toEqual({ value: 8, unit: "%", kind: "share" });
    expect(recipe.project.waste).toEqual({ value: 36, unit: "in", kind: "length" });
    expect(recipe.loom.lingoWeight).toEqual({ value: 30, unit: "g", kind: "mass" });
    expect(recipe.loom.action).toBe("countermarch");
    expect(recipe.stated.map(({ name, claim }) => [name, claim.value, claim.unit])).toEqual([
      ["ends", 288, ""],
      ["longest-float", 7, ""],
      ["width-in-reed", 12, "in"],
      ["warp-yarn", 210, "g"],
    ]);
  });

  it("points at the place of any value in the text", () => {
    const { at: place } = placesOf(recipe);
    const at = (path: readonly (string | number)[]) => {
      const found = place(path);
      return found && wholeRecipe.split("\n")[found.line - 1]?.slice(found.column - 1);
    };
    expect(at(["title"])).toMatch(/^Moth and/);
    expect(at(["units", "threading"])).toMatch(/^X\*2 9/);
    expect(at(["ground", "steps", 2, "sink"])).toMatch(/^2, weft: gold/);
    expect(at(["units"])).toBe("units:");
    expect(at(["lifts", "order", 1])).toMatch(/^moth\*3/);
    expect(place(["units", "thread"])).toBeUndefined();
    expect(place(["lifts", "order", 7])).toBeUndefined();
    expect(place([])).toBeDefined();
  });
});

describe("a recipe", () => {
  it("takes what is left out as not known", () => {
    const recipe = soundRecipe(leastRecipe, "least");
    expect(recipe.title).toBeUndefined();
    expect(recipe.yarns).toEqual([]);
    expect(recipe.cloth).toEqual({});
  });

  it.each([
    ["a byte order mark", `\uFEFF${wholeRecipe}`],
    ["CR LF at the ends of its lines", wholeRecipe.replaceAll("\n", "\r\n")],
    ["CR at the ends of its lines", wholeRecipe.replaceAll("\n", "\r")],
    ["bytes for text", new TextEncoder().encode(wholeRecipe)],
    ["bytes with a byte order mark", new TextEncoder().encode(`\uFEFF${wholeRecipe}`)],
    ["tabs where YAML allows them", wholeRecipe.replace("title: ", "title:\t")],
  ])("is the same with %s", (_what, source) => {
    const read = soundRecipe(source, "runner");
    const plain = soundRecipe(wholeRecipe, "runner");
    expect(read.draft).toEqual(plain.draft);
    expect(read.stated).toEqual(plain.stated);
    expect(read.title).toBe(plain.title);
  });

  it("may give its rows a line each in one text, or as a list, or as a picture", () => {
    const withLifts = (lifts: string) =>
      soundRecipe(leastRecipe.replace(/lifts:.*\n/, `lifts:\n  picks: 2\n  ${lifts}\n`), "rows").draft.lifts;
    const rows = [[1, 2], [1, 2], [], [2]];
    expect(withLifts("rows: |\n    1 2 *2\n\n    none\n    2")).toEqual(rows);
    expect(withLifts("rows:\n    - 1-2*2\n    - none\n    - 2")).toEqual(rows);
    expect(withLifts("picture: |\n    .#\n    ..\n    ##\n    ##")).toEqual(rows);
  });

  it("may give each unit its ends and each row its picks", () => {
    const counted = leastRecipe.replace("{ ends: 2,", "{ ends: 4 3,").replace("picks: 2,", "picks: [8, 2],");
    const { draft } = soundRecipe(counted, "counted");
    expect(draft.unitEnds).toEqual([4, 3]);
    expect(draft.picksPerRow).toEqual([8, 2]);
  });

  it("may name a value once and use it again", () => {
    const named = leastRecipe.replace("rows: [1, 2]", "rows: [&both 1 2, none, *both]");
    expect(soundRecipe(named, "named").draft.lifts).toEqual([[1, 2], [], [1, 2]]);
  });

  it("may change its blocks by the words of the trade, and mirrors on all shafts where none are named", () => {
    const lifts = `lifts:
  picks: 2
  blocks: { moth: { rows: [1, 1 2] }, line: { rows: [none] } }
  order:
    - moth upside-down
    - line *2
    - moth mirrored
    - moth exchanged on 2
    - moth *2 every-other turned on 1-2
`;
    const read = soundRecipe(leastRecipe.replace(/lifts:.*\n/, lifts), "blocks").draft.lifts;
    expect(read.map((row) => row.join(" ") || "none")).toEqual([
      ...["1 2", "1"],
      ...["none", "none"],
      ...["2", "1 2"],
      ...["1 2", "1"],
      ...["1", "1 2", "1 2", "2"],
    ]);
  });

  it("may name its ground, which is then fitted to its units and rows", () => {
    const named = leastRecipe
      .replace(/ground:.*\n/, "ground: { weave: broken twill, ends: 4 }\n")
      .replace("{ ends: 2,", "{ ends: 4 8,")
      .replace("picks: 2,", "picks: 4,");
    const recipe = soundRecipe(named, "named");
    expect(recipe.weave).toBe("broken twill");
    expect(recipe.draft.ground).toEqual(
      groundFromWeave("broken twill", { ends: 4, unitEnds: 4, picksPerRow: 4 }),
    );
  });
});
