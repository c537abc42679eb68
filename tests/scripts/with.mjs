// Runs vitest with variables that are set where whoever asks has not set them, in any system's shell:
// `node tests/scripts/with.mjs SLIPS=2 packages/causes/test/slips`.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";

const root = join(import.meta.dirname, "../..");
const args = process.argv.slice(2);
const defaults = args.filter((arg) => arg.includes("=")).map((arg) => arg.split("="));
const tests = args.filter((arg) => !arg.includes("="));

const { status } = spawnSync(
  process.execPath,
  [join(root, "node_modules/vitest/vitest.mjs"), "run", ...tests],
  { cwd: root, stdio: "inherit", env: { ...Object.fromEntries(defaults), ...process.env } },
);
process.exitCode = status ?? 1;
