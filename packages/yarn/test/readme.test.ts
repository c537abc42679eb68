import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as yarn from "../src/index.js";
import { evaluateExample } from "./examples.js";

const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
const examples = [...readme.matchAll(/^(\S.*); \/\/ (.+)$/gm)].map(([, code, expected]) => ({
  code: code!,
  expected: expected!,
}));

describe("the README", () => {
  it("holds examples", () => {
    expect(examples.length).toBeGreaterThan(4);
  });

  it.each(examples)("$code", ({ code, expected }) => {
    expect(evaluateExample(code, yarn)).toEqual(evaluateExample(expected, yarn));
  });

  it("names everything that the package exports, and nothing else", () => {
    const table = readme.slice(readme.indexOf("| about |"), readme.indexOf("A weave is anything"));
    const named = [...table.matchAll(/`([A-Za-z]+)`/g)]
      .map(([, name]) => name!)
      .filter((name) => name !== "code");
    expect(named.sort()).toEqual(Object.keys(yarn).sort());
  });
});
