// Sees to it that there is a browser for the tests: Debian's chromium, or the one that DRAWCORD_BROWSER names.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const browser = process.env.DRAWCORD_BROWSER ?? "/usr/bin/chromium";

function run(program, ...args) {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const { status, error } = spawnSync(program, args, { stdio: ["ignore", "ignore", "inherit"], env });
  if (error !== undefined || status !== 0) fail(`"${[program, ...args].join(" ")}" did not work`);
}

function fail(why) {
  console.error(`the tests need a browser at ${browser}: ${why}`);
  process.exit(1);
}

if (!existsSync(browser)) {
  if (process.env.DRAWCORD_BROWSER !== undefined) fail("DRAWCORD_BROWSER names none");
  if (!existsSync("/usr/bin/apt-get")) fail("install Chromium and name it in DRAWCORD_BROWSER");
  console.log("installing Debian's chromium for the tests");
  run("apt-get", "update", "-qq");
  run("apt-get", "install", "-y", "-qq", "--no-install-recommends", "chromium");
  if (!existsSync(browser)) fail("it was installed, and is not there");
}
