import { parseQuantity } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";
import { check, findingsOf, type ProjectFacts, projectNumbers, rules } from "../src/index.js";
import { rulesOfNumbers } from "../src/number-rules.js";
import { tenByTen } from "../src/numbers/ten-by-ten.js";

const read = (text: string) => parseQuantity(text);
const facts: ProjectFacts = { ends: 0, picks: 0, pickSett: read("4 per cm") };
const looked = (project: ProjectFacts) => check(tenByTen, { project: projectNumbers(project) });

describe("the rules of numbers", () => {
  it("stand in the list of all rules under their own names and levels", () => {
    for (const { changes, name, severity } of rulesOfNumbers) {
      expect(rules.find((rule) => rule.name === name)).toMatchObject({ changes, severity, ofNumbers: true });
    }
    expect(rulesOfNumbers).toHaveLength(10);
  });

  it("say why they do not look where nothing is said of a project", () => {
    const { ran, skipped } = check(tenByTen).rules;
    for (const { name } of rulesOfNumbers) {
      expect(ran).not.toContain(name);
      expect(skipped).toContainEqual({ rule: name, reason: "nothing is said of the project" });
    }
  });

  it("look where there is one", () => {
    const { ran } = looked({ ...facts, length: read("10 cm") }).rules;
    for (const { name } of rulesOfNumbers) expect(ran).toContain(name);
  });
});

describe("a length that the rows do not make", () => {
  const shrinkage = { length: read("0 %") };

  it("names the rows that are too many", () => {
    const report = looked({ ...facts, shrinkage, length: read("8 cm") });
    expect(findingsOf(report, "length-rows")).toMatchObject([{ measured: 40, limit: 32, rows: [9, 10] }]);
  });

  it("says how many are missing, and after which", () => {
    const report = looked({ ...facts, shrinkage, length: read("12 cm") });
    const [found] = findingsOf(report, "length-rows");
    expect(found!.rows).toBeUndefined();
    expect(found!.message).toContain("2 rows are missing after row 10");
  });

  it("names the repeats that would make it", () => {
    const woven = {
      order: [
        { block: "hem", changes: [] },
        { block: "leaf", changes: [{ change: "repeated", times: 4 } as const] },
      ],
      blocks: { hem: [[1], []], leaf: [[1], []] },
      over: 0,
    };
    const project = projectNumbers({ ...facts, shrinkage, length: read("8 cm") });
    const [found] = findingsOf(check(tenByTen, { project, woven }), "length-rows");
    expect(found!.blocks).toEqual({ block: "leaf", times: 4, other: 3, off: 0 });
    expect(found!.message).toContain("; leaf*3 in place of leaf*4 makes it");
  });
});

it("a stock is compared with all that is woven of its yarn, under whatever names, as the plan's list to buy is", () => {
  const yarn = { yarn: "20/2 Ne", fibre: "cotton" };
  const project: ProjectFacts = {
    ...facts,
    sett: read("14 per cm"),
    warp: { ...yarn, stock: read("47 m") },
    wefts: [{ ...yarn, name: "weft", picks: 40 }],
    waste: read("1 m"),
  };
  const alone = looked({ ...project, wefts: [] });
  const both = looked(project);
  expect(findingsOf(alone, "short-stock")).toEqual([]);
  // 40 ends of 1.11 m and 40 picks of 28.6 mm are 45.5 m, and 5 % are spared.
  expect(findingsOf(both, "short-stock")).toMatchObject([
    {
      yarn: "warp",
      unit: "m",
      measured: 47,
      limit: expect.closeTo(1.05 * (40 * 1.11 + 40 * 0.02857), 2) as number,
    },
  ]);
});

it("more shrinkage is usual of wool than of linen", () => {
  const of = (fibre: string, share: string) =>
    findingsOf(
      looked({ ...facts, warp: { yarn: "16 lea", fibre }, shrinkage: { length: read(share) } }),
      "unusual-number",
    ).map(({ limit }) => limit);
  expect(of("linen", "15 %")).toEqual([]);
  expect(of("linen", "30 %")).toEqual([15]);
  expect(of("wool", "30 %")).toEqual([]);
  expect(of("wool", "60 %")).toEqual([50]);
});
