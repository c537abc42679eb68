import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { rules } from "@drawcord/check";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

/** A warning at its borders and nothing worse. */
const warned = `recipe: 1
ground: { weave: broken twill }
units: { ends: 4, threading: X 1 1 X }
lifts: { picks: 3, rows: [none, 1, none, none] }
`;
const clean = warned.replace("picks: 3", "picks: 4");
const broken = warned.replace("[none, 1,", "[none, 1 9,");

const cwd = folder();
for (const [name, text] of Object.entries({ warned, clean, broken }))
  writeFileSync(join(cwd, `${name}.yaml`), text);

const check = (...argv: string[]) => run(["check", ...argv], { cwd });
const reportOf = async (...argv: string[]) => {
  const { stdout } = await check(...argv, "--format", "json");
  return JSON.parse(stdout) as {
    summary: Record<string, number>;
    findings: { rule: string }[];
    rules: { ran: string[]; skipped: { rule: string; reason: string }[] };
  };
};
const statusOf = async (...argv: string[]) => (await check(...argv)).status;

describe("--rule", () => {
  it("looks for the rules named and for nothing else", async () => {
    const { findings, rules: looked } = await reportOf(
      "broken.yaml",
      "--rule",
      "unknown-shaft",
      "--rule=open-cut",
    );
    expect(looked.ran.toSorted()).toEqual(["open-cut", "unknown-shaft"]);
    expect(new Set(findings.map(({ rule }) => rule))).toEqual(new Set(looked.ran));
    expect(looked.skipped).toHaveLength(rules.filter((rule) => !("plainOnly" in rule)).length - 2);
    for (const { reason } of looked.skipped) expect(reason).toBe("it was not asked for");
  });

  it("finds of a rule alone what it finds among all", async () => {
    const { findings, rules: among } = await reportOf("broken.yaml");
    for (const { name } of rules) {
      if (!among.ran.includes(name)) {
        expect(await statusOf("broken.yaml", "--rule", name)).toBe(2);
        continue;
      }
      const alone = await reportOf("broken.yaml", "--rule", name);
      expect(alone.findings).toEqual(findings.filter(({ rule }) => rule === name));
    }
  });

  it("takes a waiver of a rule that was not asked for, and does not call it unused", async () => {
    const waiving = `${warned}waive: [{ rule: open-cut, reason: the fringe covers it }]\n`;
    const argv = ["check", "-", "--format", "json", "--rule"];
    const { stdout } = await run([...argv, "unused-waiver"], { stdin: waiving });
    expect(JSON.parse(stdout)).toMatchObject({ rules: { ran: ["unused-waiver"] }, findings: [] });
    const both = await run([...argv, "unused-waiver", "--rule", "open-cut"], { stdin: waiving });
    expect(JSON.parse(both.stdout)).toMatchObject({
      findings: [{ rule: "open-cut", waived: "the fringe covers it" }],
    });
    const unused = await run([...argv, "unused-waiver", "--rule", "open-cut"], {
      stdin: waiving.replace("picks: 3", "picks: 4"),
    });
    expect(JSON.parse(unused.stdout)).toMatchObject({ findings: [{ rule: "unused-waiver", line: 5 }] });
  });

  it("tells in the last line how many were asked for", async () => {
    const { stdout } = await check("clean.yaml", "--rule", "open-cut");
    expect(stdout).toMatch(/\n0 findings, 1 of 1 rules asked for ran\n$/);
  });

  it("answers an unknown rule with the nearest", async () => {
    expect(await check("clean.yaml", "--rule", "opencut")).toEqual({
      status: 2,
      stdout: "",
      stderr: 'no rule is called "opencut"; did you mean "open-cut"?\n',
    });
  });

  it("does not switch on what the recipe switches off: then nothing was checked", async () => {
    const off = `${clean}limits: { levels: { open-cut: off } }\n`;
    expect(await run(["check", "-", "--rule", "open-cut"], { cwd, stdin: off })).toEqual({
      status: 2,
      stdout: "",
      stderr: "standard input: every rule is switched off, so nothing was checked\n",
    });
  });
});

describe("--max-warnings", () => {
  it("fails on more warnings than that, in all files together", async () => {
    const { summary } = await reportOf("warned.yaml");
    const warnings = summary["warning"]!;
    expect(warnings).toBeGreaterThan(0);
    expect(await statusOf("warned.yaml")).toBe(0);
    expect(await statusOf("warned.yaml", "--max-warnings", String(warnings))).toBe(0);
    expect(await statusOf("warned.yaml", "--max-warnings", String(warnings - 1))).toBe(1);
    expect(await statusOf("warned.yaml", "warned.yaml", `--max-warnings=${warnings}`)).toBe(1);
    expect(await statusOf("clean.yaml", "--max-warnings=0")).toBe(0);
  });
});

describe("--quiet", () => {
  it("has nothing to say when nothing fails", async () => {
    for (const format of ["pretty", "github", "markdown"]) {
      const quiet = await check("clean.yaml", "warned.yaml", "--quiet", "--format", format);
      expect(quiet).toEqual({ status: 0, stdout: "", stderr: "" });
    }
  });

  it("shows what fails, and the last line", async () => {
    const { status, stdout } = await check("clean.yaml", "broken.yaml", "-q");
    expect(status).toBe(1);
    expect(stdout).toMatch(/^broken\.yaml\n\nerror {2}cause {2}line 4\n {2}row 2 draws shaft 9/);
    expect(stdout).not.toMatch(/^(warning|size|clean)/m);
    expect(stdout).toMatch(/rules ran.*\n$/);
    const strict = await check("warned.yaml", "-q", "--fail-on", "warning");
    expect(strict.stdout).toMatch(/^warned\.yaml\n\nwarning {2}/);
  });

  it("never changes the exit status", async () => {
    for (const file of ["clean.yaml", "warned.yaml", "broken.yaml", "none.yaml"]) {
      for (const more of [[], ["--fail-on=warning"], ["--max-warnings=0"]]) {
        expect(await statusOf(file, "-q", ...more)).toBe(await statusOf(file, ...more));
      }
    }
  });
});

describe("an option that counts", () => {
  it.each([
    [
      ["--max-warnings", "few"],
      'drawcord check: --max-warnings takes a whole number of at least 0, not "few"',
    ],
    [["--max-warnings=-1"], 'drawcord check: --max-warnings takes a whole number of at least 0, not "-1"'],
    [["--workers", "0"], 'drawcord check: --workers takes a whole number of at least 1, not "0"'],
    [["--shard", "9/8"], 'drawcord check: --shard takes a part such as 2/8, the second of eight, not "9/8"'],
    [["--shard", "0/8"], 'drawcord check: --shard takes a part such as 2/8, the second of eight, not "0/8"'],
    [["--shard", "2"], 'drawcord check: --shard takes a part such as 2/8, the second of eight, not "2"'],
  ])("%j", async (argv, sentence) => {
    expect(await check("clean.yaml", ...argv)).toEqual({ status: 2, stdout: "", stderr: `${sentence}\n` });
  });
});
