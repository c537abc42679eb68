import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import * as yarn from "../src/index.js";

it("the README names everything that the package exports, and nothing else", () => {
  const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
  const table = readme.slice(readme.indexOf("| about |"), readme.indexOf("A weave is anything"));
  const named = [...table.matchAll(/`([A-Za-z_]+)`/g)]
    .map(([, name]) => name!)
    .filter((name) => name !== "code");
  expect(named.sort()).toEqual(Object.keys(yarn).sort());
});
