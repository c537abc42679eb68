import { describe, expect, expectTypeOf, it } from "vitest";
import {
  type Finding,
  type FindingSentences,
  findingSentences,
  mistakeSentences,
  rulePages,
  rules,
  sayFinding,
} from "../src/index.js";
import { exampleReport } from "./example-report.js";

describe.each(rules)("the rule $name", ({ name }) => {
  const { fails, passes } = rulePages[name].examples;
  const found = [...fails, ...passes].flatMap((example) => exampleReport(example).findings);

  it("says a finding again from its data alone", () => {
    expect(found.some(({ rule }) => rule === name)).toBe(true);
    for (const finding of found) {
      const { message: _, ...data } = JSON.parse(JSON.stringify(finding)) as Finding;
      expect(sayFinding({ ...data, message: "" } as Finding)).toBe(finding.message);
    }
  });
});

it("the keys of the sentences are the names of the rules", () => {
  expect(Object.keys(findingSentences)).toEqual([...rules.map(({ name }) => name), "pieces"]);
});

it("a translation that lacks a rule, or has one too many, is of another type", () => {
  const { layers: _, ...lacking } = findingSentences;
  expectTypeOf(lacking).not.toExtend<FindingSentences>();
  // @ts-expect-error: there is no such rule
  const more: FindingSentences = { ...findingSentences, "no-rule": () => "" };
  expect(Object.keys(more)).toHaveLength(rules.length + 2);
});

it("says findings in the words of another table, behind the name of their piece", () => {
  const knots: FindingSentences = {
    ...findingSentences,
    "unknown-shaft": ({ rows = [0, 0], shaft }) => `Schaft ${shaft} trägt nichts (Reihe ${rows[0]})`,
  };
  const finding: Finding = {
    rule: "unknown-shaft",
    severity: "error",
    message: "",
    harness: "pattern",
    shaft: 3,
    rows: [2, 2],
    piece: "winter",
  };
  expect(sayFinding(finding, knots)).toBe("winter: Schaft 3 trägt nichts (Reihe 2)");
  expect(() => sayFinding({ ...finding, rule: "no-rule" } as unknown as Finding)).toThrow(
    expect.objectContaining({ code: "unknown-rule", facts: { rule: "no-rule" } }),
  );
});

it("the keys of mistakes are held", () => {
  expect(Object.keys(mistakeSentences)).toMatchInlineSnapshot(`
    [
      "inches-for-centimetres",
      "centimetres-for-inches",
      "centimetres-for-millimetres",
      "millimetres-for-centimetres",
      "inches-and-centimetres",
      "finished-length-for-woven",
      "finished-width-for-reed",
      "hems-left-out",
      "hems-twice",
      "draw-in-forgotten",
      "inch-for-ten-centimetres",
      "wash-forgotten",
      "picks-for-rows",
      "rows-for-picks",
      "units-for-ends",
      "dents-for-ends",
      "selvedges-left-out",
      "selvedges-twice",
      "selvedges-counted",
      "draw-in-twice",
      "draw-in-added-twice",
      "shrinkage-twice",
      "other-count",
      "other-number",
      "other-sley",
    ]
  `);
});
