import { type CheckOptions, check, type RuleName, rules } from "@drawcord/check";
import type { Change, UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { smallDraft } from "../../check/test/arbitraries.js";
import { mend } from "../src/index.js";
import { worseThan } from "./worse-slowly.js";

/** Whether a unit is drawn in a row. */
const isDrawn = (draft: UnitDraft, unit: number, row: number) =>
  draft.threading[unit]!.some((shaft) => draft.lifts[row]!.includes(shaft));

function turnedBetween(one: UnitDraft, other: UnitDraft): number {
  return one.lifts
    .flatMap((_, row) =>
      one.threading.map((__, unit) => isDrawn(one, unit, row) !== isDrawn(other, unit, row)),
    )
    .filter(Boolean).length;
}

/** Every lift plan of the draft's size. */
function* allLifts({ lifts, threading }: UnitDraft): Iterable<UnitDraft["lifts"]> {
  const shafts = [...new Set(threading.flat())];
  for (let bits = 0; bits < 2 ** (shafts.length * lifts.length); bits++) {
    yield lifts.map((_, row) => shafts.filter((__, i) => ((bits >>> (row * shafts.length + i)) & 1) === 1));
  }
}

/** The fewest squares that any lift plan turns after which the rule finds nothing and nothing is worse, by trying all. */
function fewestTurned(one: UnitDraft, options: CheckOptions, rule: RuleName): number | undefined {
  const before = check(one, options);
  let fewest: number | undefined;
  for (const lifts of allLifts(one)) {
    const mended = { ...one, lifts };
    const turned = turnedBetween(one, mended);
    if (turned >= (fewest ?? Number.POSITIVE_INFINITY)) continue;
    const after = check(mended, options);
    const passed = before.findings.map((finding) => finding.rule);
    const cured = passed.filter((name) => after.findings.every((finding) => finding.rule !== name));
    if (cured.includes(rule) && worseThan(before, after, cured).length === 0) fewest = turned;
  }
  return fewest;
}

const turns = ({ change }: Change) => change === "draw" || change === "leave";

/** All rules switched off but these. */
const only = (...names: readonly RuleName[]) =>
  Object.fromEntries(rules.flatMap(({ name }) => (names.includes(name) ? [] : [[name, "off"] as const])));

const limits = {
  float: { threads: 3 },
  stretch: { picks: 3 },
  area: { squares: 3 },
  faceShare: 40,
};

/** One of them is mended; the others must not find more. */
const planted: readonly (readonly [rule: RuleName, besides: readonly RuleName[], repeat?: "both"])[] = [
  ["float-length", []],
  ["float-length", [], "both"],
  [
    "float-length",
    ["layers", "loose-thread", "edge-float", "long-stretch", "large-area", "thin-area", "unlike-sides"],
  ],
  ["edge-float", []],
  ["edge-float", ["float-length", "large-area"]],
  ["long-stretch", []],
  ["large-area", []],
  ["large-area", ["long-stretch", "float-length", "unlike-sides"]],
  ["uneven-take-up", []],
  ["face-share", []],
  ["unlike-sides", []],
  ["unlike-sides", ["float-length"]],
];
const cases = planted.map(([rule, besides, repeat]) => [rule, besides, repeat ?? ("none" as const)] as const);

describe("a mend", () => {
  it.each(cases)(
    "of %s turns as few squares as the best of all drafts, beside %j",
    (rule, besides, repeat) => {
      let mended = 0;
      fc.assert(
        fc.property(smallDraft, (one) => {
          const options: CheckOptions = {
            limits,
            repeat,
            levels: only(rule, ...besides),
            // A band of the face share is 50 mm: a thread.
            sett: { endsPerCm: 0.2, picksPerCm: 0.2 },
          };
          fc.pre(check(one, options).findings.some((finding) => finding.rule === rule));
          const found = mend(one, options);
          // Where the ground or another rule was mended first, it is another draft.
          fc.pre(
            found[0] === undefined ||
              (found[0].cause === undefined && found[0].rules[0] === rule && found[0].changes.every(turns)),
          );
          if (found[0] !== undefined) mended++;
          expect(found[0]?.squares).toBe(fewestTurned(one, options, rule));
        }),
        { numRuns: 25, maxSkipsPerRun: 400 },
      );
      expect(mended).toBeGreaterThan(0);
    },
  );
});
