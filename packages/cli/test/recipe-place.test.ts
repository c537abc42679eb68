import type { Finding } from "@drawcord/check";
import { describe, expect, it } from "vitest";
import { run } from "./run.js";

/** Where each finding of a recipe points to: its rule, and the text from there to the end of the line. */
async function pointed(recipe: string): Promise<readonly string[]> {
  const { stdout } = await run(["check", "-", "--format", "json"], { stdin: recipe });
  const { findings } = JSON.parse(stdout) as { findings: (Finding & { line: number; column: number })[] };
  const lines = recipe.split("\n");
  return findings.map(({ column, line, rule }) => `${rule}: ${lines[line - 1]!.slice(column - 1)}`);
}

const recipe = (threading: string, lifts: string) => `recipe: 1
ground: { weave: broken twill }
units:
  ends: 4
  threading: ${threading}
limits:
  levels: { idle-shaft: off, open-cut: off, thin-area: off, uneven-take-up: off }
lifts:
  picks: 4
${lifts}`;

describe("a finding points", () => {
  it("at the line of a picture that draws the row", async () => {
    const text = recipe("X 1-3 2 1 X", "  picture: |\n    #...\n    .#.#\n    #...\n");
    expect(await pointed(text)).toEqual(["unknown-shaft: .#.#"]);
  });

  it("at the row within its block", async () => {
    const lifts = `  blocks:
    moth:
      rows:
        - 1
        - 2 9
        - 3
  order:
    - moth upside-down
    - moth
`;
    expect(await pointed(recipe("X 1-3 2 1 X", lifts))).toEqual(["unknown-shaft: 2 9"]);
  });
});
