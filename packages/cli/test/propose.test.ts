import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { check } from "@drawcord/check";
import { soundRecipe } from "@drawcord/files";
import { checkRecipe, optionsOf } from "@drawcord/review";
import { applyChange } from "@drawcord/units";
import schema from "@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json" with { type: "json" };
import * as draft04 from "ajv-draft-04";
import type { Log } from "sarif";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { replaced } from "./replaced.js";
import { run } from "./run.js";

/** A ground begun a pick late and tied wrong, and a unit astray in a point. */
const faulty = `recipe: 1
ground:
  shafts: 4
  threading: 1 2 3 4
  steps:
    - { raise: 2, sink: 3 }
    - { raise: 3, sink: 2 }
    - { raise: 4, sink: none } # a knot came loose
    - { raise: 1, sink: 4 }
units: { ends: 4, threading: 1-5 4 2 2 1 }
lifts:
  picks: 4
  rows: [5, 4 5, 3-5, 2-4, 1-3, 2-4, 3-5, 4 5, 5]
limits: { float: 7 }`;
const cwd = folder();
writeFileSync(join(cwd, "faulty.yaml"), faulty);

const reported = async (...argv: string[]) => (await run(["check", "faulty.yaml", ...argv], { cwd })).stdout;

describe("drawcord check --propose", () => {
  it("gives the mends as data, which made to the draft leave nothing to find", async () => {
    const report = JSON.parse(await reported("--propose", "--format", "json"));
    const recipe = soundRecipe(faulty, "x");
    const { draft } = recipe;
    const options = optionsOf(recipe);
    expect(report.findings.length).toBeGreaterThan(3);
    for (const { mend, rule } of report.findings) expect(report.mends[mend - 1].rules).toContain(rule);
    const mended = report.mends.flatMap(({ changes }: { changes: [] }) => changes).reduce(applyChange, draft);
    expect(check(draft, options).findings).not.toEqual([]);
    expect(check(mended, options).findings).toEqual([]);
    expect(report.mends).toContainEqual(
      expect.objectContaining({
        changes: [{ change: "thread", unit: 7, shafts: [3] }],
        words: "hang unit 7 on shaft 3",
      }),
    );
  });

  it("is data in SARIF too, by the published schema: fixes that make a recipe without findings", async () => {
    const log = JSON.parse(await reported("--propose", "--format", "sarif")) as Log;
    const validate = new draft04.default.default({
      strict: false,
      unicodeRegExp: false,
      validateFormats: false,
    }).compile(schema);
    expect(validate(log) ? [] : validate.errors).toEqual([]);
    const results = log.runs[0]!.results ?? [];
    const fixes = results.flatMap((result) => result.fixes ?? []);
    expect(fixes.length).toBeGreaterThan(1);
    const texts = fixes.map(({ artifactChanges: [change] }) => replaced(faulty, change!.replacements));
    const counts = texts.map((text) => {
      const recipe = soundRecipe(text, "x");
      return checkRecipe(recipe).findings.length;
    });
    expect(Math.max(...counts)).toBeLessThan(results.length);
    expect(counts).toContain(0);
    for (const text of texts) expect(text).toContain("# a knot came loose");
  });

  it("stands beside each finding for people, and says what a mend stands upon", async () => {
    const pretty = await reported("--propose", "--all");
    expect(pretty).toContain("\n  mend: tie step 3 of the ground to raise shaft 4 and to sink shaft 1\n");
    expect(pretty).toContain("\n  mend: hang unit 7 on shaft 3\n");
    expect(pretty).toMatch(/\n {2}mend: begin .* 1 step earlier \(after what is proposed for a slip\)\n/);
    expect(await reported("--propose", "--all", "--format", "markdown")).toMatch(
      /\n\nMend: begin .* 1 step earlier \\?\(after what is proposed for a slip\\?\)\n/,
    );
    expect(await reported("--seconds", "0")).not.toContain("mend: ");
  });

  it("is not taken from a cache that was kept without it", async () => {
    const argv = ["--format", "json", "--cache", "kept"];
    expect(JSON.parse(await reported(...argv)).mends).toBeUndefined();
    expect(JSON.parse(await reported(...argv, "--propose")).mends.length).toBeGreaterThan(1);
    expect(JSON.parse(await reported(...argv, "--propose")).mends.length).toBeGreaterThan(1);
  });
});
