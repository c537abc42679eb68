import { StoppedError } from "@drawcord/base";
import { expand } from "@drawcord/units";
import { assert, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { check, rules } from "../src/index.js";
import { draft as drafts } from "./arbitraries.js";

describe("a check", () => {
  it("comes to the same from an expansion that is there, be it a clone", () => {
    assert(
      property(drafts(), (draft) => {
        const report = check(draft);
        const expansion = expand(draft);
        expect(check(draft, {}, { expansion })).toEqual(report);
        expect(check(draft, {}, { expansion: structuredClone(expansion) })).toEqual(report);
      }),
      { numRuns: 30 },
    );
  });

  it("refuses an expansion of another size", () => {
    assert(
      property(drafts(), (draft) => {
        const { lifts, picksPerRow, threading, unitEnds } = draft;
        const longer = expand({
          ...draft,
          lifts: [...lifts, lifts[0]!],
          picksPerRow: typeof picksPerRow === "number" ? picksPerRow : [...picksPerRow, 1],
        });
        const wider = expand({
          ...draft,
          threading: [...threading, threading[0]!],
          unitEnds: typeof unitEnds === "number" ? unitEnds : [...unitEnds, 1],
        });
        for (const expansion of [longer, wider])
          expect(() => check(draft, {}, { expansion })).toThrow(
            expect.objectContaining({ code: "unlike-size" }),
          );
      }),
      { numRuns: 10 },
    );
  });

  it("tells of each rule, and stops where its signal says so", () => {
    assert(
      property(drafts(), (draft) => {
        let last = -1;
        const stopAt = 7;
        const signal = {
          get aborted() {
            return last >= stopAt;
          },
        };
        const progress = (done: number, of: number) => {
          expect(of).toBe(rules.length);
          last = done;
        };
        expect(() => check(draft, {}, { signal, progress })).toThrow(StoppedError);
        expect(last).toBe(stopAt);
      }),
      { numRuns: 5 },
    );
  });
});
