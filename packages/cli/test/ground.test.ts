import {
  drawdownOf,
  groundPlanOf,
  groundsOn,
  nameOf,
  propertiesOf,
  tieUpOf,
  twillsOn,
  weaveOf,
} from "@drawcord/ground";
import { describe, expect, it } from "vitest";
import { run } from "./run.js";

/** What the command prints, as a script reads it. */
async function json(...argv: string[]): Promise<Record<string, unknown>> {
  const { stdout, stderr } = await run(["ground", ...argv, "--format", "json"]);
  expect(stderr).toBe("");
  return JSON.parse(stdout) as Record<string, unknown>;
}

const plain = (value: unknown) => JSON.parse(JSON.stringify(value)) as unknown;

describe("drawcord ground WEAVE", () => {
  it("prints the weave, its plan with its cut, its rivals and its ties", async () => {
    const { status, stdout } = await run(["ground", "satin 8 step 3", "--action", "pulleys"]);
    expect(status).toBe(0);
    for (const line of [
      "  raise           2 5 8 3 6 1 4 7",
      "  sink            7 4 1 6 3 8 5 2",
      "  side edges      clean, 16 of 16 pairs cut",
      "  top and bottom  clean, 16 of 16 pairs cut",
      "  0 open at the sides, 4 at top and bottom, opposite directions: raise 1 4 7 2 5 8 3 6, sink 8 5 2 7 4 1 6 3",
      "Ties, pulleys: 8 ties",
      "  pairs      1-8 2-7 3-6 4-5",
      "  treadle 1  sink 7",
      "  feet       left 1 3 5 7, right 2 4 6 8; hang the treadles 1 3 5 7 8 6 4 2",
    ]) {
      expect(stdout.split("\n")).toContain(line);
    }
  });

  it("draws two repeats, last pick on top, and the four borders of figure and ground", async () => {
    const { stdout } = await run(["ground", "broken twill"]);
    const [weave, , , meeting] = stdout
      .split("\n\n")
      .map((part) => part.split("\n").map((line) => line.trim()));
    expect(weave!.slice(1, 5)).toEqual([
      "..#...#...#...#.",
      "...#...#...#...#",
      ".#...#...#...#..",
      "#...#...#...#...",
    ]);
    // Raise 1 3 2 4 with sink 4 2 3 1, worked out by hand.
    expect(meeting!.slice(1)).toEqual([
      ".###...#",
      "##.#.#..",
      "#.##..#.",
      "###.#...",
      "...#.###",
      ".#..##.#",
      "..#.#.##",
      "#...###.",
    ]);
  });

  it("measures floats by system and face, and intersections thread by thread", async () => {
    const { stdout } = await run(["ground", "satin 8 step 3"]);
    for (const line of [
      "  warp floats    on the face 1; on the back 7",
      "  weft floats    on the face 7; on the back 1",
      "  intersections  2 on an end, 2 on a pick",
    ]) {
      expect(stdout.split("\n")).toContain(line);
    }
    // 1 up, 3 down, 2 up, 2 down: ends and picks alike, the two floats of a face 1.5 and 2.5 on average.
    const mixed = (await run(["ground", "twill 1/3/2/2"])).stdout.split("\n");
    expect(mixed).toContain("  warp floats    on the face up to 2, mean 1.5; on the back up to 3, mean 2.5");
    expect(mixed).toContain("  intersections  4 on an end, 4 on a pick");
    const pointed = (await run(["ground", "pointed twill 1/3"])).stdout.split("\n");
    expect(pointed).toContain("  intersections  2 on an end, 2 to 4 on a pick");
  });

  it("takes the weave in several words", async () => {
    const one = await run(["ground", "herringbone twill 2/2 after 8"]);
    const several = await run(["ground", "herringbone", "twill", "2/2", "after", "8"]);
    expect(several.stdout).toBe(one.stdout);
  });

  it("says what a weave is besides, and offers an irregular pair where no regular one is clean", async () => {
    expect((await run(["ground", "satin 8 plus right 1, above 1"])).stdout).toContain(
      "that is        twill 2/3/1/2 step 3",
    );
    const { stdout } = await run(["ground", "satin 7"]);
    expect(stdout).toContain("An irregular pair is clean all round");
    expect(stdout).toContain("0 touching binding points in a repeat of the ground");
    const listed = (await run(["ground", "--ends", "5"])).stdout.replaceAll("\n", " ");
    expect(listed).toContain(
      "The irregular pair, pick by pick, raises 1 3 4 2 5 and sinks 5 2 3 4 1; a recipe gives it in ground.steps.",
    );
  });

  it("gives a script what the library says", async () => {
    const found = await json(
      "satin 8 step 3",
      "--unit-ends",
      "6",
      "--picks-per-row",
      "4",
      "--action",
      "countermarch",
      "--setts",
      "20x10",
    );
    const drawdown = drawdownOf(weaveOf("satin 8 step 3"));
    const plan = groundPlanOf("satin 8 step 3", { unitEnds: 6, picksPerRow: 4 });
    expect(found).toEqual(
      plain({
        weave: "satin 8 step 3",
        drawdown: [
          "#.......",
          "...#....",
          "......#.",
          ".#......",
          "....#...",
          ".......#",
          "..#.....",
          ".....#..",
        ],
        name: nameOf(drawdown),
        properties: propertiesOf(drawdown, { ends: 20, picks: 10 }),
        plan,
        unitEnds: 6,
        picksPerRow: 4,
        ties: tieUpOf(plan.ground, "countermarch"),
      }),
    );
  });

  it("says why ties are not possible", async () => {
    const { status, stdout } = await run(["ground", "satin 5", "--action", "pulleys"]);
    expect(status).toBe(0);
    expect(stdout).toContain("Ties, pulleys: not possible\n  shaft 1 rises where shaft 2 sinks");
    expect((await run(["ground", "plain", "--action", "list"])).stdout).toContain("bar 1  raise 1, sink 2");
  });

  it("does not draw what does not fit a page", async () => {
    const { stdout } = await run(["ground", "satin 40 step 7"]);
    expect(stdout).not.toContain("drawn corner to corner");
    expect(stdout).not.toContain("\n\n\n");
    const wide = await run(["ground", "herringbone twill 2/2 after 100"]);
    expect(wide.stdout).toContain("(72 of 200 ends)");
    expect(
      Math.max(
        ...wide.stdout
          .split("\n\n")[0]!
          .split("\n")
          .map((line) => line.length),
      ),
    ).toBe(74);
  });
});

describe("drawcord ground --ends N", () => {
  it("lists the grounds that 8 ends allow, best first", async () => {
    const { status, stdout } = await run(["ground", "--ends", "8"]);
    expect(status).toBe(0);
    expect(stdout.split("\n").slice(0, 4)).toEqual([
      "Grounds on 8 ends, best first",
      "  weave                        side edges cut  top and bottom  touching binding points  longest float",
      "  satin 8 step 3               16 of 16        16 of 16        0                        7",
      "  broken twill 1/7 by fourths  16 of 16        16 of 16        4                        7",
    ]);
    expect(stdout).toContain("There are 30 twills on 8 ends: 1/7, 2/6, 3/5");
  });

  it("gives a script the same", async () => {
    expect(await json("--ends", "8", "--unit-ends", "4")).toEqual(
      plain({
        ends: 8,
        unitEnds: 4,
        grounds: groundsOn(8, { unitEnds: 4 }),
        twills: twillsOn(8).map((ratio) => ratio.join("/")),
      }),
    );
  });

  it("counts the twills where they are too many to name, and is silent where they are too many to count", async () => {
    expect((await run(["ground", "--ends", "12"])).stdout).toContain(
      "There are 335 twills on 12 ends; --format json lists them.",
    );
    expect((await run(["ground", "--ends", "2"])).stdout).toContain("The one twill on 2 ends is 1/1.");
    expect((await run(["ground", "--ends", "20"])).stdout).not.toContain("twills on");
  });
});

describe("drawcord ground refuses", () => {
  it.each([
    [[], 'drawcord ground needs a weave, such as "satin 8 step 3", or --ends N'],
    [["satin 6 step 2"], 'no step makes a satin on 6 ends; "satin 6" is the irregular one'],
    [
      ["satin 9 step 3"],
      "step 3 on 9 ends leaves ends unbound, for both are divisible by 3; the steps of a satin on 9 ends are 2, 4, 5, 7",
    ],
    [["satin 1"], 'no step makes a satin on 1 end; the least is "satin 5"'],
    [["--ends", "1"], "the number of ends of a ground must be a whole number of at least 2, not 1"],
    [
      ["twill 1/3", "--ends", "5"],
      "twill 1/3 is woven on 4 ends, not on 5; leave the ends out, or give a weave that adds up to 5",
    ],
    [["twill 2/1/1"], "the ratio 2/1/1 has 3 numbers; it takes pairs of up and down, as in 2/2 or 2/1/1/2"],
    [
      ["satin 200", "--shafts", "8"],
      "satin 200 needs 200 ground shafts and the loom has 8; it could weave satin 8 step 3, broken twill 1/7 or twill 1/7",
    ],
    [["plian"], 'column 1: "plian" is no weave known here; did you mean "plain"?'],
    [["broken twill by quarters"], 'column 17: found "quarters" where "halves" or "fourths" was expected'],
    [["plain", "--ends", "two"], 'drawcord ground: --ends takes a whole number of at least 1, not "two"'],
    [
      ["plain", "--unit-ends", "0"],
      'drawcord ground: --unit-ends takes a whole number of at least 1, not "0"',
    ],
    [
      ["plain", "--setts", "20"],
      'drawcord ground: --setts takes ends and picks a centimetre, such as 20x16, not "20"',
    ],
    [
      ["plain", "--action", "pulley"],
      'drawcord ground: --action takes one of countermarch, pulleys, jack, sinking, list, not "pulley"; did you mean "pulleys"?',
    ],
  ])("%j", async (argv, sentence) => {
    expect(await run(["ground", ...argv])).toEqual({ status: 2, stdout: "", stderr: `${sentence}\n` });
  });
});
