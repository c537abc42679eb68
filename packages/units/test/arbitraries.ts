import type { Ground, GroundStep, ShaftSet } from "@drawcord/ground";
import fc from "fast-check";
import type { UnitDraft, UnitShafts } from "../src/index.js";

/** Some of the shafts 1 to `shafts`, ascending; now and then none, now and then all. */
export const shaftSet = (shafts: number): fc.Arbitrary<ShaftSet> =>
  fc.oneof(
    { weight: 6, arbitrary: fc.subarray(Array.from({ length: shafts }, (_, i) => i + 1)) },
    { weight: 1, arbitrary: fc.constant([]) },
  );

/** A ground harness with its treadling: any shafts up, any others down, the rest free. */
export const ground = (): fc.Arbitrary<Ground> =>
  fc.integer({ min: 1, max: 6 }).chain((shafts) => {
    const step: fc.Arbitrary<GroundStep> = fc
      .array(fc.constantFrom("raise", "sink", "free"), { minLength: shafts, maxLength: shafts })
      .map((places) => ({
        raise: places.flatMap((place, i) => (place === "raise" ? [i + 1] : [])),
        sink: places.flatMap((place, i) => (place === "sink" ? [i + 1] : [])),
      }));
    return fc.record({
      shafts: fc.constant(shafts),
      threading: fc.array(fc.integer({ min: 1, max: shafts }), { minLength: 1, maxLength: 9 }),
      steps: fc.array(step, { minLength: 1, maxLength: 6 }),
    });
  });

/** One unit: mostly on one shaft, now and then static or on several. */
const unit = (shafts: number): fc.Arbitrary<UnitShafts> =>
  fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: 1, max: shafts }).map((shaft) => [shaft]) },
    { weight: 2, arbitrary: shaftSet(shafts) },
  );

/** A threading with what weavers thread: runs, points, repeats and static units, strung together. */
export const threading = (shafts = 12, mostUnits = 40): fc.Arbitrary<readonly UnitShafts[]> => {
  const run = fc
    .tuple(fc.integer({ min: 1, max: shafts }), fc.integer({ min: 1, max: shafts }))
    .map(([from, to]) =>
      Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => [from + i * Math.sign(to - from)]),
    );
  const piece: fc.Arbitrary<readonly UnitShafts[]> = fc.oneof(
    fc.array(unit(shafts), { minLength: 1, maxLength: 5 }),
    run,
  );
  const repeated = fc.tuple(fc.array(piece, { minLength: 1, maxLength: 3 }), fc.integer({ min: 1, max: 5 }));
  return fc
    .array(repeated, { minLength: 1, maxLength: 3 })
    .map((parts) =>
      parts
        .flatMap(([pieces, times]) => Array.from({ length: times }, () => pieces.flat()).flat())
        .slice(0, mostUnits),
    );
};

/** Sizes of units or rows: one for all, or unlike ones. */
const sizes = (entries: number, most: number): fc.Arbitrary<number | readonly number[]> =>
  fc.oneof(
    fc.integer({ min: 1, max: most }),
    fc.array(fc.integer({ min: 1, max: most }), { minLength: entries, maxLength: entries }),
  );

const selvedgeEnds = (shafts: number) => fc.array(fc.integer({ min: 1, max: shafts }), { maxLength: 5 });

/** Rows of a lift plan: each its own list, or a few lists that come over and over. */
const lifts = (shafts: number): fc.Arbitrary<readonly ShaftSet[]> =>
  fc
    .array(shaftSet(shafts), { minLength: 1, maxLength: 8 })
    .chain((lists) =>
      fc.oneof(fc.constant(lists), fc.array(fc.constantFrom(...lists), { minLength: 1, maxLength: 8 })),
    );

/**
 * Whole drafts with what breaks expansions: one end, units wider than a word, unlike units and rows, static units
 * alone, shafts drawn that no unit hangs on, selvedges on either, both or no side.
 */
export const draft = (): fc.Arbitrary<UnitDraft> =>
  fc.tuple(ground(), threading(8, 24), lifts(9)).chain(([g, units, rows]) =>
    fc.record(
      {
        ground: fc.constant(g),
        threading: fc.constant(units),
        lifts: fc.constant(rows),
        unitEnds: fc.oneof(
          { weight: 5, arbitrary: sizes(units.length, 7) },
          { weight: 1, arbitrary: sizes(units.length, 40) },
        ),
        picksPerRow: sizes(rows.length, 6),
        selvedge: fc.record(
          { left: selvedgeEnds(g.shafts), right: selvedgeEnds(g.shafts) },
          { requiredKeys: [] },
        ),
      },
      { requiredKeys: ["ground", "threading", "lifts", "unitEnds", "picksPerRow"] },
    ),
  );
