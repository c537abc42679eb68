import { type Ground, groundFromWeave } from "@drawcord/ground";
import { parseThreading, type UnitDraft } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { applyTogether, findCauses } from "../src/index.js";

const draft = (ground: Ground, more: Partial<UnitDraft> = {}): UnitDraft => ({
  ground,
  unitEnds: ground.shafts,
  threading: parseThreading("X*2 1-6 5-1 X*2"),
  lifts: [[6], [5, 6], [3, 4, 5, 6], [1, 2, 3, 4, 5], [3, 4, 5, 6], [5, 6], [6]],
  picksPerRow: ground.shafts,
  ...more,
});

const of = (shafts: number, pairs: readonly (readonly [raise: number, sink: number])[]): Ground => ({
  shafts,
  threading: Array.from({ length: shafts }, (_, i) => i + 1),
  steps: pairs.map(([raise, sink]) => ({ raise: [raise], sink: [sink] })),
});

const twill = of(4, [
  [1, 4],
  [2, 3],
  [3, 2],
  [4, 1],
]);

const loose = { limits: { float: { threads: 99 }, takeUp: 100 }, levels: { "idle-shaft": "off" } } as const;

describe("steps of the treadling", () => {
  it("exchanged are told by their order in a satin", () => {
    const satin = groundFromWeave("satin 8 step 3", { unitEnds: 8, picksPerRow: 8 });
    const [first, second, ...others] = satin.steps;
    const faulty = draft({ ...satin, steps: [second!, first!, ...others] });
    const [cause] = findCauses(faulty, loose).causes;
    expect(cause?.message).toBe("steps 1 and 2 of the ground are exchanged");
    expect(applyTogether(faulty, cause!.changes).ground.steps).toEqual(satin.steps);
  });

  it("are no slip where a satin cannot cut, or a twill is broken on purpose", () => {
    const odd = groundFromWeave("satin 5 step 2", { unitEnds: 5, picksPerRow: 5 });
    const broken = of(4, [
      [1, 4],
      [3, 2],
      [2, 3],
      [4, 1],
    ]);
    for (const ground of [odd, broken, twill]) {
      expect(findCauses(draft(ground), loose).causes).toEqual([]);
    }
  });
});

describe("two selvedges of which one is the other", () => {
  it.each([
    [[1, 3, 2, 2], "end 2 of the left selvedge is on shaft 3 where the other selvedge turned says 1"],
    [[1, 1, 4, 2], "end 3 of the left selvedge is on shaft 4 where the other selvedge turned says 2"],
  ])("%j: the slip is told once, in the one that has no order of its own", (left, message) => {
    const { causes } = findCauses(draft(twill, { selvedge: { left, right: [2, 2, 1, 1] } }), loose);
    expect(causes.map((cause) => cause.message)).toEqual([message]);
    expect(causes[0]?.sure).toBe(true);
  });

  it("without an order each is offered once, the other as its rival", () => {
    const selvedge = { left: [1, 4, 2, 2, 1, 3], right: [3, 1, 3, 2, 4, 1] };
    const { causes } = findCauses(draft(twill, { selvedge }), loose);
    expect(causes).toHaveLength(1);
    expect(causes[0]?.sure).toBe(false);
    expect(causes[0]?.rivals.flat().map((change) => change.change === "selvedge" && change.side)).toEqual([
      "right",
    ]);
  });
});
