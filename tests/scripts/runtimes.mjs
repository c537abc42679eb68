/**
 * Runs one program that uses every package in each supported runtime, and compares the bytes that come out. A runtime that
 * is not on this machine is fetched by npx; one that cannot be had is named, and nothing is said of it.
 */
import { spawnSync } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const program = join(dirname(fileURLToPath(import.meta.url)), "runtimes-program.mjs");
const npx = (name, ...args) => ["npx", "--yes", name, ...args, program];

const runtimes = {
  "this Node": [process.execPath, program],
  "Node 22": npx("node@22"),
  "Node 24": npx("node@24"),
  Bun: npx("bun"),
  Deno: npx("deno", "run", "--allow-all"),
};

const said = new Map();
for (const [name, [command, ...args]] of Object.entries(runtimes)) {
  const { status, stdout, stderr } = spawnSync(command, args, { encoding: "utf8", timeout: 240_000 });
  const found = status === 0 ? stdout.trim().split("\n").at(-1) : undefined;
  if (found !== undefined) said.set(name, found);
  console.log(`${name.padEnd(10)} ${found ?? `not run: ${stderr.trim().split("\n").at(-1)}`}`);
}
const all = new Set(said.values());
console.log(all.size === 1 ? `the same bytes in ${said.size} runtimes` : "the bytes differ");
process.exitCode = all.size === 1 ? 0 : 1;
