import { type BitGrid, fromBooleans } from "@drawcord/grid";
import type { UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import type { Repeat } from "../src/index.js";

type Ground = UnitDraft["ground"];

/** Thread counts where rows of words and of pieces are most likely to break, and any other. */
const side = fc.oneof(
  { weight: 3, arbitrary: fc.integer({ min: 1, max: 12 }) },
  { weight: 1, arbitrary: fc.constantFrom(15, 16, 17, 31, 32, 33, 63, 64, 65) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 90 }) },
);

export const repeat: fc.Arbitrary<Repeat> = fc.constantFrom("none", "ends", "picks", "both");

/** A drawdown: tossed cell by cell, in stripes, or in blocks, so that short and long floats come, and loose threads. */
export const drawdown = (rows = side, columns = side): fc.Arbitrary<BitGrid> =>
  fc.tuple(rows, columns, fc.constantFrom("toss", "long", "few kinds")).chain(([height, width, manner]) => {
    const cell = manner === "long" ? fc.integer({ min: 0, max: 9 }) : fc.integer({ min: 0, max: 1 });
    const line = fc.array(cell, { minLength: width, maxLength: width });
    if (manner === "few kinds") {
      return fc
        .tuple(
          fc.array(line, { minLength: 1, maxLength: 3 }),
          fc.array(fc.nat({ max: 2 }), { minLength: height, maxLength: height }),
        )
        .map(([kinds, order]) =>
          fromBooleans(order.map((k) => kinds[k % kinds.length]!.map((c) => c === 1))),
        );
    }
    return fc
      .array(line, { minLength: height, maxLength: height })
      .map((cells) =>
        fromBooleans(cells.map((row) => row.map((c) => (manner === "long" ? c > 0 : c === 1)))),
      );
  });

/** Wide rows in which a ground repeats every few ends, so that word after word is equal, with a square turned here and there. */
export const wideDrawdown: fc.Arbitrary<BitGrid> = fc
  .record({
    columns: fc.integer({ min: 90, max: 420 }),
    rows: fc.array(
      fc.record({
        motif: fc
          .constantFrom(1, 2, 4, 8, 16, 32, 5)
          .chain((n) => fc.array(fc.boolean(), { minLength: n, maxLength: n })),
        turned: fc.array(fc.nat({ max: 419 }), { maxLength: 3 }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ columns, rows }) =>
    fromBooleans(
      rows.map(({ motif, turned }) =>
        Array.from({ length: columns }, (_, end) => motif[end % motif.length]! !== turned.includes(end)),
      ),
    ),
  );

const shaftSet = (shafts: number): fc.Arbitrary<readonly number[]> =>
  fc.subarray(Array.from({ length: shafts }, (_, i) => i + 1));

/** A ground of counted weave (one shaft up, one down, the rest free), or any plan; now and then of two wefts. */
const ground = (): fc.Arbitrary<Ground> =>
  fc.integer({ min: 2, max: 8 }).chain((shafts) => {
    const all = Array.from({ length: shafts }, (_, i) => i + 1);
    const order = fc.shuffledSubarray(all, { minLength: shafts, maxLength: shafts });
    const counted = order.map(
      (raise): Ground => ({
        shafts,
        threading: all,
        steps: raise.map((shaft) => ({
          raise: [shaft],
          sink: shaft === shafts + 1 - shaft ? [] : [shafts + 1 - shaft],
        })),
      }),
    );
    const place = fc.constantFrom("raise", "sink", "free");
    const step = fc
      .record({
        places: fc.array(place, { minLength: shafts, maxLength: shafts }),
        weft: fc.constantFrom("", "", "gold"),
      })
      .map(({ places, weft }) => ({
        raise: all.filter((_, i) => places[i] === "raise"),
        sink: all.filter((_, i) => places[i] === "sink"),
        ...(weft !== "" && { weft }),
      }));
    const anyPlan: fc.Arbitrary<Ground> = fc.record({
      shafts: fc.constant(shafts),
      threading: fc.array(fc.integer({ min: 1, max: shafts }), { minLength: 1, maxLength: 9 }),
      steps: fc.array(step, { minLength: 1, maxLength: 6 }),
    });
    return fc.oneof(counted, anyPlan);
  });

/** Units or rows of one size, or of unlike ones. */
const sizes = (entries: number): fc.Arbitrary<number | readonly number[]> =>
  fc.oneof(
    fc.integer({ min: 1, max: 5 }),
    fc.array(fc.integer({ min: 1, max: 5 }), { minLength: entries, maxLength: entries }),
  );

/** Drafts of up to a few thousand interlacements, with selvedges on either, both or no side. */
export const draft = (): fc.Arbitrary<UnitDraft> =>
  fc
    .tuple(
      ground(),
      fc.array(
        fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 1, max: 6 }).map((s) => [s]) }, shaftSet(6)),
        {
          minLength: 1,
          maxLength: 14,
        },
      ),
      fc.array(shaftSet(7), { minLength: 1, maxLength: 10 }),
    )
    .chain(([g, threading, lifts]) => {
      const edge = fc.array(fc.integer({ min: 1, max: g.shafts }), { maxLength: 4 });
      return fc.record(
        {
          ground: fc.constant(g),
          threading: fc.constant(threading),
          lifts: fc.constant(lifts),
          unitEnds: sizes(threading.length),
          picksPerRow: sizes(lifts.length),
          selvedge: fc.record({ left: edge, right: edge }, { requiredKeys: [] }),
        },
        { requiredKeys: ["ground", "threading", "lifts", "unitEnds", "picksPerRow"] },
      );
    });

/** Drafts of many units and rows in few, long stretches, and of others that change with every unit and row. */
export const wideDraft: fc.Arbitrary<UnitDraft> = fc
  .record({
    ground: ground(),
    edges: fc.array(fc.integer({ min: 1, max: 2 }), { maxLength: 5 }),
    units: fc.integer({ min: 20, max: 40 }),
    rows: fc.integer({ min: 8, max: 20 }),
    period: fc.constantFrom(1, 2, 3, 9, 40),
    unitEnds: fc.integer({ min: 1, max: 9 }),
    picksPerRow: fc.integer({ min: 1, max: 5 }),
  })
  .map(({ ground: own, edges, units, rows, period, unitEnds, picksPerRow }) => ({
    ground: own,
    unitEnds,
    picksPerRow,
    threading: Array.from({ length: units }, (_, unit) => [1 + unit]),
    lifts: Array.from({ length: rows }, (_, row) =>
      Array.from({ length: units }, (_, unit) => 1 + unit).filter(
        (unit) => Math.floor((unit + 2 * row) / period) % 2 === 0,
      ),
    ),
    selvedge: { left: edges, right: edges.toReversed() },
  }));

/** Clean twill: raise 1 2 3 4 while 4 3 2 1 is sunk cuts on all sides. */
const twill: Ground = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
};

/** A good draft as weavers make them: a point threading, a figure mirrored along the cloth, a ground that cuts clean. */
const goodDraft: fc.Arbitrary<UnitDraft> = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { minLength: 5, maxLength: 9 }),
    fc.array(shaftSet(9), { minLength: 5, maxLength: 8 }),
  )
  .map(([half, rows]) => ({
    ground: twill,
    unitEnds: 4,
    threading: [...half, ...half.toReversed().slice(1)].map((shaft) => [shaft]),
    lifts: [...rows, ...rows.toReversed().slice(1)].map((row) => row.filter((shaft) => half.includes(shaft))),
    picksPerRow: 4,
  }));

/** A good draft with one slip in it, of the kinds that weavers make. */
export const slippedDraft: fc.Arbitrary<UnitDraft> = fc
  .tuple(
    goodDraft,
    fc.constantFrom("ground", "tie left out", "tie astray", "unit", "unit twice", "lift", "row twice"),
    fc.nat(),
    fc.nat(),
  )
  .map(([good, slip, a, b]) => {
    const unit = a % good.threading.length;
    const row = a % good.lifts.length;
    const shaft = 1 + (b % 9);
    const { steps } = twill;
    const late = 1 + 2 * (b % 2);
    if (slip === "ground")
      return { ...good, ground: { ...twill, steps: [...steps.slice(late), ...steps.slice(0, late)] } };
    if (slip === "tie left out" || slip === "tie astray") {
      const step = steps[a % 4]!;
      const shaft = 1 + ((step.raise[0]! + (b % 2)) % 4);
      const raise = slip === "tie left out" || step.sink.includes(shaft) ? [] : [shaft];
      return { ...good, ground: { ...twill, steps: steps.with(a % 4, { ...step, raise }) } };
    }
    if (slip === "unit") return { ...good, threading: good.threading.with(unit, [shaft]) };
    if (slip === "unit twice")
      return { ...good, threading: good.threading.toSpliced(unit, 0, good.threading[unit]!) };
    if (slip === "row twice") return { ...good, lifts: good.lifts.toSpliced(row, 0, good.lifts[row]!) };
    const lift = new Set(good.lifts[row]);
    if (!lift.delete(shaft)) lift.add(shaft);
    return {
      ...good,
      lifts: good.lifts.with(
        row,
        [...lift].sort((x, y) => x - y),
      ),
    };
  });

/**
 * Small drafts over a ground that binds the figure well, a little, or not at all. Units hang each on a shaft of its own,
 * or share them.
 */
export const smallDraft: fc.Arbitrary<UnitDraft> = fc
  .tuple(
    fc.integer({ min: 2, max: 3 }),
    fc.integer({ min: 2, max: 3 }),
    fc.integer({ min: 1, max: 3 }),
    fc.boolean(),
  )
  .chain(([units, rows, ends, shared]) => {
    const shafts = shared ? Math.max(1, units - 1) : units;
    return fc.record({
      ground: fc.constantFrom<Ground>(
        twill,
        {
          shafts: 2,
          threading: [1, 2],
          steps: [
            { raise: [1], sink: [] },
            { raise: [], sink: [2] },
          ],
        },
        { shafts: 1, threading: [1], steps: [{ raise: [], sink: [] }] },
      ),
      unitEnds: fc.constant(ends),
      threading: fc.constant(Array.from({ length: units }, (_, unit) => [1 + (unit % shafts)])),
      lifts: fc.array(shaftSet(shafts), { minLength: rows, maxLength: rows }),
      picksPerRow: fc.integer({ min: 1, max: 2 }),
    });
  });
