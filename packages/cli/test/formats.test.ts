import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { applyTogether } from "@drawcord/causes";
import { type Finding, rules } from "@drawcord/check";
import { soundRecipe } from "@drawcord/files";
import { checkRecipe } from "@drawcord/review";
import schema from "@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json" with { type: "json" };
import * as draft04 from "ajv-draft-04";
import { array, assert, constantFrom, property } from "fast-check";
import type { Log, Result } from "sarif";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { github } from "../src/formats/github.js";
import { replaced } from "./replaced.js";
import { run } from "./run.js";

/** Warnings at every border, a float that is waived, and a lift that draws a shaft on which nothing hangs. */
const faulty = `recipe: 1
title: "Moth | lantern *one*"
ground: { weave: broken twill }
units:
  ends: 4
  threading: X 1 1 X 1 2 X
lifts:
  picks: 3
  rows:
    - none
    - 1
    - 1 9
    - 2
    - none
limits:
  float: 2
  levels: { idle-shaft: off, layers: off }
waive:
  - { rule: float-length, reason: "the fringe covers it" }
`;
const clean = `recipe: 1
ground: { weave: broken twill }
units: { ends: 4, threading: X 1-3 2-1 X }
lifts: { picks: 4, rows: [1, 2, 3, 2, 1] }
`;

const cwd = folder();
const names = { faulty: "a faulty, one: 100%.yaml", clean: "clean.yaml", bad: "bad.yaml" };
writeFileSync(join(cwd, names.faulty), faulty);
writeFileSync(join(cwd, names.clean), clean);
writeFileSync(join(cwd, names.bad), clean.replace("\n", "\ntitel: x\n"));

const findingsOf = (text: string): readonly Finding[] => {
  const recipe = soundRecipe(text, "x");
  return checkRecipe(recipe).findings;
};
const findings = findingsOf(faulty);
const { causes } = checkRecipe(soundRecipe(faulty, "x"));
const waived = findings.filter((finding) => finding.waived !== undefined);

const told = (format: string, ...more: string[]) =>
  run(["check", names.faulty, names.bad, names.clean, "--format", format, ...more], { cwd });

it("the recipe of these tests has findings of each kind", () => {
  expect(waived.length).toBeGreaterThan(0);
  expect(new Set(findings.map(({ rule }) => rule)).size).toBeGreaterThan(2);
  expect(findingsOf(clean)).toEqual([]);
});

const shared = (name: string) => fileURLToPath(new URL(`../../../shared/recipes/${name}`, import.meta.url));

describe("sarif", () => {
  // The schema as published with the standard, in JSON Schema draft 4.
  const validate = new draft04.default.default({
    strict: false,
    unicodeRegExp: false,
    formats: {
      uri: (text: string) => URL.canParse(text),
      "uri-reference": (text: string) => !/[\s<>"{}|\\^`]/.test(text) && URL.canParse(text, "file:///"),
      "date-time": true,
    },
  }).compile(schema);
  const logOf = async (...argv: string[]) => JSON.parse((await run(argv, { cwd })).stdout) as Log;
  const log = async () => JSON.parse((await told("sarif")).stdout) as Log;

  it("is a log by the published schema, with findings, without, and of no usable file at all", async () => {
    const logs = [
      await log(),
      await logOf("check", names.clean, "--format", "sarif"),
      await logOf("check", names.bad, "none", "--format", "sarif"),
      await logOf("check", names.faulty, "--format", "sarif", "--rule", "open-cut"),
    ];
    for (const one of logs) {
      validate(one);
      expect(validate.errors ?? []).toEqual([]);
    }
  });

  it("would not pass the schema with a level or a line that there cannot be", async () => {
    const one = await log();
    const [first] = one.runs[0]!.results!;
    expect(validate({ ...one, runs: [{ ...one.runs[0], results: [{ ...first, level: "fatal" }] }] })).toBe(
      false,
    );
    const unnamed = [{ physicalLocation: { artifactLocation: { uri: "a file" } } }];
    expect(
      validate({ ...one, runs: [{ ...one.runs[0], results: [{ ...first, locations: unnamed }] }] }),
    ).toBe(false);
    const nowhere = [{ physicalLocation: { region: { startLine: 0 } } }];
    expect(
      validate({ ...one, runs: [{ ...one.runs[0], results: [{ ...first, locations: nowhere }] }] }),
    ).toBe(false);
  });

  it("has a result for every finding, with its rule, level, sentence, measure and waiver", async () => {
    const [only] = (await log()).runs;
    const slips = only!.results!.filter(({ ruleId }) => ruleId === "slip");
    const told = only!
      .results!.slice(slips.length)
      .map(({ level, message, properties, ruleId, suppressions }: Result) => ({
        rule: ruleId,
        severity: level,
        message: message.text,
        ...(suppressions === undefined ? {} : { waived: suppressions[0]!.justification }),
        ...properties,
      }));
    // Each finding names the slip that explains it.
    const explained = findings.map((finding, i) => {
      const cause = causes.findIndex(({ explains }) => explains.includes(i));
      return cause < 0 ? finding : { ...finding, cause };
    });
    expect(told).toEqual(JSON.parse(JSON.stringify(explained)));
    const listed = only!.tool.driver.rules!;
    expect(listed.map(({ id }) => id)).toEqual([...rules.map(({ name }) => name), "slip"]);
    for (const { ruleId, ruleIndex } of only!.results!) expect(listed[ruleIndex!]!.id).toBe(ruleId);
  });

  it("tells causes first, and a sure one with the edit of the text that undoes it", async () => {
    const text = readFileSync(shared("faulty-runner.recipe.yaml"), "utf8");
    const { results } = (await logOf("check", shared("faulty-runner.recipe.yaml"), "--format", "sarif"))
      .runs[0]!;
    const recipe = soundRecipe(text, "x");
    const sought = checkRecipe(recipe).causes;
    expect(sought.filter(({ sure }) => sure).length).toBeGreaterThan(0);
    sought.forEach((cause, i) => {
      const { fixes = [], level, message, properties, ruleId } = results![i]!;
      const { changes, explains, or, reason, rivals, severity, slip, sure, why } = cause;
      expect({ ruleId, level }).toEqual({ ruleId: "slip", level: severity });
      expect(message.text).toContain(cause.message);
      expect(properties).toEqual(
        JSON.parse(JSON.stringify({ slip, or, why, reason, changes, explains, rivals, sure })),
      );
      expect(fixes).toHaveLength(sure ? 1 : 0);
      for (const fix of fixes) {
        const mended = soundRecipe(replaced(text, fix.artifactChanges[0]!.replacements), "x");
        expect(mended.draft).toEqual(applyTogether(recipe.draft, changes));
      }
    });
  });

  it("points at the lines of the recipe", async () => {
    const { results } = (await log()).runs[0]!;
    const lines = faulty.split("\n");
    const pointed = new Map(
      results!.map(({ locations, ruleId }) => {
        const { artifactLocation, region } = locations![0]!.physicalLocation!;
        expect(decodeURIComponent(artifactLocation!.uri!)).toBe(names.faulty);
        return [ruleId, lines[region!.startLine! - 1]!.slice(region!.startColumn! - 1)];
      }),
    );
    expect(pointed.get("open-cut")).toBe("broken twill }");
    expect(pointed.get("unknown-shaft")).toBe("1 9");
    expect(lines.slice(9, 14).map((line) => line.slice(6))).toContain(pointed.get("float-length"));
  });

  it("tells which file could not be used and which rules did not look", async () => {
    const [invocation] = (await log()).runs[0]!.invocations!;
    expect(invocation).toMatchObject({ executionSuccessful: false, exitCode: 2 });
    expect(invocation!.toolExecutionNotifications).toMatchObject([
      {
        message: { text: 'bad.yaml:2:1: unknown key "titel"; did you mean "title"?' },
        locations: [
          {
            physicalLocation: {
              artifactLocation: { uri: "bad.yaml" },
              region: { startLine: 2, startColumn: 1 },
            },
          },
        ],
      },
    ]);
    const skipped = invocation!.toolConfigurationNotifications!.map(
      ({ associatedRule }) => associatedRule!.id,
    );
    expect(skipped).toEqual(expect.arrayContaining(["layers", "idle-shaft"]));
  });
});

describe("github", () => {
  it("has a workflow command for each cause, each finding that is not waived, and each unusable file", async () => {
    const { stdout } = await told("github");
    const lines = stdout.trimEnd().split("\n");
    expect(lines).toHaveLength(findings.length - waived.length + causes.length + 1);
    for (const line of lines) {
      expect(line).toMatch(
        /^::(error|warning|notice) file=[^:,]+,line=\d+,col=\d+,endLine=\d+(,endColumn=\d+)?,title=[a-z -]+::[a-z\d].*$/,
      );
    }
    expect(stdout).toContain(
      "::error file=a faulty%2C one%3A 100%25.yaml,line=12,col=7,endLine=12,endColumn=10,title=unknown-shaft::",
    );
    expect(lines.at(-1)).toBe(
      '::error file=bad.yaml,line=2,col=1,endLine=2,endColumn=6,title=not usable::bad.yaml:2:1: unknown key "titel"; did you mean "title"? (https://drawcord.example/codes.html#unknown-key)',
    );
  });

  it("never lets a file's name or a sentence begin a command or a property of its own", () => {
    const place = { line: 1, column: 2, offset: 1, end: { line: 1, column: 5, offset: 4 } };
    const evil = array(constantFrom("::", ",", ":", "%", "\n", "\r", "%0A", "error", "line=1", "a")).map(
      (parts) => parts.join(""),
    );
    assert(
      property(evil, evil, (file, message) => {
        const text = github.failure!({ file, reasons: [{ message, place }] });
        const [, name, said] =
          /^::error file=([^:,\r\n]*),line=1,col=2,endLine=1,endColumn=5,title=not usable::([^\r\n]*)\n$/.exec(
            text,
          )!;
        const plain = (escaped: string) => decodeURIComponent(escaped);
        expect(plain(name!)).toBe(file);
        expect(plain(said!).replaceAll("<U+000A>", "\n").replaceAll("<U+000D>", "\r")).toBe(message);
      }),
    );
  });
});

describe("markdown", () => {
  it("has a section for each file, its findings with pictures, and its numbers in a table", async () => {
    const { stdout } = await told("markdown", "--all");
    expect(stdout.match(/^## .*/gm)).toEqual([
      "## Moth \\| lantern \\*one\\*",
      "## bad.yaml",
      "## clean.yaml",
    ]);
    expect(stdout).toContain(
      "### error: [unknown-shaft](https://drawcord.example/rules/unknown-shaft.html) (line 12)\n\na lift draws pattern shaft 9",
    );
    const drawn = findings.filter(
      (one) => (one.ends ?? one.picks) && !("shaft" in one) && one.waived === undefined,
    );
    expect(stdout.match(/^```text\n[ \d]*pick/gm)).toHaveLength(drawn.length);
    expect(stdout).toContain("| size | 28 ends x 20 picks, 7 units x 5 rows |");
    expect(stdout).toContain("Could not be used: bad.yaml:2:1: unknown key");
    expect(stdout).toMatch(
      /\n\*\*\d+ findings \(.*\) in 2 files, 1 file not usable, .* rules ran; not .*\*\*\n$/,
    );
  });
});

describe("json and ndjson", () => {
  it("always say all, with the place of each finding from its first sign to behind its last", async () => {
    for (const more of [[], ["--quiet"], ["--all"]]) {
      const lines = (await told("ndjson", ...more)).stdout.trimEnd().split("\n");
      const reports = lines.map((line) => JSON.parse(line) as { file: string; findings: Finding[] });
      expect(reports.map(({ file }) => file)).toEqual([names.faulty, names.clean]);
      const point = { line: expect.any(Number), column: expect.any(Number), offset: expect.any(Number) };
      expect(reports[0]!.findings).toEqual(findings.map((finding) => ({ ...finding, ...point, end: point })));
      expect(JSON.parse((await told("json", ...more)).stdout)).toEqual(reports);
    }
  });
});

it("the numbers that a recipe states of its project are worked out and compared", async () => {
  const stated = `${clean}cloth: { sett: 10 per cm, reed: 50 per 10 cm, sley: 2 }\nstated: { ends: 28, width-in-reed: 9 cm }\n`;
  const { stdout } = await run(["check", "-", "--rule", "stated-number", "--format", "json"], {
    stdin: stated,
  });
  const { findings } = JSON.parse(stdout) as { findings: (Finding & { line: number })[] };
  expect(findings).toMatchObject([{ stated: "width-in-reed", measured: 2.8, limit: 9, unit: "cm", line: 6 }]);
});
