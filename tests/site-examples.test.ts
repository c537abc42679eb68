import { rulePages, rules } from "@drawcord/check";
import { soundRecipe } from "@drawcord/files";
import { drawdownOf, weaveOf } from "@drawcord/ground";
import { checkRecipe } from "@drawcord/review";
import { describe, expect, it } from "vitest";
import { search } from "../docs/bench/causes.js";
import { edited } from "../docs/bench/edits.js";
import { look } from "../docs/bench/look.js";
import type { Found } from "../docs/bench/messages.js";
import { readBench } from "../docs/bench/reading.js";
import { exampleText } from "../docs/support/example-text.js";
import { weavesPage } from "../docs/support/weaves-page.js";

/** The rules that find something in a text, as the bench looks at it. */
async function foundIn(text: string): Promise<readonly string[]> {
  return look(text, await readBench(text), 0).marks.map(({ name }) => name);
}

describe("the examples of a rule, opened on the bench", () => {
  it.each(rules.map(({ name }) => name))("%s finds what its page says", async (name) => {
    const { fails, passes } = rulePages[name].examples;
    expect(fails.length).toBeGreaterThan(0);
    for (const example of fails) expect(await foundIn(exampleText(example)), example.title).toContain(name);
    for (const example of passes)
      expect(await foundIn(exampleText(example)), example.title).not.toContain(name);
  });
});

describe("the mends of the bench", () => {
  const text = `recipe: 1
title: Two pieces
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X (1-6 5-2)*4 1 X }
pieces:
  - name: points
    lifts: { picks: 4, rows: [1, 1-2, 1-3, 1-4, 1-5, 1-6, 1-5, 1-4, 1-3, 1-2, 1] }
  - name: waves
    lifts:
      picks: 4
      rows:
${[1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1].map((row, i) => `        - ${i === 13 ? 6 : row}`).join("\n")}
`;

  /** All that is told of a text in the end. */
  async function told(of: string): Promise<Extract<Found, { answer: "causes" }>> {
    const answers: Found[] = [];
    await search(of, (answer) => answers.push(answer));
    return answers.findLast((answer) => answer.answer === "causes")!;
  }

  it("are written into a later piece, and shown within their lines", async () => {
    const { causes } = await told(text);
    const [first] = causes.flatMap(({ mends }) => mends);
    expect(first?.shown[0]).toMatchObject({ out: "6", put: "4" });
    expect(text.split("\n")[first!.shown[0]!.line - 1]).toContain("- 6");
    const mended = edited(text, first!.edits);
    expect((await told(mended)).causes).toEqual([]);
    expect(mended.replaceAll(/\d/g, "")).toBe(text.replaceAll(/\d/g, ""));
  });

  it("are offered for what no slip accounts for, and mend it", async () => {
    let offered = 0;
    for (const rule of ["float-length", "open-cut", "treadle-without-tie"] as const) {
      for (const example of rulePages[rule].examples.fails) {
        if (typeof example.cloth === "string" || "shafts" in example.cloth) continue;
        const begun = exampleText(example);
        for (const { edits, rules: gone } of (await told(begun)).offers) {
          const mended = soundRecipe(edited(begun, edits), "mended");
          const found = checkRecipe(mended, { causes: false }).findings.map(
            ({ rule: name }) => name as string,
          );
          expect(found.filter((name) => gone.includes(name))).toEqual([]);
          offered++;
        }
      }
    }
    expect(offered).toBeGreaterThan(0);
  });
});

it("every weave of the gallery is drawn in two repeats each way", () => {
  const page = weavesPage();
  for (const name of ["plain", "twill 1/3", "satin 8 step 3"]) {
    const { columns, rows } = drawdownOf(weaveOf(name));
    expect(page).toContain(
      `aria-label="${name}, two repeats each way" width="150" height="150" viewBox="0 0 ${2 * columns} ${2 * rows}"`,
    );
  }
});
