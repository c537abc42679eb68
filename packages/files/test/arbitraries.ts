import { type BitGrid, fromBooleans } from "@drawcord/grid";
import fc from "fast-check";

/** A plain value as JSON has them. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** Values that a recipe might hold by mistake: the right ones of other keys among them. */
export function jsonValue(): fc.Arbitrary<Json> {
  const text = fc.constantFrom(
    "",
    " ",
    "none",
    "1 2",
    "8/2 Ne",
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
export function key(): fc.Arbitrary<string> {
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
export function slipIn(document: Json): fc.Arbitrary<Json> {
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
