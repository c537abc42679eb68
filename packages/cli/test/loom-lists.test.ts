import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseThreading } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

const cwd = folder();
writeFileSync(
  join(cwd, "lantern.yaml"),
  `recipe: 1
title: Lantern
ground: { weave: broken twill }
units: { ends: 4, threading: X 1-6 5-1 3+9 X }
lifts: { picks: 4, rows: [1 3-5 9, 1 3-5 9, none, 2 *2] }
loom: { lingo-weight: 30 g }
`,
);
const call = async (...argv: readonly string[]) => {
  const { status, stdout, stderr } = await run(argv, { cwd });
  expect([status, stderr]).toEqual([0, ""]);
  return stdout;
};

describe("drawcord lifts", () => {
  it("prints row 1 lowest, rows alike on one line, handles in groups, what to pull, units and weight", async () => {
    const lines = (await call("lifts", "lantern.yaml")).split("\n");
    expect(lines.slice(3, 7).map((line) => line.split(/ {2,}/))).toEqual([
      ["", "row", "picks", "handles", "pull, let go", "units", "weight"],
      ["[ ]", "4-5", "13-20", "2", "+ 2", "2", "60 g"],
      ["[ ]", "3", "9-12", "none", "- 1 3-5 9", "0", "0 g"],
      ["[ ]", "1-2", "1-8", "1", "3-5", "9", "+ 1 3-5 9", "9", "270 g"],
    ]);
    expect(lines).toContain("heaviest   row 1: 9 units, 270 g");
    expect(lines).toContain("handles    6 pulls in 5 rows, 20 picks; 11 changes");
  });

  it("gives the same to a script and to a table, row 1 first", async () => {
    const found = JSON.parse(await call("lifts", "lantern.yaml", "--format", "json")) as {
      rows: object[];
      caution: string;
    };
    expect(found.rows).toHaveLength(5);
    expect(found.rows[0]).toEqual({
      row: 1,
      picks: [1, 4],
      drawn: [1, 3, 4, 5, 9],
      pulled: [1, 3, 4, 5, 9],
      released: [],
      units: 9,
      grams: 270,
    });
    expect(found.caution).toContain("the maker of your loom");
    const table = (await call("lifts", "lantern.yaml", "--format", "csv", "--lingo", "10")).split("\r\n");
    expect(table.slice(0, 4)).toEqual([
      "row,first pick,last pick,drawn,pulled,released,units,grams,caution,block",
      expect.stringMatching(/^1,1,4,1 3-5 9,1 3-5 9,,9,90,.*the maker of your loom/),
      "2,5,8,1 3-5 9,,,9,90,,",
      "3,9,12,,,1 3-5 9,0,0,,",
    ]);
  });

  it("says what another order of the handles would save, and cautions", async () => {
    const text = await call("lifts", "lantern.yaml");
    expect(text).toMatch(/order {6}hung in this order: [\d ]+: 3 hand movements instead of 7/);
    expect(text).toContain("The weights count lingos alone");
  });
});

writeFileSync(
  join(cwd, "pair.yaml"),
  `recipe: 1
title: Pair
ground: { weave: broken twill }
units: { ends: 4, threading: X 9 1-4 3-1 9 X }
cloth: { picks: 10 per cm, take-up: 10 % }
project: { gaps: 2 cm, fringe: 0 cm }
lifts: { picks: 4, blocks: { hem: { rows: [none] }, moth: { rows: [1, 2, 3] }, edge: { rows: [9] } } }
pieces:
  - { name: moths, count: 2, lifts: { order: [hem *2, moth *2 with edge, hem] } }
  - { name: plain, weft: gold, lifts: { order: [hem *5, moth] } }
yarns: { gold: { count: 20/2 Ne } }
`,
);

describe("drawcord lifts of several pieces", () => {
  it("lists each in weaving order, or the one that is named, with the block at the side of its rows", async () => {
    const all = await call("lifts", "pair.yaml");
    expect(all.split("\n").filter((line) => / pieces?$/.test(line))).toEqual([
      "moths, 2 pieces",
      "plain, 1 piece",
    ]);
    const moths = await call("lifts", "pair.yaml", "--piece", "moths");
    const blocks = moths.split("\n").filter((line) => line.startsWith("[ ]"));
    expect(blocks.map((line) => line.split(/ {2,}/).at(-1))).toEqual([
      "hem",
      "moth 2 with edge",
      "moth 2 with edge",
      "moth 2 with edge",
      "moth 1 with edge",
      "moth 1 with edge",
      "moth 1 with edge",
      "hem 1-2",
    ]);
    const rows = JSON.parse(await call("lifts", "pair.yaml", "--format", "json")) as {
      pieces: { piece: string; count: number; rows: { block: string }[] }[];
    };
    expect(rows.pieces.map(({ piece, count, rows }) => [piece, count, rows.length])).toEqual([
      ["moths", 2, 9],
      ["plain", 1, 8],
    ]);
    const table = (await call("lifts", "pair.yaml", "--format", "csv")).split("\r\n");
    expect(table[0]).toMatch(/^piece,row,/);
    expect(table.filter((line) => line.startsWith("plain,"))).toHaveLength(8);
  });

  it("says where a row, a pick or a length is", async () => {
    const at = async (place: string, ...more: string[]) =>
      JSON.parse(await call("lifts", "pair.yaml", "--at", place, "--format", "json", ...more)) as object;
    const row = await at("row 7");
    expect(row).toMatchObject({
      piece: "moths",
      rows: 9,
      pick: 25,
      treadle: 1,
      weft: "weft",
      here: {
        row: 7,
        picks: [25, 28],
        blocks: [
          { block: "moth", repeat: 2, row: 2 },
          { block: "edge", repeat: 5, row: 1 },
        ],
        drawn: [2, 9],
        pulled: [2],
        released: [1],
      },
      before: { row: 6, drawn: [1, 9] },
      after: { row: 8, drawn: [3, 9], pulled: [3], released: [2] },
      piecesDone: 0,
      pieces: 3,
    });
    expect(await at("pick 25")).toEqual(row);
    // 25 picks at 10 a centimetre lie on the first 2.5 cm.
    expect(await at("2.5 cm")).toEqual(row);
    // On the warp the second of the moths begins with row 10, and the plain piece with row 19.
    expect(await at("row 10")).toMatchObject({
      piece: "moths",
      nth: 2,
      count: 2,
      here: { row: 1 },
      piecesDone: 1,
    });
    expect(await at("row 19")).toMatchObject({ piece: "plain", nth: 1, here: { row: 1 }, piecesDone: 2 });
    expect(await at("pick 37")).toMatchObject({ piece: "moths", nth: 2, pick: 1 });
    const unquoted = await call("lifts", "pair.yaml", "--at", "row", "10");
    expect(unquoted).toMatch(/^moths, 2 of 2: row 1 of 9, pick 1\n/);
    // One piece of 36 picks and a pick of the next at 10 a centimetre, 10 % taken up; a gap of 2 cm.
    expect(unquoted).toContain(`${((36 + 1) * 1.1 + 20).toFixed(1)} mm`);
    expect(await call("lifts", "pair.yaml", "--at", "2.5", "cm")).toMatch(
      /^moths, 1 of 2: row 7 of 9, pick 25\n/,
    );
    const text = await call("lifts", "pair.yaml", "--at", "row 6", "--piece", "plain");
    expect(text).toContain("block     moth, repeat 1, row 1\n");
    expect(text).toContain("weft      gold\n");
    // Two pieces of 36 picks and 21 picks of this one at 10 a centimetre, 10 % taken up; two gaps of 2 cm.
    expect(text).toContain(`done      2 of 3 pieces before this one; ${(2 * 36 + 21) * 1.1 + 40} mm`);
  });

  it("is refused outside the piece, and where no length is known", async () => {
    const refuse = async (...argv: string[]) => {
      const { status, stderr } = await run(["lifts", ...argv], { cwd });
      expect(status).toBe(2);
      return stderr;
    };
    expect(await refuse("pair.yaml", "--at", "row 10", "--piece", "moths")).toContain(
      "moths has 9 rows and 36 picks; row 10 is not among them",
    );
    expect(await refuse("pair.yaml", "--at", "row", "27")).toContain(
      "all that is woven has 26 rows and 104 picks; row 27 is not among them",
    );
    expect(await refuse("pair.yaml", "--at", "9 m")).toContain("9 m is not among them");
    expect(await refuse("pair.yaml", "--at", "noon")).toContain("--at takes a row, a pick or a length");
    expect(await refuse("pair.yaml", "--piece", "moth")).toContain(
      `there is no piece "moth"; did you mean "moths"?`,
    );
    expect(await refuse("lantern.yaml", "--at", "3 cm")).toContain("not known without cloth.picks");
  });
});

describe("drawcord threading", () => {
  it("begins at the right, as seen from the bench, in counted groups", async () => {
    const lines = (await call("threading", "lantern.yaml", "--group", "5")).split("\n");
    expect(lines).toContain("from right to left, as seen from the weaver's bench; X is a static unit");
    expect(
      lines
        .filter((line) => line.startsWith("[ ]"))
        .map((line) =>
          line
            .trim()
            .split(/ {2,}|(?<=[\dX]) +(?=[\dX])/)
            .slice(1),
        ),
    ).toEqual([
      ["14-10", "X", "3+9", "1", "2", "3", "5", "right border, middle"],
      ["9-5", "4", "5", "6", "5", "4", "10", "middle"],
      ["4-1", "3", "2", "1", "X", "14", "middle, left border"],
    ]);
  });

  it("begins at the left on wish, for a script and a table too", async () => {
    const found = JSON.parse(
      await call("threading", "lantern.yaml", "--from", "left", "--format", "json"),
    ) as {
      notation: string;
      groups: { shafts: string[] }[];
    };
    expect(parseThreading(found.groups.flatMap(({ shafts }) => shafts).join(" "))).toEqual(
      parseThreading(found.notation),
    );
    const table = (await call("threading", "lantern.yaml", "--format", "csv")).split("\r\n");
    expect(table.slice(0, 3)).toEqual([
      "order,unit,shafts,group,part",
      "1,14,X,1,right border",
      expect.stringMatching(/^2,13,3\+9,1,/),
    ]);
    expect(table).toHaveLength(1 + 14 + 1);
  });
});

it("a threading is fitted to a number of units, what is left over shared to both sides", async () => {
  const found = JSON.parse(await call("threading", "lantern.yaml", "--units", "16", "--format", "json")) as {
    notation: string;
    groups: { units: number[]; parts: string[] }[];
  };
  expect(parseThreading(found.notation)).toHaveLength(16);
  expect(found.groups.flatMap(({ parts }) => parts)).toHaveLength(16);
});

describe("lists that cannot be", () => {
  it.each([
    [
      ["threading", "lantern.yaml", "--group", "0"],
      `drawcord threading: --group takes a whole number from 1 to 1000, not "0"`,
    ],
    [
      ["lifts", "lantern.yaml", "--lingo", "heavy"],
      `drawcord lifts: --lingo takes a whole number from 1 to 100000, not "heavy"`,
    ],
    [["lifts", "none.yaml"], "none.yaml: there is no such file"],
  ])("%j are refused with a sentence", async (argv, sentence) => {
    const { status, stdout, stderr } = await run(argv, { cwd });
    expect([status, stdout, stderr]).toEqual([2, "", `${sentence}\n`]);
  });
});
