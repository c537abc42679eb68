import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

const readme = readFileSync(join(import.meta.dirname, "../README.md"), "utf8");
const cwd = folder();
for (const [, file, text] of readme.matchAll(/^```(?:yaml recipe|text chart)=(\S+)\n([\s\S]*?)^```/gm)) {
  writeFileSync(join(cwd, file!), text!);
}
const calls = [...readme.matchAll(/^```console\n([\s\S]*?)^```/gm)].flatMap(([, example]) =>
  example!
    .split(/^(?=\$ )/m)
    .map((call) => [call.split("\n")[0]!.replace("$ drawcord ", ""), call.replace(/^.*\n/, "")] as const),
);

/** How many rules there are is not for the README to keep up with. */
const counted = (text: string) => text.replace(/\d+ of \d+ rules ran/, "rules ran");

it("the README shows the command at work", () => {
  expect(calls.length).toBeGreaterThan(1);
});

it.each(calls)("drawcord %s prints what the README says", async (line, printed) => {
  const { stdout, stderr } = await run(line.split(" "), { cwd });
  expect(counted(stdout + stderr)).toBe(counted(printed!));
});

it("the README's table names every command", async () => {
  const { stdout } = await run(["--help"]);
  const names = [...stdout.matchAll(/^ {2}(\w+) {2,}\S/gm)].map(([, name]) => name!);
  expect(names).toContain("check");
  for (const name of names) expect(readme).toContain(`\`drawcord ${name}`);
});

describe("the README of the project", () => {
  const project = readFileSync(join(import.meta.dirname, "../../../README.md"), "utf8");
  const recipes = [...project.matchAll(/^```yaml\n([\s\S]*?)^```/gm)].map(([, recipe]) => recipe!);
  const lines = [...project.matchAll(/^npx drawcord ([^#\n]*)/gm)].map(([, line]) => line!.trim());

  it("shows a recipe that checks clean", async () => {
    expect(recipes.length).toBeGreaterThan(0);
    for (const stdin of recipes) expect(await run(["check", "-"], { stdin })).toMatchObject({ status: 0 });
  });

  it("calls only commands and options that there are", async () => {
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(await run([...line.split(" "), "--help"])).toMatchObject({ status: 0 });
  });
});
