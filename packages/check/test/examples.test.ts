import { readdirSync, readFileSync } from "node:fs";
import * as grid from "@drawcord/grid";
import * as units from "@drawcord/units";
import { describe, expect, it } from "vitest";
import * as check from "../src/index.js";
import * as integrity from "../src/measure/integrity.js";
import * as kinds from "../src/measure/kinds.js";
import * as patches from "../src/measure/patches.js";
import * as threads from "../src/measure/threads.js";
import * as symmetry from "../src/symmetry.js";
import * as words from "../src/words.js";

/** What an example may name besides exports. */
const draft: units.UnitDraft = {
  ground: {
    shafts: 2,
    threading: [1, 2],
    steps: [
      { raise: [1], sink: [2] },
      { raise: [2], sink: [1] },
    ],
  },
  unitEnds: 2,
  threading: [[1], [2]],
  lifts: [[1], [2]],
  picksPerRow: 2,
};
const scope = {
  ...grid,
  ...units,
  ...check,
  ...integrity,
  ...kinds,
  ...patches,
  ...threads,
  ...symmetry,
  ...words,
  draft,
};

/** The value of an expression over the names in scope. */
function value(expression: string): unknown {
  return new Function(...Object.keys(scope), `return (${expression});`)(...Object.values(scope));
}

const sources = new URL("../src/", import.meta.url);
const examples = readdirSync(sources, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .flatMap((file) =>
    [...readFileSync(new URL(file, sources), "utf8").matchAll(/@example (.+) \/\/ (.+)/g)].map(
      ([, expression, result]) => [file, expression!, result!] as const,
    ),
  );

describe("the examples of the docstrings", () => {
  it("are found", () => {
    expect(examples.length).toBeGreaterThan(9);
  });

  it.each(examples)("%s: %s", (_, expression, result) => {
    expect(value(expression)).toEqual(value(result));
  });
});

describe("the example of the README", () => {
  it("finds what it says", () => {
    const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
    const code = /```js\n([\s\S]+?)```/.exec(readme)![1]!.replace(/^import .*$/gm, "");
    const [, statements, expression, result] = /^([\s\S]+)\n(.+); \/\/ (.+)\s*$/.exec(code)!;
    const run = new Function(...Object.keys(scope), `${statements}; return [${expression}, ${result}];`);
    const [found, expected] = run(...Object.values(scope)) as [string, string];
    expect(found).toBe(expected);
  });
});
