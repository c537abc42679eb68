import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { run } from "./run.js";

const seasons = readFileSync(new URL("../../../shared/recipes/seasons.recipe.yaml", import.meta.url), "utf8");

describe("a recipe of several pieces", () => {
  const call = async (stdin: string, ...argv: readonly string[]) => {
    const { status, stdout, stderr } = await run([...argv, "-"], { stdin });
    return { status, stdout, stderr };
  };

  it("is checked with the numbers of each piece under its name, as text and for a script", async () => {
    const { status, stdout } = await call(seasons, "check");
    expect(status).toBe(0);
    const names = ["tulips", "daisies", "acorns", "stars"];
    const lines = stdout.split("\n");
    for (const name of names) expect(lines[lines.indexOf(name) + 1]).toContain("356 ends x 440 picks");
    const report = JSON.parse((await call(seasons, "check", "--format", "json")).stdout) as {
      pieces: { name: string; size: { picks: number } }[];
    };
    expect(report.pieces.map(({ name, size }) => `${name} ${size.picks}`)).toEqual(
      names.map((name) => `${name} 440`),
    );
  });

  it("has a finding of one piece told with its name", async () => {
    const strict = seasons.replace("weft: rust", "weft: rust\n    limits: { float: 2 }");
    const { status, stdout } = await call(strict, "check", "--format", "json");
    expect(status).toBe(1);
    const { findings } = JSON.parse(stdout) as {
      findings: { rule: string; piece?: string; message: string }[];
    };
    const floats = findings.filter(({ rule }) => rule === "float-length");
    expect(floats.length).toBeGreaterThan(0);
    expect(new Set(floats.map(({ piece }) => piece))).toEqual(new Set(["acorns"]));
    expect(floats[0]!.message).toMatch(/^acorns: /);
  });

  it("is expanded whole, or the piece that is named", async () => {
    const whole = (await call(seasons, "expand")).stdout.trimEnd().split("\n");
    const one = (await call(seasons, "expand", "--piece", "daisies")).stdout.trimEnd().split("\n");
    expect([whole.length, one.length]).toEqual([4 * 440, 440]);
    // The last pick is on top, and the daisies are the second of four.
    expect(whole.slice(2 * 440, 3 * 440)).toEqual(one);
    const json = JSON.parse((await call(seasons, "expand", "--format", "json")).stdout) as {
      pieces: object[];
    };
    expect(json.pieces[1]).toEqual({ name: "daisies", firstPick: 441, picks: 440 });
    expect((await call(seasons, "expand", "--piece", "daisys")).stderr).toContain(`did you mean "daisies"?`);
  });
});
