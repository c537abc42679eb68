import { describe, expect, it } from "vitest";
import { type Example, rulePages, rules } from "../src/index.js";
import { exampleReport } from "./example-report.js";

describe.each(rules)("the rule $name", (rule) => {
  const page = rulePages[rule.name];
  const found = (example: Example) =>
    exampleReport(example).findings.filter((finding) => finding.rule === rule.name);

  it("says what it finds, why it matters and what to do, each in sentences", () => {
    expect(rule.name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(page.summary).toMatch(/^[a-z].*[^.]$/);
    for (const text of [page.meaning, page.reason, page.mend]) expect(text).toMatch(/^[A-Z].*\.$/);
    expect(page.source).not.toBe("");
  });

  it("has examples that pass and examples that fail", () => {
    expect(page.examples.passes.length).toBeGreaterThan(0);
    expect(page.examples.fails.length).toBeGreaterThan(0);
  });

  it.each(page.examples.passes)("passes $title", (example) => {
    expect(exampleReport(example).rules.ran).toContain(rule.name);
    expect(found(example)).toEqual([]);
  });

  it.each(page.examples.fails)("finds $title", (example) => {
    const findings = found(example);
    expect(findings).not.toEqual([]);
    for (const { message, severity } of findings) {
      expect(severity).toBe(rule.severity);
      expect(message).toMatch(/^[a-z0-9].*[^.]$/);
      expect(message).not.toMatch(/undefined|NaN|Infinity/);
    }
  });
});

describe("the list of rules", () => {
  it("names each once", () => {
    expect(new Set(rules.map((rule) => rule.name)).size).toBe(rules.length);
  });
});
