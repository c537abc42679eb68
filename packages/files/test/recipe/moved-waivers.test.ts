import { applyChange, type Change } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { reviseDraft, soundRecipe } from "../../src/index.js";

const recipe = `recipe: 1
ground: { weave: broken twill, selvedge: { left: 1 2, right: 3 4 } }
units: { ends: 4, threading: X (1-3)*2 X }
lifts: { picks: 4, rows: [1, 2, 1 3, 2 3, none, 3] }
waive:
  # The third row is meant.
  - { rule: thin-area, rows: 3, reason: a beetle }
  - { rule: thin-area, rows: 4-6, units: 2-5, reason: its shadow }
  - { rule: float-length, ends: 11-14, picks: 9-12, reason: held by hand }
`;

/** The places of the waivers after changes of the draft. */
function after(...changes: readonly Change[]): readonly object[] {
  const { draft } = soundRecipe(recipe, "waived");
  const { text } = reviseDraft(recipe, "waived", changes.reduce(applyChange, draft));
  expect(text).toContain("# The third row is meant.");
  return soundRecipe(text, "waived").waive.map(({ reason: _, rule: __, ...places }) => places);
}

describe("waivers by place", () => {
  it("move with their rows and picks when rows are put in or taken out", () => {
    const ends = { ends: [11, 14] };
    expect(after({ change: "insert-row", row: 2, shafts: [1, 2, 3] })).toEqual([
      { rows: [4, 4] },
      { rows: [5, 7], units: [2, 5] },
      { ...ends, picks: [13, 16] },
    ]);
    expect(after({ change: "remove-row", row: 1 })).toEqual([
      { rows: [2, 2] },
      { rows: [3, 5], units: [2, 5] },
      { ...ends, picks: [5, 8] },
    ]);
    expect(after({ change: "row-picks", row: 1, picks: 5 }).at(-1)).toEqual({ ...ends, picks: [10, 13] });
  });

  it("move with their units and ends, those of the left selvedge before them", () => {
    expect(after({ change: "insert-unit", unit: 1, shafts: [2] })).toEqual([
      { rows: [3, 3] },
      { rows: [4, 6], units: [3, 6] },
      { ends: [15, 18], picks: [9, 12] },
    ]);
    expect(after({ change: "selvedge", side: "left", shafts: [1, 2, 1, 2] }).at(-1)).toEqual({
      ends: [13, 16],
      picks: [9, 12],
    });
  });

  it("stay where nothing moves, or what they name is gone", () => {
    const same = [{ rows: [3, 3] }, { rows: [4, 6], units: [2, 5] }, { ends: [11, 14], picks: [9, 12] }];
    expect(after({ change: "lift", row: 2, shafts: [3] })).toEqual(same);
    expect(after({ change: "remove-row", row: 3 })[0]).toEqual({ rows: [3, 3] });
    expect(after({ change: "remove-row", row: 4 })[1]).toEqual({ rows: [4, 5], units: [2, 5] });
  });
});
