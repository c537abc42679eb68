// Sees to it that there is a browser for the tests: what this machine has, else Debian's chromium where it may be
// installed, else playwright's own download where the net allows it.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import process from "node:process";
import { findBrowser, noBrowser } from "./find-browser.mjs";

/** Whether a program ran to its end; what it complains of is not printed, for the next way may do. */
function ran(program, ...args) {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  return spawnSync(program, args, { stdio: "ignore", env }).status === 0;
}

function isFound() {
  try {
    return findBrowser() !== undefined;
  } catch (error) {
    console.error(error.message);
    process.exit(1);
  }
}

const mayInstall = existsSync("/usr/bin/apt-get") && process.getuid?.() === 0;
const fetcher = join(
  dirname(createRequire(import.meta.url).resolve("playwright-core/package.json")),
  "cli.js",
);
const ways = [
  () => {
    if (!mayInstall) return;
    console.log("installing Debian's chromium for the tests");
    const quiet = ["-y", "-qq", "--no-install-recommends"];
    return ran("apt-get", "update", "-qq") && ran("apt-get", "install", ...quiet, "chromium");
  },
  () => {
    console.log("fetching a browser for the tests");
    return ran(process.execPath, fetcher, "install", "chromium");
  },
];

for (const way of ways) if (!isFound()) way();
if (!isFound()) {
  console.error(noBrowser);
  process.exit(1);
}
