import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { sayCause } from "@drawcord/causes";
import { type Finding, rulePages, rules, type ShaftDraft, sayFinding } from "@drawcord/check";
import { soundRecipe, soundWif } from "@drawcord/files";
import type { Review } from "@drawcord/review";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { exampleReport } from "../../check/test/example-report.js";
import { wholeRecipe } from "../../files/test/samples.js";
import { run } from "./run.js";
import { type KeySchema, keysOf, tallyKeys } from "./schema-keys.js";

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

describe("a schema and what is printed name the same keys", () => {
  /** Keys of the schema that none of the data has, and keys of the data that the schema does not name. */
  const apart = (name: string, data: readonly unknown[]) => {
    const { found, strays } = tallyKeys(schema(name) as KeySchema, data);
    return {
      unprinted: [...keysOf(schema(name) as KeySchema)].filter((key) => !found.has(key)),
      strays: [...strays],
    };
  };

  it("of a plan", async () => {
    const folder = mkdtempSync(join(tmpdir(), "drawcord-plan-"));
    const whole = join(folder, "whole.recipe.yaml");
    writeFileSync(whole, wholeRecipe);
    const plans: unknown[] = [];
    for (const path of [...files.map((file) => new URL(file, shared).pathname), whole]) {
      plans.push(JSON.parse((await run(["plan", path, "--format", "json"])).stdout));
    }
    rmSync(folder, { recursive: true });
    expect(apart("plan", plans)).toEqual({ unprinted: [], strays: [] });
  });

  it("of a draft", () => {
    const rich: ShaftDraft = {
      ...{ title: "Towel", author: "A student", notes: ["one"], shafts: 2, rising: true },
      threading: [[1], [2]],
      shedding: { kind: "lift-plan", liftPlan: [[1], [2]] },
      warp: { unit: "centimeters", spacing: { each: [0.1, 0.2] }, thickness: { all: 0.1 } },
      weft: { colours: ["#000000", "#ffffff"] },
    };
    const read = files.map((file) => {
      const text = readFileSync(new URL(file, shared), "utf8");
      return file.endsWith(".wif") ? soundWif(text, file).draft : soundRecipe(text, file).draft;
    });
    const data = [...read, rich].map((draft) => JSON.parse(JSON.stringify(draft)) as unknown);
    expect(apart("draft", data)).toEqual({ unprinted: [], strays: [] });
  });

  it("of a report, but for what only a slip of one kind has to say", async () => {
    const reports: unknown[] = rules.flatMap(({ name }) => rulePages[name].examples.fails.map(exampleReport));
    const faulty = new URL("recipes/faulty-runner.recipe.yaml", shared).pathname;
    reports.push(JSON.parse((await run(["check", faulty, "--format", "json", "--seconds", "1"])).stdout));
    const { strays } = apart("report", JSON.parse(JSON.stringify(reports)) as readonly unknown[]);
    expect(strays.filter((key) => !/^cause\.(slip|changes|reason|rivals)\./.test(key))).toEqual([]);
  });
});
