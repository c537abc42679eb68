/** Formulas of a recipe's own, as the commands print them. */
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "./run.js";

const cwd = mkdtempSync(join(tmpdir(), "drawcord-own-"));
const text = `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: (1-8 7-2)*3 1 }
lifts: { picks: 4, rows: ["1-8 *40"] }
yarns: { warp: { count: Nm 22/2, fibre: cottolin }, weft: { count: Nm 16/2, fibre: linen } }
cloth: { sett: 12 per cm, picks: 12 per cm, draw-in: 5 %, take-up: 8 %, shrinkage: 6 % }
project: { pieces: 4, length: 60 cm, hems: 6 cm, waste: 80 cm }
formulas:
  - title: price of the yarn
    formula: (a + b) c / 100
    symbols:
      a: { meaning: weight of the warp yarn, plan: warp-yarn-mass, in: g }
      b: { meaning: weight of the weft yarn, plan: weft-yarn-mass, in: g }
      c: { meaning: price of 100 g, value: 8.50 }
    symbol: P
    source: course notes, lesson 4
  - title: ribbon for the hems
    formula: 2 N b
    symbols: { N: { meaning: pieces, plan: pieces }, b: { meaning: finished width, plan: finished-width } }
    unit: m
`;
writeFileSync(join(cwd, "own.recipe.yaml"), text);
writeFileSync(join(cwd, "broken.recipe.yaml"), text.replace("2 N b", "2 N b q"));

const drawcord = (...argv: string[]) => run(argv, { cwd });

describe("a recipe with formulas of its own", () => {
  it("has what they give in its plan, with the working", async () => {
    const { stdout, status } = await drawcord("plan", "own.recipe.yaml", "--explain");
    expect(status).toBe(0);
    expect(stdout).toMatch(/^own +price of the yarn: 10\.23\n +ribbon for the hems: 1\.02 m \(1\.12 yd\)$/m);
    expect(stdout).toMatch(/^price of the yarn\n {2}P = \(a \+ b\) c \/ 100\n/m);
    expect(stdout).toContain("  source: course notes, lesson 4\n");
    const json = JSON.parse((await drawcord("plan", "own.recipe.yaml", "--format", "json")).stdout);
    expect(json.own).toEqual([
      { title: "price of the yarn", value: 10.23, unit: "" },
      { title: "ribbon for the hems", value: 1.02, unit: "m" },
    ]);
  });

  it("has them among the numbers that a change makes differ", async () => {
    const { stdout } = await drawcord("plan", "own.recipe.yaml", "--with", "project.pieces: 8");
    expect(stdout).toMatch(/^price of the yarn +10\.23 +19\.4$/m);
  });

  it("has them on its sheet, each with the number of its working", async () => {
    await drawcord("sheet", "own.recipe.yaml", "-o", "own.md", "--part", "project", "--part", "working");
    const sheet = readFileSync(join(cwd, "own.md"), "utf8");
    expect(sheet).toMatch(/^\| \*\*Price of the yarn\*\* \| 10\\\.23 \|$/m);
    expect(sheet).toMatch(/^\| \*\*Ribbon for the hems\*\* \| 1\\\.02 m \| \d+ \|$/m);
    expect(sheet).toMatch(/^### \d+\\\. Price of the yarn$/m);
  });

  it.each(["plan", "check", "sheet"])(
    "is refused at its place by %s where one cannot be read",
    async (command) => {
      const output = command === "sheet" ? ["-o", "broken.html"] : [];
      const { status, stderr } = await drawcord(command, "broken.recipe.yaml", ...output);
      expect({ status, stderr }).toEqual({
        status: 2,
        stderr:
          'broken.recipe.yaml:18:14: formulas, item 2.formula: ribbon for the hems: "q" is not among its symbols; they are N, b\n',
      });
    },
  );
});
