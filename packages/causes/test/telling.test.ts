import fc from "fast-check";
import { expect, it } from "vitest";
import { bordersIn } from "../src/telling/borders.js";
import { byLikeness } from "../src/telling/by-likeness.js";
import type { EntryLine, LineEdit } from "../src/telling/line.js";
import type { Keep } from "../src/telling/suggestion.js";
import { threadingLine } from "../src/telling/threading.js";
import { longestTold } from "../src/telling/told.js";
import { byLikenessSlowly, toldBeforeSlowly } from "./telling-slowly.js";

/** Threadings that are told in a few phrases but for what was changed in them. */
const threadings = fc
  .tuple(
    fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 6 }),
    fc.integer({ min: 1, max: 3 }),
    fc.array(fc.tuple(fc.nat(20), fc.integer({ min: 0, max: 5 })), { maxLength: 2 }),
  )
  .map(([part, times, slips]) => {
    const threading = Array.from({ length: times }, () => [...part, ...part.toReversed().slice(1)]).flat();
    for (const [at, shaft] of slips) threading[at % threading.length] = shaft;
    return threadingLine({ threading: threading.map((shaft) => (shaft === 0 ? [] : [shaft])) });
  });

/** What a way to look for edits takes down, the strongest of each. */
function kept(search: (line: EntryLine, keep: Keep) => void, line: EntryLine): Map<string, number> {
  const edits = new Map<string, number>();
  search(line, (edit: LineEdit, likeness) => {
    const key = JSON.stringify(edit);
    edits.set(key, Math.max(edits.get(key) ?? 0, likeness));
  });
  return edits;
}

it("likeness suggests what comparing every place with every other does", () => {
  fc.assert(
    fc.property(threadings, ({ line }) => {
      const quick = kept(byLikeness, line);
      const slow = kept(byLikenessSlowly, line);
      expect([...quick.keys()].sort()).toEqual([...slow.keys()].sort());
      for (const [edit, likeness] of slow) expect(quick.get(edit)).toBeCloseTo(likeness, 9);
    }),
  );
});

it("what was told before is what reading on from every place before finds", () => {
  fc.assert(
    fc.property(threadings, ({ line, alphabet }) => {
      const [[again], [back], [moved]] = longestTold(line, alphabet, bordersIn(line, alphabet, []));
      expect({ again: [...again], back: [...back], moved: [...moved] }).toEqual(
        toldBeforeSlowly(line, alphabet),
      );
    }),
  );
});
