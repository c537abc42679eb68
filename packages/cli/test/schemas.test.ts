import { readdirSync, readFileSync } from "node:fs";
import { sayCause } from "@drawcord/causes";
import { type Finding, rulePages, rules, sayFinding } from "@drawcord/check";
import { soundRecipe, soundWif } from "@drawcord/files";
import type { Review } from "@drawcord/review";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { exampleReport } from "../../check/test/example-report.js";
import { run } from "./run.js";

const shared = new URL("../../../shared/", import.meta.url);
const files = ["recipes", "drafts"].flatMap((folder) =>
  readdirSync(new URL(folder, shared))
    .filter((name) => /\.(recipe\.yaml|wif)$/.test(name))
    .map((name) => `${folder}/${name}`),
);

const schema = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../files/${name}.schema.json`, import.meta.url), "utf8")) as {
    readonly $defs?: object;
  };
const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, strictRequired: false });
const validators = {
  report: ajv.compile(schema("report")),
  plan: ajv.compile(schema("plan")),
  draft: ajv.compile(schema("draft")),
};

/** What is wrong with data by a schema; nothing where it fits. */
function misfits(name: keyof typeof validators, data: unknown): unknown {
  const validate = validators[name];
  return validate(data) ? [] : validate.errors;
}

describe.each(files)("%s", (file) => {
  const path = new URL(file, shared).pathname;

  it("has a report as its schema says", async () => {
    const { stdout } = await run(["check", path, "--format", "json", "--seconds", "1"]);
    const report = JSON.parse(stdout) as Review;
    expect(misfits("report", report)).toEqual([]);
    // All that is said can be said again from what was printed.
    expect(report.findings.map((finding) => sayFinding(finding))).toEqual(
      report.findings.map(({ message }) => message),
    );
    expect(report.causes.map((cause) => sayCause(cause))).toEqual(
      report.causes.map(({ message, why }) => ({ message, why })),
    );
  });

  it("has a plan as its schema says", async () => {
    const { stdout } = await run(["plan", path, "--format", "json"]);
    expect(misfits("plan", JSON.parse(stdout))).toEqual([]);
  });

  it("has a draft as its schema says", () => {
    const text = readFileSync(path, "utf8");
    const { draft } = file.endsWith(".wif") ? soundWif(text, file) : soundRecipe(text, file);
    expect(misfits("draft", JSON.parse(JSON.stringify(draft)))).toEqual([]);
  });
});

it.each(rules)(
  "what the rule $name finds is printed as the schema says, and can be said again",
  ({ name }) => {
    const found = rulePages[name].examples.fails.flatMap((example) => exampleReport(example).findings);
    expect(found.some(({ rule }) => rule === name)).toBe(true);
    for (const finding of JSON.parse(JSON.stringify(found)) as readonly Finding[]) {
      expect([finding.rule, isFinding(finding) || isFinding.errors]).toEqual([finding.rule, true]);
      expect(sayFinding(finding)).toBe(finding.message);
    }
  },
);

/** Whether data is a finding as the schema of the report says. */
const isFinding = ajv.compile({ $defs: schema("report").$defs, $ref: "#/$defs/finding" });

it("the schemas refuse what is none", () => {
  for (const name of ["report", "plan", "draft"] as const) expect(misfits(name, { file: 7 })).not.toEqual([]);
});
