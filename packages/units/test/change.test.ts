import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  applyChange,
  applyChanges,
  type Change,
  checkDraft,
  sayChange,
  type UnitDraft,
} from "../src/index.js";
import { draft } from "./arbitraries.js";

/** A change and the one that takes it back. */
const thereAndBack: readonly (readonly [name: string, of: (one: UnitDraft) => readonly Change[]])[] = [
  [
    "thread",
    ({ threading }) => [
      { change: "thread", unit: 1, shafts: [7] },
      { change: "thread", unit: 1, shafts: threading[0]! },
    ],
  ],
  [
    "insert-unit and remove-unit",
    () => [
      { change: "insert-unit", unit: 1, shafts: [7] },
      { change: "remove-unit", unit: 1 },
    ],
  ],
  [
    "insert-unit at the end",
    ({ threading }) => [
      { change: "insert-unit", unit: threading.length + 1, shafts: [] },
      { change: "remove-unit", unit: threading.length + 1 },
    ],
  ],
  [
    "swap-units",
    ({ threading }) => [
      { change: "swap-units", units: [1, threading.length] },
      { change: "swap-units", units: [threading.length, 1] },
    ],
  ],
  [
    "insert-row and remove-row",
    ({ lifts }) => [
      { change: "insert-row", row: lifts.length + 1, shafts: [1] },
      { change: "remove-row", row: lifts.length + 1 },
    ],
  ],
  [
    "swap-rows",
    ({ lifts }) => [
      { change: "swap-rows", rows: [1, lifts.length] },
      { change: "swap-rows", rows: [1, lifts.length] },
    ],
  ],
  [
    "shift",
    ({ lifts }) => [
      { change: "shift", rows: [1, lifts.length], by: 2 },
      { change: "shift", rows: [1, lifts.length], by: -2 },
    ],
  ],
  [
    "start-ground",
    ({ ground }) => [
      { change: "start-ground", steps: 1 },
      { change: "start-ground", steps: ground.steps.length - 1 },
    ],
  ],
  ["swap-ground", () => [{ change: "swap-ground" }, { change: "swap-ground" }]],
  [
    "ground-threading",
    ({ ground }) => [
      { change: "ground-threading", end: 1, shaft: ground.shafts },
      { change: "ground-threading", end: 1, shaft: ground.threading[0]! },
    ],
  ],
  ["number", () => [{ change: "number", key: "stated.ends", value: 320 }]],
];

describe("a change and its reverse", () => {
  it.each(thereAndBack)("leave the draft as it was: %s", (_, of) => {
    fc.assert(
      fc.property(draft(), (one) => {
        expect(applyChanges(one, of(one))).toEqual(one);
        for (const change of of(one)) expect(sayChange(change)).toMatch(/^[a-z].*[^.]$/);
      }),
    );
  });

  it("give a draft that can be worked out at each step", () => {
    fc.assert(
      fc.property(draft(), fc.constantFrom(...thereAndBack), (one, [, of]) => {
        let current = one;
        for (const change of of(one)) {
          current = applyChange(current, change);
          checkDraft(current);
        }
      }),
    );
  });
});

describe("single changes", () => {
  const one: UnitDraft = {
    ground: { shafts: 2, threading: [1, 2], steps: [{ raise: [1], sink: [2], weft: "gold" }] },
    unitEnds: [2, 3, 4],
    threading: [[1], [2], []],
    lifts: [[1], [2], [1, 2]],
    picksPerRow: 4,
  };

  it("put a unit in as wide as the one that stood there", () => {
    const more = applyChange(one, { change: "insert-unit", unit: 2, shafts: [5] });
    expect(more).toMatchObject({ threading: [[1], [5], [2], []], unitEnds: [2, 3, 3, 4] });
  });

  it("hold one row for another number of picks, and leave the others as they are", () => {
    expect(applyChange(one, { change: "row-picks", row: 2, picks: 3 }).picksPerRow).toEqual([4, 3, 4]);
  });

  it("tie a step and leave its weft what it is", () => {
    const { ground } = applyChange(one, { change: "tie", step: 1, raise: [2], sink: [] });
    expect(ground.steps).toEqual([{ raise: [2], sink: [], weft: "gold" }]);
  });

  it("draw and leave shafts, each once and in order", () => {
    const drawn = applyChange(one, { change: "draw", row: 2, shafts: [2, 1] });
    expect(drawn.lifts[1]).toEqual([1, 2]);
    expect(applyChange(drawn, { change: "leave", row: 2, shafts: [2] }).lifts[1]).toEqual([1]);
  });

  it.each([
    [{ change: "thread", unit: 4, shafts: [1] }, "the change names unit 4; expected 1 to 3"],
    [{ change: "remove-row", row: 0 }, "the change names row 0; expected 1 to 3"],
    [{ change: "tie", step: 2, raise: [], sink: [] }, "the change names step 2; expected 1 to 1"],
    [{ change: "ground-threading", end: 3, shaft: 1 }, "the change names end 3; expected 1 to 2"],
  ] as const)("refuse a place that is not there: %j", (change, sentence) => {
    expect(() => applyChange(one, change)).toThrow(sentence);
  });
});
