import { readdirSync, readFileSync } from "node:fs";
import { soundRecipe, soundWif } from "@drawcord/files";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "./run.js";

const shared = new URL("../../../shared/", import.meta.url);
const files = ["recipes", "drafts"].flatMap((folder) =>
  readdirSync(new URL(folder, shared))
    .filter((name) => /\.(recipe\.yaml|wif)$/.test(name))
    .map((name) => `${folder}/${name}`),
);

const schema = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../files/${name}.schema.json`, import.meta.url), "utf8")) as object;
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
    expect(misfits("report", JSON.parse(stdout))).toEqual([]);
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

it("the schemas refuse what is none", () => {
  for (const name of ["report", "plan", "draft"] as const) expect(misfits(name, { file: 7 })).not.toEqual([]);
});
