import { rowCounts, transpose } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { System } from "../src/index.js";
import { acrossCuts, sideCuts } from "../src/measure/borders.js";
import { kindsOf } from "../src/measure/kinds.js";
import { measureDraft } from "../src/measure/measure.js";
import { measureThreads } from "../src/measure/threads.js";
import { draft, repeat, wideDraft } from "./arbitraries.js";

/** What is measured thread by thread, without regard to how the threads were sorted into kinds. */
function byThread({ kinds, threads, raised }: Pick<System, "kinds" | "threads" | "raised">) {
  return {
    runs: { raised: threads.raised, lowered: threads.lowered },
    changes: kinds.kindOf.map((kind) => threads.changes[kind]!),
    raised,
  };
}

describe("a draft measured by the stretches of its figure", () => {
  it("is the draft measured word by word, along picks and along ends", () => {
    fc.assert(
      fc.property(fc.oneof(draft(), wideDraft), repeat, (one, over) => {
        const expansion = expand(one);
        const { weft, warp, figure } = measureDraft(one, expansion, { repeat: over });
        expect(warp.grid.equals(transpose(expansion.drawdown))).toBe(true);
        for (const { grid, joined, ...system } of [weft, warp]) {
          const kinds = kindsOf(grid);
          const threads = measureThreads(grid, kinds, joined);
          expect(byThread(system)).toEqual(byThread({ kinds, threads, raised: rowCounts(grid) }));
          system.kinds.kindOf.forEach((kind, thread) => {
            // What the checker looks for long floats by may be too long, never too short.
            for (const state of [0, 1]) {
              const longest = threads.longest[2 * kinds.kindOf[thread]! + state]!;
              expect(system.threads.longest[2 * kind + state]).toBeGreaterThanOrEqual(longest);
            }
          });
        }
        expect(figure!.side).toEqual(sideCuts(expansion.drawdown, expansion.drawn, weft.joined));
        expect(figure!.across).toEqual(acrossCuts(expansion.drawdown, expansion.drawn, warp.joined));
        const drawn = rowCounts(expansion.drawn).reduce((sum, ones) => sum + ones, 0);
        const inUnits = expansion.unitOfEnd.filter((unit) => unit >= 0).length;
        expect(figure!.share).toBe(drawn === 0 ? 0 : drawn / (inUnits * weft.grid.rows));
      }),
      { numRuns: 300 },
    );
  });

  it("does a thread of which there are many once", () => {
    fc.assert(
      fc.property(draft(), fc.integer({ min: 2, max: 4 }), (one, times) => {
        const lifts = Array.from({ length: times }, () => one.lifts).flat();
        const cloth = { ...one, picksPerRow: one.ground.steps.length, lifts };
        const { weft } = measureDraft(cloth, expand(cloth), {});
        expect(weft.kinds.first.length).toBeLessThanOrEqual(one.lifts.length * one.ground.steps.length);
        expect(weft.kinds.times.reduce((sum, of) => sum + of, 0)).toBe(weft.grid.rows);
      }),
    );
  });
});
