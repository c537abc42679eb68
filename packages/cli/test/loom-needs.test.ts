import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

const cwd = folder();
/** Ten shafts for the figure and one for the borders, on a loom that has ten. */
const napkins = `recipe: 1
ground: { weave: broken twill }
units: { ends: 4, threading: "X 11*2 6-2 (1-10 9-2)*7 1 11*2 X" }
lifts: { picks: 4, rows: ["1-11", "11", "1 3 *2"] }
cloth: { sett: 12 per cm, picks: 12 per cm, reed: 60 per 10 cm }
yarns: { warp: { count: 20/2 Ne }, weft: { count: 10/2 Ne } }
project: { pieces: 1, length: 50 cm }
`;
const sizes =
  "loom: { pattern-shafts: 10, ground-shafts: 4, treadles: 4, lingos: 150, lingo-weight: 20 g }\n";
writeFileSync(join(cwd, "napkins.yaml"), `${napkins}${sizes}`);
writeFileSync(join(cwd, "unknown.yaml"), napkins);
writeFileSync(join(cwd, "cords.yaml"), `${napkins.replace(/"X.*X"/, "1-30")}${sizes}`);

const lines = async (file: string) => (await run(["plan", file], { cwd })).stdout.split("\n");

describe("what the loom must have, in drawcord plan", () => {
  it("is counted against what the recipe says it has", async () => {
    const printed = await lines("napkins.yaml");
    expect(printed).toContain("lingos    138 of 150");
    expect(printed).toContain("pattern   11 pattern shafts (the loom has only 10), 11 cords, 2 units static");
    expect(printed).toContain("ground    4 ground shafts of 4, heddles 138 on each of shafts 1-4");
    expect(printed).toContain("treadles  4 of 4, 8 ties; 4 with damask pulleys");
    expect(printed).toContain("lifts     4 rows, 13 pulls, 24 handle changes, 16 picks");
    expect(printed).toContain("heaviest  row 1, 136 units, 2.72 kg of lingos");
    expect(printed.join(" ")).toContain("the maker of your loom says it may carry");
  });

  it("is told alone where nothing is known of the loom", async () => {
    const printed = await lines("unknown.yaml");
    expect(printed).toContain("lingos    138");
    expect(printed).toContain("heaviest  row 1, 136 units");
  });

  it("is a cord a unit in single-unit draw", async () => {
    const printed = await lines("cords.yaml");
    expect(printed).toContain("pattern   30 cords (the loom has only 10), one a unit");
    expect(printed).toContain("leashes   one on each cord");
  });

  it("is data for a script", async () => {
    const { stdout } = await run(["plan", "napkins.yaml", "--format", "json"], { cwd });
    const { loom } = JSON.parse(stdout) as { loom: { needs: object; lifts: object; has: object } };
    expect(loom.needs).toMatchObject({
      units: 138,
      lingos: 138,
      patternShafts: 11,
      treadles: 4,
      tiesWithPulleys: 4,
    });
    expect(loom.lifts).toEqual({
      rows: 4,
      picks: 16,
      pulls: 13,
      changes: 24,
      heaviest: { row: 1, units: 136, grams: 2720 },
    });
    expect(loom.has).toMatchObject({ patternShafts: 10 });
  });

  it("is told of every piece on the warp, and of all together, the heaviest row with its piece", async () => {
    const pair = napkins
      .replace("lifts: {", "pieces:\n  - { name: edges, count: 2, lifts: {")
      .replace(
        "] }\ncloth",
        "] } }\n  - { name: points, ground: { steps: [ { raise: 1, sink: 2 }, { raise: 2, sink: 1 }, { raise: 1 3 }, { raise: 2 4 }, { raise: 3 4, sink: 1 2 } ] }, lifts: { picks: 2, rows: [1-10, none] } }\ncloth",
      )
      .replace('"1-11", "11"', '"1 11", "11"')
      .replace("pieces: 1, length: 50 cm", "hems: 2 cm");
    writeFileSync(join(cwd, "pair.yaml"), `${pair}${sizes}`);
    const printed = await lines("pair.yaml");
    const at = printed.findIndex((line) => line.startsWith("lifts"));
    expect(printed.slice(at, at + 4)).toEqual([
      "lifts     a piece of edges: 4 rows, 4 pulls, 6 handle changes, 16 picks",
      "          a piece of points: 2 rows, 10 pulls, 20 handle changes, 4 picks",
      "          all 3 pieces: 10 rows, 18 pulls, 32 handle changes, 36 picks",
      "heaviest  row 1 of points, 132 units, 2.64 kg of lingos",
    ]);
    expect(printed).toContain("pattern   11 pattern shafts (the loom has only 10), 11 cords, 2 units static");
    const { stdout } = await run(["plan", "pair.yaml", "--format", "json"], { cwd });
    const { lifts, needs } = (JSON.parse(stdout) as { loom: { lifts: object; needs: object } }).loom;
    const heaviest = { row: 1, units: 132, grams: 2640 };
    // Nine steps in all, and never more than the five treadles of the second piece at a time.
    expect(needs).toMatchObject({ picks: 36, treadles: 5, ties: 12 });
    expect(lifts).toMatchObject({
      rows: 10,
      picks: 36,
      pulls: 18,
      changes: 32,
      heaviest: { piece: "points", ...heaviest },
      pieces: [
        {
          name: "edges",
          count: 2,
          rows: 4,
          pulls: 4,
          changes: 6,
          picks: 16,
          heaviest: { row: 3, units: 23 },
        },
        { name: "points", count: 1, rows: 2, pulls: 10, changes: 20, picks: 4, heaviest },
      ],
    });
  });

  it("is a finding of drawcord check where the loom has less", async () => {
    const { status, stdout } = await run(["check", "napkins.yaml", "--format", "json"], { cwd });
    const { findings } = JSON.parse(stdout) as { findings: { rule: string; message: string }[] };
    expect(status).toBe(1);
    expect(findings.filter(({ rule }) => rule === "loom-capacity").map(({ message }) => message)).toEqual([
      "the plan needs 11 pattern shafts, and the loom has 10",
    ]);
  });
});
