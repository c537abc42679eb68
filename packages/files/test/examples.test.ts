import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import * as grid from "@drawcord/grid";
import { describe, expect, it } from "vitest";
import * as files from "../src/index.js";
import { leastRecipe } from "./samples.js";

/** What an example may name besides what its package exports. */
const unitDraft = files.readRecipe(leastRecipe, "least").draft;
const given = { text: leastRecipe, unitDraft, draft: files.shaftDraftOf(unitDraft) };

const home = fileURLToPath(new URL("..", import.meta.url));

interface Example {
  readonly file: string;
  readonly expression: string;
  readonly result: string;
}

const examples: readonly Example[] = readdirSync(`${home}/src`, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .flatMap((file) =>
    [...readFileSync(`${home}/src/${file}`, "utf8").matchAll(/@example (.+) \/\/ (.+)/g)].map((match) => ({
      file,
      expression: match[1]!,
      result: match[2]!,
    })),
  );

function run(scope: object, code: string): unknown {
  return new Function(...Object.keys(scope), code)(...Object.values(scope));
}

describe("the examples of the docstrings", () => {
  it("are found", () => {
    expect(examples.length).toBeGreaterThan(7);
  });

  it.each(examples)("$file: $expression", async ({ file, expression, result }) => {
    const module: object = await import(`${home}/src/${file}`);
    const scope = { ...grid, ...files, ...module, ...given };
    expect(run(scope, `return (${expression})`)).toEqual(run(scope, `return (${result})`));
  });
});

it("the example of the README does what it says", () => {
  const readme = readFileSync(`${home}/README.md`, "utf8");
  const code = /```ts\n([\s\S]+?)```/.exec(readme)![1]!.replace(/^import .*$/gm, "");
  const claims: [found: unknown, claimed: unknown][] = [];
  const claiming = code.replace(/^(.*?)([\w.]+(?:\(.*\))?(?:\.\w+)*); \/\/ (.+)$/gm, "$1claim($2, $3);");
  run({ ...files, claim: (...claim: [unknown, unknown]) => claims.push(claim) }, claiming);
  expect(claims).toHaveLength(4);
  for (const [found, claimed] of claims) expect(found).toEqual(claimed);
});
