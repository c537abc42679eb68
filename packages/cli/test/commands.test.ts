import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { rulePages, rules } from "@drawcord/check";
import { soundRecipe } from "@drawcord/files";
import { toText } from "@drawcord/grid";
import { checkRecipe } from "@drawcord/review";
import { expand } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

const diamond = `recipe: 1
title: Small diamond
ground: { weave: broken twill }
units: { ends: 4, threading: X 1-3 2-1 X }
lifts: { picks: 4, rows: [1, 2, 3, 2, 1] }
`;
/** Each row is held for three picks, which is no multiple of the ground's four: figure and ground do not cut. */
const faulty = `recipe: 1
ground: { weave: broken twill }
units: { ends: 4, threading: X 1 1 X }
lifts: { picks: 3, rows: [none, 1, none, none] }
`;

const cwd = folder();
writeFileSync(join(cwd, "diamond.yaml"), diamond);
writeFileSync(join(cwd, "faulty.yaml"), faulty);
writeFileSync(join(cwd, "notes.txt"), "not a recipe");
mkdirSync(join(cwd, "more"));
writeFileSync(join(cwd, "more/a[1].yaml"), diamond);
writeFileSync(join(cwd, "more/b.yaml"), diamond);

const reportOf = (text: string, file: string) => {
  const recipe = soundRecipe(text, file);
  const { findings, places: _, ...report } = checkRecipe(recipe);
  const placed = findings.map((finding) => expect.objectContaining({ ...finding, line: expect.any(Number) }));
  const pages = Object.fromEntries(
    [...(report.causes.length > 0 ? ["cause"] : []), ...findings.map(({ rule }) => rule)].map((rule) => [
      rule,
      expect.stringMatching(/^https:.*\.html$/),
    ]),
  );
  return { file, ...report, findings: placed, pages };
};

describe("drawcord check", () => {
  it("gives a script the report of the library, whatever the format", async () => {
    const one = await run(["check", "diamond.yaml", "--format", "json"], { cwd });
    expect(JSON.parse(one.stdout)).toEqual(reportOf(diamond, "diamond.yaml"));
    expect(Object.keys(JSON.parse(one.stdout) as object)[0]).toBe("file");

    const several = await run(["check", "diamond.yaml", "faulty.yaml", "--format", "json"], { cwd });
    const both = [reportOf(diamond, "diamond.yaml"), reportOf(faulty, "faulty.yaml")];
    expect(JSON.parse(several.stdout)).toEqual(both);

    const lines = await run(["check", "diamond.yaml", "faulty.yaml", "--format", "ndjson"], { cwd });
    expect(
      lines.stdout
        .split("\n")
        .slice(0, -1)
        .map((line) => JSON.parse(line) as object),
    ).toEqual(both);
    expect(lines.stdout.endsWith("\n")).toBe(true);
  });

  it("gives an array even when none of several can be read", async () => {
    const { status, stdout } = await run(["check", "notes.txt", "none", "--format", "json"], { cwd });
    expect([status, stdout]).toEqual([2, "[\n]\n"]);
  });

  it("has the same exit status in every format: 0 clean, 1 findings, 2 unusable", async () => {
    for (const format of ["pretty", "json", "ndjson", "sarif", "github", "markdown"]) {
      const status = async (...argv: string[]) =>
        (await run(["check", ...argv, "--format", format], { cwd })).status;
      expect(await status("diamond.yaml")).toBe(0);
      expect(await status("faulty.yaml", "--fail-on", "warning")).toBe(1);
      expect(await status("diamond.yaml", "faulty.yaml", "--fail-on=note")).toBe(1);
      expect(await status("faulty.yaml", "notes.txt", "--fail-on=warning")).toBe(2);
    }
  });

  it("fails on what --fail-on says and above", async () => {
    const warned = diamond.replace("{ picks: 4,", "{ picks: 3,");
    const { summary } = reportOf(warned, "w") as { summary: Record<string, number> };
    expect(summary).toMatchObject({ error: 0 });
    expect(summary["warning"]).toBeGreaterThan(0);
    const status = async (level: string) =>
      (await run(["check", "-", "--fail-on", level], { cwd, stdin: warned })).status;
    expect(await Promise.all(["error", "warning", "note"].map(status))).toEqual([0, 1, 1]);
  });

  it("reads standard input, and names it so", async () => {
    const { status, stdout } = await run(["check", "-", "--format", "json"], { stdin: diamond });
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toEqual(reportOf(diamond, "standard input"));
    const bad = await run(["check", "-"], { stdin: diamond.replace("title", "tilte") });
    expect(bad.stderr).toBe('standard input:2:1: unknown key "tilte"; did you mean "title"?\n');
  });

  it("fills in patterns in the order of the names, and takes a name with brackets as it is", async () => {
    const files = async (...argv: string[]) => {
      const { stdout } = await run(["check", ...argv, "--format", "ndjson"], { cwd });
      return stdout.match(/(?<=^\{"file":")[^"]*/gm);
    };
    expect(await files("*.yaml")).toEqual(["diamond.yaml", "faulty.yaml"]);
    expect(await files("**/*.yaml")).toEqual([
      "diamond.yaml",
      "faulty.yaml",
      "more/a[1].yaml",
      "more/b.yaml",
    ]);
    expect(await files("more/a[1].yaml", "more/{b,c}.yaml")).toEqual(["more/a[1].yaml", "more/b.yaml"]);
  });

  it("draws each finding and says last what ran", async () => {
    const { stdout } = await run(["check", "faulty.yaml"], { cwd });
    const recipe = soundRecipe(faulty, "faulty.yaml");
    const { findings, rules } = checkRecipe(recipe);
    expect(findings.length).toBeGreaterThan(0);
    expect(findings.some(({ rule }) => rule === "open-cut")).toBe(true);
    for (const { message } of findings) expect(stdout).toContain(`  ${message}\n`);
    expect(stdout).toMatch(/ {2}.*\n\n {2}pick /);
    expect(stdout).toMatch(
      new RegExp(
        `\\n${findings.length} findings? \\(.*\\), ${rules.ran.length} of ${rules.ran.length + 2} rules ran; not long-stretch, large-area: no limit is set\\n$`,
      ),
    );
  });

  it("is coloured on a terminal only, and not where NO_COLOR is set", async () => {
    const coloured = async (isTerminal: boolean, env: Record<string, string>) =>
      (await run(["check", "faulty.yaml"], { cwd, isTerminal, env })).stdout.includes("\u001b[");
    expect(await coloured(true, {})).toBe(true);
    expect(await coloured(true, { NO_COLOR: "1" })).toBe(false);
    expect(await coloured(true, { TERM: "dumb" })).toBe(false);
    expect(await coloured(false, { FORCE_COLOR: "1" })).toBe(false);
  });

  it("says when every rule was switched off, for then nothing was checked", async () => {
    const levels = rules.map(({ name }) => `    ${name}: off`).join("\n");
    const off = await run(["check", "-"], { stdin: `${diamond}limits:\n  levels:\n${levels}\n` });
    expect(off).toEqual({
      status: 2,
      stdout: "",
      stderr: "standard input: every rule is switched off, so nothing was checked\n",
    });
  });

  it("prints the same, byte for byte, every time", async () => {
    const once = await run(["check", "*.yaml"], { cwd });
    expect(await run(["check", "*.yaml"], { cwd })).toEqual(once);
  });
});

describe("drawcord expand", () => {
  const { drawdown } = expand(soundRecipe(diamond, "diamond.yaml").draft);

  it("draws the drawdown, the last pick on top", async () => {
    expect(await run(["expand", "diamond.yaml"], { cwd })).toEqual({
      status: 0,
      stdout: `${toText(drawdown)}\n`,
      stderr: "",
    });
  });

  it("as json tells the drawdown from the first pick on, and where each thread belongs", async () => {
    const { stdout } = await run(["expand", "-", "--format", "json"], {
      stdin: diamond.replace("broken twill", "broken twill, selvedge: { left: 1 2 }"),
    });
    const told = JSON.parse(stdout) as Record<string, unknown>;
    expect(told).toMatchObject({ file: "standard input", title: "Small diamond", ends: 30, picks: 20 });
    expect(told["unitOfEnd"]).toEqual([
      null,
      null,
      ...Array.from({ length: 28 }, (_, end) => (end >> 2) + 1),
    ]);
    expect(told["rowOfPick"]).toEqual(Array.from({ length: 20 }, (_, pick) => (pick >> 2) + 1));
    expect(told["stepOfPick"]).toEqual(Array.from({ length: 20 }, (_, pick) => (pick & 3) + 1));
    const first = (told["drawdown"] as string[]).map((line) => line.slice(2));
    expect(first.reverse().join("\n")).toBe(toText(drawdown));
  });

  it("writes a bitmap to a file, and keeps it from a terminal", async () => {
    const own = folder();
    writeFileSync(join(own, "diamond.yaml"), diamond);
    const write = (...more: string[]) =>
      run(["expand", "diamond.yaml", "--format", "pbm", ...more], { cwd: own, isTerminal: true });
    expect(await write("-o", "diamond.pbm")).toEqual({ status: 0, stdout: "", stderr: "" });
    expect(readFileSync(join(own, "diamond.pbm")).subarray(0, 9).toString()).toBe("P4\n28 20\n");
    expect(readdirSync(own).sort()).toEqual(["diamond.pbm", "diamond.yaml"]);
    expect(await write()).toEqual({
      status: 2,
      stdout: "",
      stderr: "a pbm picture is not for a terminal; name a file for it with -o\n",
    });
    expect(await write("-o", "diamond.pbm")).toMatchObject({ status: 2 });
    expect(await write("-o", "diamond.pbm", "--force")).toMatchObject({ status: 0 });
  });
});

describe("drawcord rules", () => {
  it("lists every rule with what it finds", async () => {
    const { status, stdout } = await run(["rules"], { width: 200 });
    expect(status).toBe(0);
    const lines = rules.map(
      ({ name, severity }) => new RegExp(`^ {2}${name} +${severity}: ${rulePages[name].summary}$`, "m"),
    );
    for (const line of lines) expect(stdout).toMatch(line);
  });

  it.each(rules.map(({ name }) => name))(
    "%s: meaning, reason, mend, source and examples, in lines that fit",
    async (name) => {
      const { status, stdout } = await run(["rules", name], { width: 72 });
      expect(status).toBe(0);
      const rule = rulePages[name];
      const words = stdout.replace(/\s+/g, " ");
      for (const part of [rule.meaning, rule.reason, rule.mend, rule.source]) expect(words).toContain(part);
      expect(stdout.match(/^Passes: /gm)).toHaveLength(rule.examples.passes.length);
      expect(stdout.match(/^Fails: /gm)).toHaveLength(rule.examples.fails.length);
      const prose = stdout.split("\n").filter((line) => line.startsWith("  ") && /[a-z]/.test(line));
      expect(prose.every((line) => line.length <= 72)).toBe(true);
    },
  );

  it("answers an unknown rule with the nearest", async () => {
    expect(await run(["rules", "opencut"])).toEqual({
      status: 2,
      stdout: "",
      stderr: 'no rule is called "opencut"; did you mean "open-cut"?\n',
    });
  });
});

describe("help", () => {
  it.each(["check", "expand", "rules"])("of %s fits 80 columns and tells its options", async (name) => {
    const { status, stdout } = await run([name, "--help"]);
    expect(status).toBe(0);
    expect(stdout.split("\n").every((line) => line.length <= 80)).toBe(true);
    expect(stdout).toMatch(new RegExp(`^drawcord ${name} `));
    expect(stdout).toMatch(/\nExamples\n {2}drawcord /);
  });
});
