import { soundRecipe } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { leastRecipe } from "../../files/test/samples.js";
import { checkRecipe } from "../src/check-recipe.js";
import { ruleProblems } from "../src/rule-names.js";

const checked = (line: string) => () => checkRecipe(soundRecipe(`${leastRecipe}${line}\n`, "r"));

describe("a rule that there is not is answered at its name", () => {
  it("in a waiver, with the nearest", () => {
    expect(checked("waive: [{ rule: open-cuts, reason: so }]")).toThrow(
      'r:5:17: waive, item 1.rule is open-cuts; did you mean "open-cut"?',
    );
  });

  it("all of them, each by its own letters, in the order of the sections", () => {
    const text = `${leastRecipe}limits: { levels: { thin: off, open-cut: error } }\nwaive: [{ rule: open-cuts, reason: so }]\n`;
    const problems = ruleProblems(soundRecipe(text, "r"));
    expect(problems.map(({ code, end, offset }) => [code, text.slice(offset, end.offset)])).toEqual([
      ["unknown-key", "thin"],
      ["bad-value", "open-cuts"],
    ]);
    expect(ruleProblems(soundRecipe(leastRecipe, "r"))).toEqual([]);
  });

  it.each(["__proto__", "constructor", "hasOwnProperty", "toString", "thin"])("in levels: %s", (name) => {
    expect(checked(`limits: { levels: { ${name}: off } }`)).toThrow(`unknown key "${name}" in limits.levels`);
  });
});
