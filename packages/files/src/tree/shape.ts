/** Checks a tree against a schema, key by key, and says what is wrong in the weaver's words. */
import { nearest } from "@drawcord/base";
import { codeName, findControl, printable } from "../printable.js";
import type { Schema, TypeName } from "./json-schema.js";
import {
  entries,
  isList,
  isSection,
  items,
  type Path,
  type Spot,
  scalar,
  textOf,
  wayTo,
  wrong,
} from "./spot.js";

/**
 * Checks that a value has the shape of a schema.
 * @throws {FileError} `wrong-type`, `bad-value`, `unknown-key` (with the nearest known one), `missing-key`,
 * `duplicate-key`, each at its place
 */
export function checkShape(value: Spot, schema: Schema): void {
  const types = typesOf(schema);
  const found = typeOf(value);
  if (!types.some((type) => type === found || (type === "number" && found === "integer"))) {
    throw wrong(
      value,
      "wrong-type",
      `${subject(value.path)} must be ${wanted(types)}${suchAs(value, schema)}; ${foundThing(value)} was found`,
    );
  }
  if (found === "object") checkSection(value, schema);
  else if (found === "array") checkList(value, schema);
  else checkScalar(value, schema);
}

function typesOf(schema: Schema): readonly TypeName[] {
  const { type } = schema;
  return type === undefined ? [] : typeof type === "string" ? [type] : type;
}

function typeOf(value: Spot): TypeName | "null" | "other" {
  if (isSection(value)) return "object";
  if (isList(value)) return "array";
  const plain = scalar(value);
  if (plain === null) return "null";
  if (typeof plain === "string") return "string";
  if (typeof plain === "boolean") return "boolean";
  if (typeof plain !== "number" || !Number.isFinite(plain)) return "other";
  return Number.isInteger(plain) ? "integer" : "number";
}

const words: Readonly<Record<TypeName, string>> = {
  string: "text",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "a section of keys",
};

function wanted(types: readonly TypeName[]): string {
  return types.map((type) => words[type]).join(" or ");
}

/** An example, where a bare number stands for a text: a measure whose unit was left out. */
function suchAs(value: Spot, { examples, type }: Schema): string {
  const example = examples?.[0];
  const isNumber = typeof scalar(value) === "number";
  return isNumber && type === "string" && typeof example === "string" ? ` such as ${example}` : "";
}

function foundThing(value: Spot): string {
  switch (typeOf(value)) {
    case "object":
      return "a section of keys";
    case "array":
      return "a list";
    case "null":
      return hiddenByComment(value)
        ? "only a comment (put a text that begins with # between quotes)"
        : "nothing";
    case "string":
      return `the text "${printable(textOf(value), 40)}"`;
    default:
      return printable(textOf(value), 40);
  }
}

/** Whether the value is empty because a `#` turned what was meant into a comment. */
function hiddenByComment(value: Spot): boolean {
  const start = value.key?.range?.[0];
  if (start === undefined) return false;
  const { text } = value.tree;
  const end = text.indexOf("\n", start);
  return /:\s+#\S/.test(text.slice(start, end < 0 ? text.length : end));
}

function subject(path: Path): string {
  return path.length === 0 ? "a recipe" : wayTo(path);
}

function checkSection(value: Spot, schema: Schema): void {
  const { properties = {}, propertyNames, additionalProperties } = schema;
  const known = propertyNames?.enum ?? Object.keys(properties);
  const seen = new Set<string>();
  for (const [key, child] of entries(value)) {
    const spot = child.key === undefined ? child : { ...child, node: child.key };
    if (seen.has(key))
      throw wrong(spot, "duplicate-key", `the key "${printable(key)}" stands here a second time`);
    seen.add(key);
    const own = Object.hasOwn(properties, key) ? properties[key] : undefined;
    const of = own ?? (additionalProperties === false ? undefined : additionalProperties);
    if (of === undefined || (propertyNames !== undefined && !known.includes(key)))
      throw wrong(spot, "unknown-key", unknownKey(key, known, value.path));
    checkText(spot, key);
    checkShape(child, of);
  }
  for (const key of schema.required ?? []) {
    if (!seen.has(key)) throw wrong(value, "missing-key", `${subject(value.path)} needs the key "${key}"`);
  }
  if (schema.minProperties !== undefined && seen.size < schema.minProperties) {
    throw wrong(value, "missing-key", `${subject(value.path)} holds nothing`);
  }
  checkChoice(value, schema, seen);
  for (const [key, others] of Object.entries(schema.dependentRequired ?? {})) {
    const missing = seen.has(key) ? others.find((other) => !seen.has(other)) : undefined;
    if (missing === undefined) continue;
    throw wrong(
      value,
      "missing-key",
      `${subject(value.path)} has the key "${key}" and so needs the key "${missing}"`,
    );
  }
}

/** The sentence for a key that is not known: the nearest, or all there are. */
export function unknownKey(key: string, known: readonly string[], path: Path): string {
  const meant = nearest(key, known);
  const where = path.length === 0 ? "" : ` in ${wayTo(path)}`;
  const answer = meant === undefined ? `the keys here are ${known.join(", ")}` : `did you mean "${meant}"?`;
  return `unknown key "${printable(key)}"${where}; ${printable(answer, 300)}`;
}

function checkChoice(value: Spot, schema: Schema, seen: ReadonlySet<string>): void {
  const some = schema.anyOf?.map(({ required }) => required[0]);
  if (some?.some((key) => seen.has(key)) === false) {
    throw wrong(value, "missing-key", `${subject(value.path)} needs the key "${some[0]}"`);
  }
  if (schema.oneOf === undefined) return;
  const choices = schema.oneOf
    .filter(({ not }) => not === undefined || !seen.has(not.required[0]))
    .map(({ required }) => required[0]);
  const chosen = choices.filter((key) => seen.has(key));
  if (chosen.length === 1) return;
  const list = choices.map((key) => `"${key}"`).join(" or ");
  throw chosen.length === 0
    ? wrong(value, "missing-key", `${subject(value.path)} needs the key ${list}`)
    : wrong(
        value,
        "bad-value",
        `${subject(value.path)} has the keys "${chosen.join('" and "')}"; only one of them can stand`,
      );
}

function checkList(value: Spot, schema: Schema): void {
  const entriesOf = items(value);
  if (entriesOf.length < (schema.minItems ?? 0)) {
    throw wrong(value, "bad-value", `${subject(value.path)} is an empty list; at least one entry is needed`);
  }
  if (schema.items !== undefined) for (const item of entriesOf) checkShape(item, schema.items);
}

/** The most words that are told where one of them is near to what was found. */
const mostListed = 12;

function checkScalar(value: Spot, schema: Schema): void {
  const plain = scalar(value);
  const refuse = (expected: string) =>
    wrong(
      value,
      "bad-value",
      `${subject(value.path)} is ${printable(textOf(value), 40) || "empty"}; ${expected}`,
    );
  if (schema.const !== undefined && plain !== schema.const) throw refuse(`expected ${schema.const}`);
  if (schema.enum !== undefined && !schema.enum.some((choice) => choice === plain)) {
    const choices = schema.enum.map(String);
    const meant = nearest(textOf(value), choices);
    const expected =
      meant === undefined || choices.length <= mostListed ? [`expected ${choices.join(", ")}`] : [];
    throw refuse([...expected, ...(meant === undefined ? [] : [`did you mean "${meant}"?`])].join("; "));
  }
  if (typeof plain === "number") {
    const { minimum, maximum, exclusiveMinimum } = schema;
    if (minimum !== undefined && plain < minimum) throw refuse(`expected ${minimum} or more`);
    if (maximum !== undefined && plain > maximum) throw refuse(`expected ${maximum} or less`);
    if (exclusiveMinimum !== undefined && plain <= exclusiveMinimum)
      throw refuse(`expected more than ${exclusiveMinimum}`);
  }
  if (typeof plain === "string") {
    if (schema.pattern !== undefined && !new RegExp(schema.pattern).test(plain))
      throw refuse("expected some text");
    checkText(value, plain);
  }
}

/** Refuses control characters, which only escapes in quotes can bring in here. */
function checkText(value: Spot, text: string): void {
  const control = findControl(text);
  if (control < 0) return;
  const code = codeName(text.charCodeAt(control));
  throw wrong(value, "bad-value", `the text holds the control character ${code}`);
}
