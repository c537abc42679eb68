import type { ShaftDraft, Shedding, ThreadLook, ThreadUnit } from "@drawcord/check";
import type { Colour } from "@drawcord/draw";
import { type BitGrid, fromBooleans } from "@drawcord/grid";
import type { UnitDraft } from "@drawcord/units";
import fc from "fast-check";

/** A plain value as JSON has them. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** Values that a recipe might hold by mistake: the right ones of other keys among them. */
function jsonValue(): fc.Arbitrary<Json> {
  const text = fc.constantFrom(
    "",
    " ",
    "none",
    "1 2",
    "10/2 Ne",
    "6 mm",
    "24 per inch",
    "2 %",
    "moth",
    "off",
    "X",
  );
  const leaf = fc.oneof(
    text,
    fc.integer({ min: -2, max: 12 }),
    fc.constantFrom(0.5, 1e9, 1e12, -0.25),
    fc.boolean(),
    fc.constant(null),
  );
  return fc.oneof(
    { weight: 4, arbitrary: leaf },
    { weight: 1, arbitrary: fc.array(leaf, { maxLength: 3 }) },
    { weight: 1, arbitrary: fc.dictionary(key(), leaf, { maxKeys: 3 }) },
  );
}

/** Keys that a recipe has somewhere, and some that it has nowhere. */
function key(): fc.Arbitrary<string> {
  return fc.constantFrom(
    ...[
      "recipe",
      "ground",
      "weave",
      "steps",
      "raise",
      "rows",
      "picture",
      "order",
      "blocks",
      "ends",
      "static",
    ],
    ...["warp", "weft", "count", "float", "width", "length", "rule", "levels", "moth", "toString", "qqq"],
  );
}

/** A document with one value replaced, left out or added somewhere. */
function slipIn(document: Json): fc.Arbitrary<Json> {
  const paths = pathsOf(document);
  return fc
    .tuple(fc.constantFrom(...paths), fc.constantFrom("replace", "leave out", "add"), key(), jsonValue())
    .map(([path, slip, name, value]) => changeAt(document, path, slip, name, value));
}

/** A document with up to three slips. */
export function slips(document: Json): fc.Arbitrary<Json> {
  return slipIn(document).chain((once) =>
    fc.oneof(fc.constant(once), slipIn(once), slipIn(once).chain(slipIn)),
  );
}

type Steps = readonly (string | number)[];

function pathsOf(value: Json, path: Steps = []): Steps[] {
  if (Array.isArray(value)) return [path, ...value.flatMap((item, i) => pathsOf(item, [...path, i]))];
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([name, item]) => pathsOf(item, [...path, name]))];
}

function changeAt(value: Json, path: Steps, slip: string, name: string, by: Json): Json {
  const [step, ...rest] = path;
  if (step === undefined) {
    if (slip !== "add") return by;
    if (Array.isArray(value)) return [...value, by];
    return typeof value === "object" && value !== null ? { ...value, [name]: by } : by;
  }
  const leaveOut = slip === "leave out" && rest.length === 0;
  if (Array.isArray(value)) {
    return value.flatMap((item: Json, i) =>
      i !== step ? [item] : leaveOut ? [] : [changeAt(item, rest, slip, name, by)],
    );
  }
  return Object.fromEntries(
    Object.entries(value as { readonly [key: string]: Json }).flatMap(([at, item]) =>
      at !== step ? [[at, item]] : leaveOut ? [] : [[at, changeAt(item, rest, slip, name, by)]],
    ),
  );
}

/** Grids of one square and more, of widths where bytes and words end. */
export function grids(): fc.Arbitrary<BitGrid> {
  const side = fc.oneof(fc.integer({ min: 1, max: 20 }), fc.constantFrom(31, 32, 33, 63, 64, 65));
  return fc.tuple(side, side).chain(([rows, columns]) =>
    fc
      .array(fc.array(fc.boolean(), { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      })
      .map(fromBooleans),
  );
}

/** Shafts or treadles from 1 to `most`, ascending; often one, sometimes none. */
function numberSets(most: number): fc.Arbitrary<readonly number[]> {
  return fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: 1, max: most }).map((shaft) => [shaft]) },
    { weight: 1, arbitrary: fc.subarray(Array.from({ length: most }, (_, i) => i + 1)) },
  );
}

const colour: fc.Arbitrary<Colour> = fc
  .integer({ min: 0, max: 0xffffff })
  .map((code) => `#${code.toString(16).padStart(6, "0")}` as const);

function look(threads: number): fc.Arbitrary<ThreadLook> {
  const size = fc.oneof(
    fc.constantFrom(0, 1, 0.5, 1e-9, 212),
    fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
  );
  const exactly = { minLength: threads, maxLength: threads };
  const measure = fc.oneof(
    fc.record({ all: size }),
    fc.record({ all: size, each: fc.array(size, exactly) }),
    fc.record({ each: fc.array(size, exactly) }),
  );
  return fc.record(
    {
      colours: fc
        .array(colour, { minLength: 1, maxLength: 3 })
        .chain((few) => fc.array(fc.constantFrom(...few), exactly)),
      unit: fc.constantFrom<ThreadUnit>("centimeters", "inches", "decipoints"),
      spacing: measure,
      thickness: measure,
    },
    { requiredKeys: [] },
  );
}

/** Plain drafts of either shedding, with threads on no shaft and on several. */
export function shaftDrafts(): fc.Arbitrary<ShaftDraft> {
  const sizes = fc.record({
    ends: fc.oneof(fc.integer({ min: 1, max: 12 }), fc.constantFrom(31, 32, 33, 65)),
    picks: fc.integer({ min: 1, max: 12 }),
    shafts: fc.integer({ min: 1, max: 9 }),
    treadles: fc.integer({ min: 1, max: 9 }),
  });
  return sizes.chain(({ ends, picks, shafts, treadles }) => {
    const of = (count: number, most: number) =>
      fc.array(numberSets(most), { minLength: count, maxLength: count });
    const shedding: fc.Arbitrary<Shedding> = fc.oneof(
      fc.record({
        kind: fc.constant("tie-up" as const),
        tieUp: of(treadles, shafts),
        treadling: of(picks, treadles),
      }),
      fc.record({ kind: fc.constant("lift-plan" as const), liftPlan: of(picks, shafts) }),
    );
    const line = fc.constantFrom("Moth", "Fougère à 8 lames", "a;b = [c]", "10 %");
    return fc.record(
      {
        title: line,
        author: line,
        notes: fc.array(line, { minLength: 1, maxLength: 3 }),
        shafts: fc.constant(shafts),
        threading: of(ends, shafts),
        shedding,
        rising: fc.boolean(),
        warp: look(ends),
        weft: look(picks),
      },
      { requiredKeys: ["shafts", "threading", "shedding", "rising", "warp", "weft"] },
    );
  });
}

/** Figured cloth of a few units and rows, on any ground of up to four shafts. */
export function unitDrafts(): fc.Arbitrary<UnitDraft> {
  const some = <T>(of: fc.Arbitrary<T>, maxLength: number) => fc.array(of, { minLength: 1, maxLength });
  const shafts = numberSets(5);
  const step = fc
    .array(fc.constantFrom("raise", "sink", "free"), { minLength: 4, maxLength: 4 })
    .map((moves) => ({
      raise: moves.flatMap((move, i) => (move === "raise" ? [i + 1] : [])),
      sink: moves.flatMap((move, i) => (move === "sink" ? [i + 1] : [])),
    }));
  return fc.record({
    ground: fc.record({
      shafts: fc.constant(4),
      threading: some(fc.integer({ min: 1, max: 4 }), 6),
      steps: some(step, 6),
    }),
    unitEnds: fc.integer({ min: 1, max: 5 }),
    threading: some(shafts, 8),
    lifts: some(shafts, 8),
    picksPerRow: fc.integer({ min: 1, max: 5 }),
  });
}
