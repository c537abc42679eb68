import fc from "fast-check";
import { expect, it } from "vitest";
import { type EntryLine, edited, type LineEdit } from "../src/telling/line.js";
import { gainOf, lineSlips } from "../src/telling/slips.js";
import { threadingLine } from "../src/telling/threading.js";

/** Every single edit of a line, of the entries that it has. */
function everyEdit(line: EntryLine, size: number): LineEdit[] {
  const entries = Array.from({ length: size }, (_, entry) => entry);
  return [
    ...line.flatMap((_, at) => entries.map((to): LineEdit => ({ edit: "change", at, to }))),
    ...[...line, 0].flatMap((_, at) => entries.map((to): LineEdit => ({ edit: "insert", at, to }))),
    ...line.map((_, at): LineEdit => ({ edit: "remove", at })),
    ...line.slice(1).map((_, at): LineEdit => ({ edit: "swap", at, with: at + 1 })),
  ];
}

/** Small threadings, straight, pointed or mirrored over a few shafts, with one edit made to them. */
const slipped = fc
  .tuple(
    fc.integer({ min: 4, max: 7 }),
    fc.integer({ min: 2, max: 3 }),
    fc.constantFrom("straight", "pointed", "mirrored"),
    fc.nat(),
  )
  .map(([shafts, times, order, pick]) => {
    const up = Array.from({ length: shafts }, (_, i) => [i + 1]);
    const down = up.slice(1, -1).toReversed();
    const one = order === "pointed" ? [...up, ...down] : up;
    const plain = Array.from({ length: times }, () => one).flat();
    const threading = order === "mirrored" ? [...plain, ...plain.toReversed()] : plain;
    const { alphabet, line } = threadingLine({ threading });
    const edits = everyEdit(line, alphabet.size());
    const slip = edits[pick % edits.length]!;
    const shaftsOf = edited(line, slip).map((entry) => threading[line.indexOf(entry)]!);
    return threadingLine({ threading: shaftsOf });
  });

it("no single edit tells a threading in fewer bits than one that is sure, by trying every edit of small ones", () => {
  let told = 0;
  fc.assert(
    fc.property(slipped, ({ alphabet, line }) => {
      const [slip] = lineSlips(line, alphabet);
      if (slip?.sure !== true) return;
      told++;
      const after = edited(line, slip.edit).join();
      const gains = everyEdit(line, alphabet.size())
        .filter((edit) => edited(line, edit).join() !== after)
        .map((edit) => gainOf(line, edit, alphabet));
      expect(Math.max(...gains)).toBeLessThanOrEqual(slip.gain + 1e-9);
    }),
    { numRuns: 60 },
  );
  expect(told).toBeGreaterThan(10);
});
