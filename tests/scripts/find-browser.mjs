// Where the tests find a browser: the one that DRAWCORD_BROWSER names, one that this machine has where Linux, macOS and
// Windows keep them, or the one that playwright-core downloaded.
import { existsSync } from "node:fs";
import { homedir } from "node:os";
import { posix, win32 } from "node:path";
import { chromium } from "playwright-core";

/** What a person without a browser is told. */
export const noBrowser =
  'the tests need a browser and found none: install Chrome, Chromium or Edge, or name one in DRAWCORD_BROWSER, or let "npm run browser" fetch one';

/**
 * Where a system keeps Chrome, Chromium and Edge.
 * @param {string} platform as Node names it
 * @param {Readonly<Record<string, string | undefined>>} env
 * @param {string} home
 * @returns {readonly string[]}
 */
export function usualPlaces(platform, env, home) {
  if (platform === "win32") {
    const roots = [env["PROGRAMFILES"], env["PROGRAMFILES(X86)"], env["LOCALAPPDATA"]];
    const programs = [
      "Google\\Chrome\\Application\\chrome.exe",
      "Chromium\\Application\\chrome.exe",
      "Microsoft\\Edge\\Application\\msedge.exe",
    ];
    return programs.flatMap((program) =>
      roots.flatMap((root) => (root === undefined ? [] : [win32.join(root, program)])),
    );
  }
  if (platform === "darwin") {
    const programs = ["Google Chrome", "Chromium", "Microsoft Edge"];
    return programs.flatMap((name) =>
      ["/Applications", posix.join(home, "Applications")].map((root) =>
        posix.join(root, `${name}.app`, "Contents", "MacOS", name),
      ),
    );
  }
  const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
  const folders = (env["PATH"] ?? "").split(":").filter((folder) => folder !== "");
  const all = [...new Set([...folders, "/usr/bin", "/usr/local/bin", "/snap/bin"])];
  return names.flatMap((name) => all.map((folder) => posix.join(folder, name)));
}

/**
 * The browser of this machine.
 * @param {{ env?: Readonly<Record<string, string | undefined>>, platform?: string, home?: string, downloaded?: string, exists?: (path: string) => boolean }} [machine]
 * @returns {string | undefined} its path, or undefined where there is none
 * @throws {Error} where DRAWCORD_BROWSER names a file that is not there
 */
export function findBrowser(machine = {}) {
  const { env = process.env, platform = process.platform, home = homedir(), exists = existsSync } = machine;
  const named = env["DRAWCORD_BROWSER"];
  if (named !== undefined && named !== "") {
    if (exists(named)) return named;
    throw new Error(`DRAWCORD_BROWSER names ${named}, and there is no such file`);
  }
  const downloaded = machine.downloaded ?? chromium.executablePath();
  return [...usualPlaces(platform, env, home), downloaded].find((path) => exists(path));
}

/**
 * The browser of this machine, for a test that cannot do without.
 * @returns {string} its path
 * @throws {Error} one sentence that says what to do
 */
export function browserForTests() {
  const found = findBrowser();
  if (found === undefined) throw new Error(noBrowser);
  return found;
}
