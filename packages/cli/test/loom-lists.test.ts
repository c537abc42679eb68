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
      "row,first pick,last pick,drawn,pulled,released,units,grams",
      "1,1,4,1 3-5 9,1 3-5 9,,9,90",
      "2,5,8,1 3-5 9,,,9,90",
      "3,9,12,,,1 3-5 9,0,0",
    ]);
  });

  it("says what another order of the handles would save, and cautions", async () => {
    const text = await call("lifts", "lantern.yaml");
    expect(text).toMatch(/order {6}hung as [\d ]+, they would take 3 grasps for 7/);
    expect(text).toContain("The weights count lingos alone");
  });
});

describe("drawcord threading", () => {
  it("begins at the right, as seen from the bench, in counted groups", async () => {
    const lines = (await call("threading", "lantern.yaml", "--group", "5")).split("\n");
    expect(lines).toContain("from right to left, as seen from the weaver's bench; X is a static unit");
    expect(
      lines.filter((line) => line.startsWith("[ ]")).map((line) => line.trim().split(/ +/).slice(2)),
    ).toEqual([
      ["14-10", "X", "3+9", "1", "2", "3", "5"],
      ["9-5", "4", "5", "6", "5", "4", "10"],
      ["4-1", "3", "2", "1", "X", "14"],
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
    expect(table.slice(0, 3)).toEqual(["order,unit,shafts,group", "1,14,X,1", "2,13,3+9,1"]);
    expect(table).toHaveLength(1 + 14 + 1);
  });
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
