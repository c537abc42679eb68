/** Cloths at the edge of what there is: no picks, one thread, one state all over, and the largest that are worked out. */
import { fromCells, fromText } from "@drawcord/grid";
import type { UnitDraft } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { check, checkGrid, projectNumbers, type Report, rules } from "../src/index.js";
import { slowDraft } from "./slow-twin.js";

const twill: UnitDraft["ground"] = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
};

/** All limits set, so that every rule looks. */
const limits = { float: { threads: 3 }, stretch: { picks: 1 }, area: { squares: 1 }, openCuts: 0 };

const named = ({ findings }: Report) => [...new Set(findings.map(({ rule }) => rule))];

function numbersOf({ size, floats, cut, balance, integrity }: Report) {
  const { looseEnds, loosePicks } = integrity;
  return { size, floats, cut, balance, integrity: { looseEnds, loosePicks } };
}

describe("a draft", () => {
  const one = { ground: twill, unitEnds: 4, picksPerRow: 4 };
  it.each([
    [
      "of one end and one pick, drawn",
      { ...one, threading: [[1]], lifts: [[1]], unitEnds: 1, picksPerRow: 1 },
    ],
    [
      "of one end and one pick, undrawn",
      { ...one, threading: [[]], lifts: [[]], unitEnds: 1, picksPerRow: 1 },
    ],
    ["of one row", { ...one, threading: [[], [1], [2], [1], []], lifts: [[1]] }],
    ["of one unit", { ...one, threading: [[1]], lifts: [[], [1], []] }],
    ["of one pick", { ...one, threading: [[], [1], []], lifts: [[1]], picksPerRow: 1 }],
    [
      "that draws everything",
      {
        ...one,
        threading: [[1], [1, 2], [2]],
        lifts: [
          [1, 2],
          [1, 2],
        ],
      },
    ],
    ["that draws nothing", { ...one, threading: [[1], [2]], lifts: [[], []] }],
    ["of static units only", { ...one, threading: [[], []], lifts: [[], []] }],
  ] satisfies [string, UnitDraft][])(
    "%s has the numbers of a plain count, and every rule looks at it",
    (_, draft) => {
      for (const repeat of ["none", "both"] as const) {
        const report = check(draft, { limits, repeat, project: projectNumbers({ ends: 0, picks: 0 }) });
        expect(numbersOf(report)).toEqual(slowDraft(draft, repeat));
        expect(report.rules.ran).toEqual(rules.flatMap((rule) => ("plainOnly" in rule ? [] : [rule.name])));
        expect(JSON.stringify(report)).not.toMatch(/null|NaN|Infinity/);
      }
    },
  );

  it("that draws nothing, or everything, is the ground alone or its counterpart: sound, and of one area", () => {
    const all = check({ ...one, threading: [[1], [1]], lifts: [[1], [1]] });
    expect(all).toMatchObject({
      ok: true,
      balance: { drawnShare: 1, warpFaceShare: 0.75, areas: { count: 1 } },
    });
    expect(named(all)).toEqual(["unlike-sides"]);
    const none = check({ ...one, threading: [[1], [1]], lifts: [[], []] });
    expect(none).toMatchObject({
      ok: true,
      balance: { drawnShare: 0, warpFaceShare: 0.25, areas: { count: 1 } },
    });
    expect(named(none)).toEqual(["idle-shaft", "unlike-sides"]);
  });

  it("of more than 2^31 interlacements is refused before it is worked out, with its numbers", () => {
    const wide = { ...one, threading: [[1], [2]], unitEnds: 2 ** 15, lifts: [[1], [2]] };
    expect(() => check({ ...wide, picksPerRow: 2 ** 14 + 1 })).toThrow(
      "65536 ends and 32770 picks; the most worked out is 1048576 of each and 2147483648 interlacements",
    );
    expect(() => check({ ...wide, picksPerRow: 2 ** 31 })).toThrow(
      /picks; the most worked out is 1048576 of each and 2147483648 interlacements$/,
    );
  });
});

describe("a drawdown", () => {
  it.each([
    ["no picks", fromCells(0, 5, () => true), ["layers"]],
    ["no ends", fromCells(5, 0, () => true), ["layers"]],
    ["one raised end over one pick", fromText("#"), ["layers", "loose-thread"]],
    ["one lowered end under one pick", fromText("."), ["layers", "loose-thread"]],
    ["one pick", fromText("#.#.#"), ["layers", "loose-thread"]],
    ["one end", fromText("#\n.\n#"), ["layers", "loose-thread"]],
    ["every end raised", fromCells(5, 5, () => true), ["layers", "loose-thread", "float-length"]],
    ["every end lowered", fromCells(5, 5, () => false), ["layers", "loose-thread", "float-length"]],
  ])("of %s is told what is wrong with it, and no more", (_, grid, told) => {
    for (const repeat of ["none", "both"] as const) {
      const report = checkGrid(grid, { limits, repeat });
      expect(named(report).filter((rule) => rule !== "unlike-sides")).toEqual(told);
      expect(JSON.stringify(report)).not.toMatch(/null|NaN|Infinity/);
    }
  });

  it("without picks is loose ends, each of them a layer", () => {
    expect(checkGrid(fromCells(0, 5, () => true)).findings.map(({ message }) => message)).toEqual([
      "the cloth does not hang together but falls into 5 layers: ends 1-4 lift off the face",
    ]);
  });
});
