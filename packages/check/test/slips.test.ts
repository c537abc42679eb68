import type { UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { check } from "../src/index.js";
import { findSlip } from "../src/symmetry.js";

const half = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 5, maxLength: 20 });
/** Point threadings and the like: they read the same from both ends. */
const mirrored = fc
  .tuple(half, fc.boolean())
  .map(([one, point]) => [...one, ...one.toReversed().slice(point ? 1 : 0)]);
/** Straight draws and other motifs, over and over, the last one perhaps begun only. */
const repeated = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 1, max: 30 }), { minLength: 3, maxLength: 9 }),
    fc.integer({ min: 4, max: 6 }),
    fc.nat({ max: 8 }),
  )
  .map(([motif, times, more]) =>
    Array.from({ length: motif.length * times + (more % motif.length) }, (_, i) => motif[i % motif.length]!),
  );

const reads = (keys: readonly number[]) => keys.every((key, i) => key === keys[keys.length - 1 - i]);
const recurs = (keys: readonly number[]) =>
  Array.from({ length: Math.floor(keys.length / 3) }, (_, i) => i + 1).some((period) =>
    keys.every((key, i) => i + period >= keys.length || key === keys[i + period]),
  );

describe("a slip in a symmetric sequence", () => {
  it("is nothing where the symmetry is whole", () => {
    fc.assert(
      fc.property(fc.oneof(mirrored, repeated), (keys) => {
        expect(findSlip(keys)).toBeUndefined();
      }),
    );
  });

  it("is found in a mirror where one entry was changed: it is that entry or its counterpart", () => {
    fc.assert(
      fc.property(mirrored, fc.nat(), (keys, at) => {
        const place = at % keys.length;
        fc.pre(place * 2 !== keys.length - 1);
        const changed = keys.with(place, 99);
        const slip = findSlip(changed);
        fc.pre(!recurs(keys));
        expect(slip).toBeDefined();
        expect([slip!.at, slip!.other]).toContain(place);
      }),
    );
  });

  it("is found in a mirror where one entry was left out or written twice", () => {
    fc.assert(
      fc.property(mirrored, fc.nat(), fc.boolean(), (keys, at, twice) => {
        const place = at % keys.length;
        const changed = keys.toSpliced(place, 1, ...(twice ? [keys[place]!, keys[place]!] : []));
        fc.pre(changed.length >= 8 && new Set(changed).size >= 3 && !reads(changed) && !recurs(changed));
        const slip = findSlip(changed);
        expect(slip).toBeDefined();
        if (slip?.kind === "odd-one") expect(reads(changed.toSpliced(slip.at, 1))).toBe(true);
      }),
    );
  });

  it("is found in a repeat just where one entry was changed", () => {
    fc.assert(
      fc.property(repeated, fc.nat(), (keys, at) => {
        const place = at % keys.length;
        const slip = findSlip(keys.with(place, 99));
        expect(slip).toMatchObject({ symmetry: "repeat", at: place });
      }),
    );
  });

  it("is such that mending it makes the symmetry whole", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 8, maxLength: 12 }), (keys) => {
        const slip = findSlip(keys);
        fc.pre(slip !== undefined);
        const { at, other, kind, symmetry } = slip!;
        const mended = kind === "odd-one" ? keys.toSpliced(at, 1) : keys.with(at, keys[other]!);
        expect(symmetry === "mirror" ? reads(mended) : recurs(mended)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it("is told from a change of pattern where the pattern comes three times, and not where it comes twice", () => {
    expect(findSlip([1, 2, 3, 4, 1, 2, 9, 4, 1, 2, 3, 4])).toMatchObject({
      symmetry: "repeat",
      period: 4,
      at: 6,
    });
    expect(findSlip([1, 2, 3, 4, 5, 6, 1, 2, 9, 4, 5, 6])).toBeUndefined();
  });

  it("is looked for in eight entries of three kinds, and not in fewer", () => {
    expect(findSlip([1, 2, 3, 1, 1, 3, 2, 2])).toMatchObject({ symmetry: "mirror", at: 0, other: 7 });
    expect(findSlip([1, 2, 3, 1, 3, 2, 2])).toBeUndefined();
    expect(findSlip([1, 2, 2, 1, 1, 2, 2, 2])).toBeUndefined();
  });

  it("is not seen in a figure standing alone on a plain ground", () => {
    expect(findSlip([0, 0, 0, 1, 0, 0, 0, 0, 0, 0])).toBeUndefined();
  });
});

describe("the sentences for slips", () => {
  const ground = {
    shafts: 2,
    threading: [1, 2],
    steps: [
      { raise: [1], sink: [2] },
      { raise: [2], sink: [1] },
    ],
  };
  const draft = (threading: number[], lifts: number[][]): UnitDraft => ({
    ground,
    unitEnds: 2,
    threading: threading.map((shaft) => [shaft]),
    lifts,
    picksPerRow: 2,
  });
  const messages = (one: UnitDraft) =>
    check(one)
      .findings.filter(({ rule }) => rule.endsWith("-slip"))
      .map(({ message }) => message);

  it("name the unit and its counterpart", () => {
    expect(
      messages(
        draft(
          [1, 2, 3, 4, 5, 4, 3, 1, 1],
          [
            [1, 2],
            [3, 4, 5],
          ],
        ),
      ),
    ).toEqual([
      "the threading is symmetrical except for one pair: unit 2 hangs on shaft 2 and unit 8 hangs on shaft 1: ends 3-4 (unit 2)",
    ]);
  });

  it("tell of a lopsided row among even ones of three kinds, and not of two", () => {
    const [a, b, c] = [[3], [2, 3, 4], [1, 5]] as const;
    const rows = [a, b, c, c, a, b, a, [1], b, a].map((row) => [...row]);
    expect(messages(draft([1, 2, 3, 4, 5], rows))).toEqual([
      "row 8 is not the same on the left as on the right, in units 1, 5: picks 15-16 (row 8)",
    ]);
    const two = rows.map((row) => (row.length === 2 ? [...a] : row));
    expect(messages(draft([1, 2, 3, 4, 5], two))).toEqual([]);
  });

  it("name the rows and the units in which they differ", () => {
    const lifts = [[1, 5], [2, 3], [3], [1, 2], [4], [1, 2], [3], [2], [1, 5]];
    expect(messages(draft([1, 2, 3, 4, 5, 6], lifts))).toEqual([
      "the lift plan is symmetrical except for one pair: rows 2 and 8, which differ in unit 3: picks 3-4 (row 2)",
    ]);
  });
});
