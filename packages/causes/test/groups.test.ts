import { applyChange, type Change, parseThreading, type UnitDraft } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { applyTogether, findCauses } from "../src/index.js";
import { shaftGroups } from "../src/suspects/groups.js";

const star = [[5], [4, 5], [1, 4, 5], [1, 2, 3, 4, 5], [2, 3, 4, 5], [2, 3, 5], [1, 2, 5]];
const whole = [...star, ...star.slice(0, -1).toReversed()];
/** Five rows to the chain, thirteen to the star: beside each other all rows of the plan are unlike. */
const chain = [[6], [6, 7], [7], [7, 8], [8]];
const plan: UnitDraft = {
  ground: {
    shafts: 4,
    threading: [1, 2, 3, 4],
    steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
  },
  unitEnds: 4,
  threading: parseThreading("X 6-8 X (1-5 4-2)*2 1 X 8-6 X"),
  lifts: [...whole, ...whole, ...whole].map((row, i) => [...row, ...chain[i % 5]!]),
  picksPerRow: 4,
};
const quiet = { levels: { "thin-area": "off", "unlike-sides": "off" } } as const;

it("shafts that go on from unit to unit are a group, a border is one by itself", () => {
  expect(shaftGroups(plan.threading).map((group) => [...group].sort())).toEqual([
    [6, 7, 8],
    [1, 2, 3, 4, 5],
  ]);
  expect(shaftGroups(parseThreading("1 3 2 4+5 9"))).toHaveLength(3);
});

describe("a slip in a block that is woven together with another", () => {
  it.each<readonly [string, Change, readonly Change[]]>([
    [
      "a square of the star",
      { change: "leave", row: 17, shafts: [2] },
      [{ change: "draw", row: 17, shafts: [2] }],
    ],
    [
      "a square of the chain",
      { change: "draw", row: 18, shafts: [8] },
      [{ change: "leave", row: 18, shafts: [8] }],
    ],
  ])("is told in its own group of shafts: %s", (_, slip, mend) => {
    const faulty = applyChange(plan, slip);
    const [cause] = findCauses(faulty, quiet).causes;
    expect(cause?.changes).toEqual(mend);
    expect(applyTogether(faulty, cause!.changes)).toEqual(plan);
  });

  it("is one slip in all rows that its line weaves", () => {
    const lines = plan.lifts.map((_, row) => row % 13);
    const faulty = [4, 17, 30].reduce(
      (draft, row) => applyChange(draft, { change: "leave", row, shafts: [2] }),
      plan,
    );
    const [cause] = findCauses(faulty, quiet, { lines }).causes;
    expect(cause?.rivals.concat([cause.changes])).toContainEqual(
      [4, 17, 30].map((row) => ({ change: "draw", row, shafts: [2] })),
    );
  });

  it("is not told where there is none", () => {
    expect(findCauses(plan, quiet).causes).toEqual([]);
  });
});
