import { parseThreading, type UnitDraft } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { applyTogether, findCauses } from "../src/index.js";
import { writtenAndWhole } from "../src/suspects/written.js";

const draft = (threading: string): UnitDraft => ({
  ground: {
    shafts: 4,
    threading: [1, 2, 3, 4],
    steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
  },
  unitEnds: 4,
  threading: parseThreading(threading),
  lifts: [[4], [3, 4, 5], [2, 3, 5, 6], [1, 2, 7], [1, 3, 6, 8], [2, 4, 5], [3, 4, 5, 6]],
  picksPerRow: 4,
});

/** `X (8 units)*3 X` as it is written: the units of the group once each. */
const group = [[0], ...Array.from({ length: 8 }, (_, i) => [1 + i, 9 + i, 17 + i]), [25]];
const quiet = { levels: { "thin-area": "off", "unlike-sides": "off" } } as const;

describe("a slip in a group of units that comes again", () => {
  it("is one slip, with a change for each unit that it threads", () => {
    const faulty = draft("X (1-4 4 6-8)*3 X");
    const [cause] = findCauses(faulty, quiet, { writtenUnits: group }).causes;
    expect(cause?.message).toBe(
      "unit 6 (and each of the 2 other times that it is threaded) hangs on shaft 4 where the rest of the threading says 5",
    );
    expect(applyTogether(faulty, cause!.changes)).toEqual(draft("X (1-8)*3 X"));
  });

  it("is told of two units exchanged, and of one put in too much", () => {
    const swapped = draft("X (1-3 5 4 6-8)*3 X");
    const [exchange] = findCauses(swapped, quiet, { writtenUnits: group }).causes;
    expect(exchange?.message).toBe(
      "units 5 and 6 (and each of the 2 other times that it is threaded) are exchanged",
    );
    expect(applyTogether(swapped, exchange!.changes)).toEqual(draft("X (1-8)*3 X"));
    const doubled = draft("X (1-4 4 5-8)*3 X");
    const written = [[0], ...Array.from({ length: 9 }, (_, i) => [1 + i, 10 + i, 19 + i]), [28]];
    const [more] = findCauses(doubled, quiet, { writtenUnits: written }).causes;
    expect(applyTogether(doubled, more!.changes)).toEqual(draft("X (1-8)*3 X"));
  });

  it("is not told where the group is as it should be", () => {
    expect(findCauses(draft("X (1-8)*3 X"), quiet, { writtenUnits: group }).causes).toEqual([]);
  });
});

describe("what the whole tells beside what is written", () => {
  const suspect = (unit: number, gain: number) => ({
    changes: [{ change: "thread", unit, shafts: [1] }] as const,
    slip: { slip: "unit-shafts", unit, again: 0, shafts: [2], says: [1] } as const,
    reason: { reason: "shorter", of: "threading" } as const,
    gain,
    sure: false,
    rivals: [],
  });

  it("is kept where it is of what is written once, the stronger of two", () => {
    const written = [[0], [1, 3], [2]];
    const told = writtenAndWhole(written, 4, (as) =>
      as === written ? [suspect(1, 3)] : [suspect(1, 5), suspect(2, 9), suspect(3, 4)],
    );
    expect(
      told.map(({ changes: [change], gain }) => [change?.change === "thread" && change.unit, gain]),
    ).toEqual([
      [1, 5],
      [3, 4],
    ]);
  });
});

describe("of two places that should be alike", () => {
  it("a cause names both, the other as its rival", () => {
    const motif = [[4], [3, 4, 5], [2, 3, 5, 6], [1, 2, 7, 8], [1, 3, 6], [2, 4, 5]];
    const lifts = [...motif, ...motif.slice(0, -1).toReversed()];
    const faulty: UnitDraft = { ...draft("X (1-8)*3 X"), lifts: lifts.with(7, [1, 7, 8]) };
    const [cause] = findCauses(faulty, quiet).causes;
    const said = [
      "row 8 leaves shaft 2 down where the rest of the plan does not",
      "row 4 draws shaft 2 where the rest of the plan does not",
    ];
    expect(said).toContain(cause?.message.split(", or ")[0]);
    expect(said).toContain(cause?.message.split(", or ")[1]);
    expect([cause?.slip, cause?.or]).toEqual(
      expect.arrayContaining([
        { slip: "row-shafts", row: 8, again: 0, leaves: [2], draws: [] },
        { slip: "row-shafts", row: 4, again: 0, leaves: [], draws: [2] },
      ]),
    );
    expect(cause?.rivals).toHaveLength(1);
  });
});
