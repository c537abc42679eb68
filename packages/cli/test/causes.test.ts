import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../../../tests/support/packages.js";
import { run } from "./run.js";

const file = join(root, "shared/recipes/faulty-runner.recipe.yaml");

interface Cause {
  readonly message: string;
  readonly line: number;
  readonly explains: readonly number[];
  readonly sure: boolean;
}

const told = async (...more: readonly string[]) => (await run(["check", file, ...more])).stdout;

describe("the faulty runner is read by its causes", () => {
  it("each planted slip is told, at the line where it was written, before all that follows from it", async () => {
    const report = JSON.parse(await told("--format", "json")) as {
      causes: readonly Cause[];
      findings: readonly { rule: string; severity: string }[];
      untried: readonly string[];
    };
    const lines = readFileSync(file, "utf8").split("\n");
    const said = report.causes.map(({ line, message }) => [message, lines[line - 1]!.trim()]);
    expect(said).toContainEqual([
      "step 7 of the ground sinks nothing where the weave says 1",
      "- { raise: 4, sink: none }",
    ]);
    expect(said).toContainEqual([
      "unit 37 hangs on shaft 9 where the rest of the threading says 8",
      expect.stringMatching(/^threading: X\*2 13/),
    ]);
    expect(said).toContainEqual([
      "rows 3, 35 draw shaft 14, which only stands for static units",
      "line: { rows: [ 1-14 ] }",
    ]);
    expect(said).toContainEqual([
      "rows 4, 34 draw shaft 15, on which no unit hangs",
      "edge: { rows: [ 13 15 ] }",
    ]);
    expect(said).toContainEqual(["the recipe states 320 ends, and there are 324", "ends: 320"]);
    expect(report.untried).toEqual([]);
    const explained = new Set(report.causes.flatMap(({ explains }) => explains));
    const left = report.findings.filter((_, at) => !explained.has(at));
    expect(left.filter(({ severity }) => severity !== "note")).toEqual([]);
    expect(explained.size).toBe(report.causes.reduce((sum, { explains }) => sum + explains.length, 0));
  });

  it("for people it fits on two screens, its symptoms counted beneath their cause", async () => {
    const text = await told();
    expect(text.split("\n").length).toBeLessThan(110);
    expect(text).toMatch(/\n {2}accounts for \d+ findings: \d+ of float-length, /);
    expect(text).toMatch(/\n +as it is +as it would be\n/);
    expect(text).not.toContain("error  open-cut");
    expect(await told("--all")).toContain("warning  open-cut");
  });

  it("is in Markdown and beside the lines of a recipe too", async () => {
    expect(await told("--format", "markdown")).toContain(
      "### error: [cause](https://drawcord.example/guide/report.html) (line 16)\n\nstep 7 of the ground sinks nothing",
    );
    expect(await told("--format", "github")).toMatch(
      /^::error file=[^\n]*,line=16,col=\d+,endLine=16,endColumn=\d+,title=cause::step 7/,
    );
  });

  it("is left out where no time is given, and where only one rule is asked for", async () => {
    for (const more of [
      ["--seconds", "0"],
      ["--rule", "open-cut"],
    ]) {
      expect((JSON.parse(await told("--format", "json", ...more)) as { causes: [] }).causes).toEqual([]);
    }
  });
});
