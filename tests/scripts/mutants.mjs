// Changes the sources of a package in thousands of small ways, one at a time, and counts the changes that its own tests
// notice: `npm run mutants -- grid check/rules`, or all five packages that are held to it.
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { Stryker } from "@stryker-mutator/core";

const held = ["grid", "ground", "units", "check", "yarn"];
/** At least this share of the changes must be noticed, in percent. */
const LEAST = 90;

/** What is written by a program from something else, and tested there. */
const WRITTEN = ["packages/yarn/src/formulas/trees.ts"];

const asked = process.argv.slice(2);
const unknown = asked.find((part) => !held.includes(part.split("/")[0]));
if (unknown !== undefined) {
  console.error(
    `no mutants of "${unknown}"; there are ${held.join(", ")}, and parts of them such as check/rules`,
  );
  process.exit(2);
}

for (const part of asked.length > 0 ? asked : held) {
  const [name, ...inside] = part.split("/");
  const files = join(`packages/${name}/src`, ...inside).replaceAll("\\", "/");
  process.env.DRAWCORD_MUTANTS = name;
  const mutants = await new Stryker({
    mutate: [files.endsWith(".ts") ? files : `${files}/**/*.ts`, ...WRITTEN.map((file) => `!${file}`)],
    testRunner: "package",
    plugins: [fileURLToPath(new URL("../mutants/runner.mjs", import.meta.url))],
    coverageAnalysis: "perTest",
    ignorePatterns: ["**/dist", ".stryker-tmp", "coverage", "docs"],
    // What stands at the head of a module is data; a change of it would need all tests from the start.
    ignoreStatic: true,
    concurrency: Number(process.env.DRAWCORD_CORES ?? 2),
    timeoutMS: 600_000,
    reporters: [
      "clear-text",
      "progress-append-only",
      ...(process.env.DRAWCORD_MUTANTS_REPORT ? ["json"] : []),
    ],
    jsonReporter: { fileName: process.env.DRAWCORD_MUTANTS_REPORT },
    clearTextReporter: { logTests: false, allowColor: false },
    thresholds: { high: 95, low: LEAST, break: LEAST },
    tempDirName: `.stryker-tmp/${name}`,
  }).runMutationTest();
  const counted = mutants.filter(({ status }) => status !== "Ignored" && status !== "CompileError");
  const killed = counted.filter(({ status }) => status === "Killed" || status === "Timeout");
  const share = (100 * killed.length) / counted.length;
  console.log(`${part}: ${killed.length} of ${counted.length} changes were noticed, ${share.toFixed(1)} %`);
  if (share < LEAST) process.exitCode = 1;
}
