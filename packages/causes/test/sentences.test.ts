import { check, sayFinding } from "@drawcord/check";
import { describe, expect, expectTypeOf, it } from "vitest";
import { type Cause, type CauseSentences, causeSentences, findCauses, sayCause } from "../src/index.js";
import { figured } from "./slips/figures.js";
import { kinds, plant } from "./slips/plant.js";
import { sectioned } from "./slips/sections.js";
import { families, grounds, soundDraft, tosser } from "./slips/sound.js";

/** Drafts of three generators, with a slip of every kind in turn. */
function faulty(seed: number): readonly ReturnType<typeof plant>[] {
  const toss = tosser(seed);
  const family = families[seed % families.length]!;
  const sound = [
    soundDraft(family, grounds[seed % grounds.length]!, toss),
    figured(seed).draft,
    sectioned(seed).draft,
  ];
  return sound.flatMap((draft) => kinds.map((kind) => plant(kind, draft, toss)));
}

describe("what is said of a cause", () => {
  it("is said again from its data alone", () => {
    const said = new Set<string>();
    for (const draft of [1, 2].flatMap(faulty)) {
      if (draft === undefined || draft.threading.length > 60 || draft.lifts.length > 60) continue;
      const report = check(draft);
      for (const finding of JSON.parse(JSON.stringify(report.findings)) as typeof report.findings)
        expect(sayFinding(finding)).toBe(finding.message);
      for (const cause of findCauses(draft, {}, { report }).causes) {
        const { message, why, ...data } = JSON.parse(JSON.stringify(cause)) as Cause;
        expect(sayCause(data)).toEqual({ message, why });
        for (const text of [message, why]) {
          expect(text).toMatch(/^[a-z].*[^.]$/);
          expect(text).not.toMatch(/undefined|NaN|null/);
        }
        said.add(cause.slip.slip);
      }
    }
    expect(said.size).toBeGreaterThan(7);
  });

  it("is said in the words of another table, behind the name of its piece", () => {
    const words: CauseSentences = {
      either: (one, other) => `${one} oder ${other}`,
      pieces: (names) => names.join(" und "),
      slips: {
        ...causeSentences.slips,
        "rows-exchanged": ({ rows }) => `Reihen ${rows.join(" und ")} sind vertauscht`,
      },
      reasons: {
        ...causeSentences.reasons,
        repeat: ({ by }) => `sonst kehrt alles nach ${by} Reihen wieder`,
      },
    };
    const cause = {
      slip: { slip: "rows-exchanged", rows: [3, 4] },
      reason: { reason: "repeat", by: 6, of: "lifts" },
      piece: "winter",
      pieces: ["winter", "spring"],
      or: { slip: "rows-exchanged", rows: [7, 8] },
    } as const;
    expect(sayCause(cause, words)).toEqual({
      message: "winter und spring: Reihen 3 und 4 sind vertauscht oder Reihen 7 und 8 sind vertauscht",
      why: "sonst kehrt alles nach 6 Reihen wieder",
    });
    expect(sayCause(cause)).toEqual({
      message: "winter and spring: rows 3 and 4 are exchanged, or rows 7 and 8 are exchanged",
      why: "but for that the lift plan repeats every 6 rows",
    });
  });

  it("has keys that stay", () => {
    expect(Object.keys(causeSentences.slips)).toMatchInlineSnapshot(`
      [
        "unit-shafts",
        "unit-missing",
        "unit-extra",
        "units-exchanged",
        "row-shafts",
        "row-missing",
        "row-extra",
        "rows-exchanged",
        "rows-shifted",
        "drawn-in-vain",
        "misstated",
        "row-picks",
        "selvedge-end",
        "ground-begun",
        "ground-swapped",
        "stray",
        "tie",
        "steps-exchanged",
        "ground-end",
      ]
    `);
    expect(Object.keys(causeSentences.reasons)).toMatchInlineSnapshot(`
      [
        "mirror",
        "repeat",
        "run",
        "copy",
        "turned",
        "shorter",
        "ground-goes-on",
        "even-picks",
        "selvedge-order",
        "cuts",
        "stands-alone",
        "weave",
        "draws-nothing",
        "worked-out",
      ]
    `);
  });

  it("is of another type where a kind lacks, or is one too many", () => {
    const { stray: _, ...lacking } = causeSentences.slips;
    expectTypeOf(lacking).not.toExtend<CauseSentences["slips"]>();
    // @ts-expect-error: there is no such kind of slip
    const more: CauseSentences["slips"] = { ...causeSentences.slips, "no-slip": () => "" };
    expect(more).toHaveProperty("no-slip");
  });
});
