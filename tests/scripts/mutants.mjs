// Changes the sources of a package in thousands of small ways, one at a time, and counts the changes that its own tests
// notice: `npm run mutants -- grid ground`, or all five that are held to it. It takes minutes a package.
import process from "node:process";
import { Stryker } from "@stryker-mutator/core";

const held = ["grid", "ground", "units", "check", "yarn"];
/** At least this share of the changes must be noticed, in percent. */
const LEAST = 90;

const asked = process.argv.slice(2);
const unknown = asked.find((name) => !held.includes(name));
if (unknown !== undefined) {
  console.error(`no mutants of "${unknown}"; there are ${held.join(", ")}`);
  process.exit(2);
}

for (const name of asked.length > 0 ? asked : held) {
  process.env.DRAWCORD_MUTANTS = name;
  const mutants = await new Stryker({
    mutate: [`packages/${name}/src/**/*.ts`],
    testRunner: "vitest",
    plugins: ["@stryker-mutator/vitest-runner"],
    vitest: { configFile: "vitest.mutants.config.ts" },
    coverageAnalysis: "perTest",
    ignorePatterns: ["**/dist", ".stryker-tmp", "coverage"],
    ignoreStatic: true,
    concurrency: 2,
    reporters: ["clear-text"],
    clearTextReporter: { logTests: false, allowColor: false },
    thresholds: { high: 95, low: LEAST, break: LEAST },
    tempDirName: ".stryker-tmp",
  }).runMutationTest();
  const counted = mutants.filter(({ status }) => status !== "Ignored" && status !== "CompileError");
  const killed = counted.filter(({ status }) => status === "Killed" || status === "Timeout");
  const share = (100 * killed.length) / counted.length;
  console.log(`${name}: ${killed.length} of ${counted.length} changes were noticed, ${share.toFixed(1)} %`);
  if (share < LEAST) process.exitCode = 1;
}
