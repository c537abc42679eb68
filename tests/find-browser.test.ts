import { describe, expect, it } from "vitest";
import { findBrowser, usualPlaces } from "./scripts/find-browser.mjs";

const machine = (platform: string, there: readonly string[], env: Record<string, string> = {}) => ({
  platform,
  env,
  home: platform === "darwin" ? "/Users/moth" : "/home/moth",
  downloaded: "/cache/chrome",
  exists: (path: string) => there.includes(path),
});

describe("the browser of the tests", () => {
  it("is the one that is named, before any other", () => {
    const there = ["/mine/chrome", "/usr/bin/chromium"];
    expect(findBrowser(machine("linux", there, { DRAWCORD_BROWSER: "/mine/chrome" }))).toBe("/mine/chrome");
    expect(() => findBrowser(machine("linux", there, { DRAWCORD_BROWSER: "/mine/none" }))).toThrow(
      "DRAWCORD_BROWSER names /mine/none, and there is no such file",
    );
  });

  it.each([
    ["linux", "/usr/bin/chromium", {}],
    ["linux", "/snap/bin/chromium", {}],
    ["linux", "/opt/here/google-chrome", { PATH: "/opt/here:/bin" }],
    ["darwin", "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome", {}],
    ["darwin", "/Users/moth/Applications/Chromium.app/Contents/MacOS/Chromium", {}],
    [
      "win32",
      "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
      { PROGRAMFILES: "C:\\Program Files" },
    ],
    [
      "win32",
      "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
      { PROGRAMFILES: "C:\\Program Files", "PROGRAMFILES(X86)": "C:\\Program Files (x86)" },
    ],
  ])("is found where %s keeps it: %s", (platform, path, env) => {
    expect(findBrowser(machine(platform, [path], env))).toBe(path);
  });

  it("is the downloaded one where the machine has none, and none where there is not even that", () => {
    expect(findBrowser(machine("linux", ["/cache/chrome"]))).toBe("/cache/chrome");
    expect(findBrowser(machine("win32", []))).toBeUndefined();
  });

  it("is looked for in every place only once", () => {
    const places = usualPlaces("linux", { PATH: "/usr/bin:/usr/bin" }, "/home/moth");
    expect(new Set(places).size).toBe(places.length);
  });
});
