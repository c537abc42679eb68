/** Checks a tree against a schema, key by key, and says what is wrong in the weaver's words. */
import { nearest } from "@drawcord/base";
import type { FileError, FileErrorCode } from "../error.js";
import { codeName, findControl, printable } from "../printable.js";
import type { Schema, TypeName } from "./json-schema.js";
import { tell } from "./problems.js";
import {
  allEntries,
  allItems,
  isList,
  isSection,
  leaveOut,
  type Path,
  type Spot,
  scalar,
  textOf,
  wayTo,
  wrong,
} from "./spot.js";

/**
 * Checks that a value has the shape of a schema. What has not is told at its place (`wrong-type`, `bad-value`,
 * `unknown-key` with the nearest known one, `missing-key`, `duplicate-key`) and left out of what is read.
 * @throws {FileError} `too-many-problems`
 */
export function checkShape(value: Spot, schema: Schema): void {
  const types = typesOf(schema);
  const found = typeOf(value);
  if (!types.some((type) => type === found || (type === "number" && found === "integer"))) {
    const sentence = `${subject(value.path)} must be ${wanted(types)}${suchAs(value, schema)}; ${foundThing(value)} was found`;
    refuse(value, wrong(value, "wrong-type", sentence));
  } else if (found === "object") checkSection(value, schema);
  else if (found === "array") checkList(value, schema);
  else checkScalar(value, schema);
}

/** Tells a problem of a value, which is then left out. */
function refuse(value: Spot, problem: FileError): void {
  leaveOut(value);
  tell(value.tree.problems, problem);
}

/** Tells what is wrong with a section whose parts can be read all the same. */
function report(section: Spot, code: FileErrorCode, sentence: string): void {
  tell(section.tree.problems, wrong(section, code, sentence));
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
  const mistyped = new Set<string | undefined>();
  for (const [key, child] of allEntries(value)) {
    const spot = child.key === undefined ? child : { ...child, node: child.key };
    if (seen.has(key)) {
      report(spot, "duplicate-key", `the key "${printable(key)}" stands here a second time`);
      continue;
    }
    seen.add(key);
    const own = Object.hasOwn(properties, key) ? properties[key] : undefined;
    const of = own ?? (additionalProperties === false ? undefined : additionalProperties);
    if (of === undefined || (propertyNames !== undefined && !known.includes(key))) {
      mistyped.add(nearest(key, known));
      refuse(child, wrong(spot, "unknown-key", unknownKey(key, known, value.path)));
      continue;
    }
    checkText(child, spot, key);
    checkShape(child, of);
  }
  // A key that is there under a mistyped name is told once.
  const isMissing = (key: string) => !seen.has(key) && !mistyped.has(key);
  for (const key of schema.required ?? []) {
    if (isMissing(key)) report(value, "missing-key", `${subject(value.path)} needs the key "${key}"`);
  }
  if (schema.minProperties !== undefined && seen.size < schema.minProperties) {
    report(value, "missing-key", `${subject(value.path)} holds nothing`);
  }
  checkChoice(value, schema, seen, isMissing);
  for (const [key, others] of Object.entries(schema.dependentRequired ?? {})) {
    const missing = seen.has(key) ? others.find(isMissing) : undefined;
    if (missing === undefined) continue;
    const sentence = `${subject(value.path)} has the key "${key}" and so needs the key "${missing}"`;
    report(value, "missing-key", sentence);
  }
}

/** The sentence for a key that is not known: the nearest, or all there are. */
export function unknownKey(key: string, known: readonly string[], path: Path): string {
  const meant = nearest(key, known);
  const where = path.length === 0 ? "" : ` in ${wayTo(path)}`;
  const answer = meant === undefined ? `the keys here are ${known.join(", ")}` : `did you mean "${meant}"?`;
  return `unknown key "${printable(key)}"${where}; ${printable(answer, 300)}`;
}

function checkChoice(
  value: Spot,
  schema: Schema,
  seen: ReadonlySet<string>,
  isMissing: (key: string) => boolean,
): void {
  const some = schema.anyOf?.map(({ required }) => required[0]);
  if (some?.every(isMissing))
    report(value, "missing-key", `${subject(value.path)} needs the key "${some[0]}"`);
  if (schema.oneOf === undefined) return;
  const choices = schema.oneOf
    .filter(({ not }) => not === undefined || !seen.has(not.required[0]))
    .map(({ required }) => required[0]);
  const chosen = choices.filter((key) => seen.has(key));
  const list = choices.map((key) => `"${key}"`).join(" or ");
  if (choices.every(isMissing)) report(value, "missing-key", `${subject(value.path)} needs the key ${list}`);
  if (chosen.length > 1) {
    const sentence = `${subject(value.path)} has the keys "${chosen.join('" and "')}"; only one of them can stand`;
    report(value, "bad-value", sentence);
  }
}

function checkList(value: Spot, schema: Schema): void {
  const entriesOf = allItems(value);
  if (entriesOf.length < (schema.minItems ?? 0)) {
    const sentence = `${subject(value.path)} is an empty list; at least one entry is needed`;
    refuse(value, wrong(value, "bad-value", sentence));
  }
  if (schema.items !== undefined) for (const item of entriesOf) checkShape(item, schema.items);
}

/** The most words that are told where one of them is near to what was found. */
const mostListed = 12;

function checkScalar(value: Spot, schema: Schema): void {
  const expected = misfit(value, schema);
  if (expected !== undefined) {
    const found = printable(textOf(value), 40) || "empty";
    refuse(value, wrong(value, "bad-value", `${subject(value.path)} is ${found}; ${expected}`));
  } else if (typeof scalar(value) === "string") checkText(value, value, String(scalar(value)));
}

/** What was expected of a text or a number that does not fit; undefined when it does. */
function misfit(value: Spot, schema: Schema): string | undefined {
  const plain = scalar(value);
  if (schema.const !== undefined && plain !== schema.const) return `expected ${schema.const}`;
  if (schema.enum !== undefined && !schema.enum.some((choice) => choice === plain)) {
    const choices = schema.enum.map(String);
    const meant = nearest(textOf(value), choices);
    const expected =
      meant === undefined || choices.length <= mostListed ? [`expected ${choices.join(", ")}`] : [];
    return [...expected, ...(meant === undefined ? [] : [`did you mean "${meant}"?`])].join("; ");
  }
  if (typeof plain === "number") {
    const { minimum, maximum, exclusiveMinimum } = schema;
    if (minimum !== undefined && plain < minimum) return `expected ${minimum} or more`;
    if (maximum !== undefined && plain > maximum) return `expected ${maximum} or less`;
    if (exclusiveMinimum !== undefined && plain <= exclusiveMinimum)
      return `expected more than ${exclusiveMinimum}`;
  }
  const isShort = typeof plain === "string" && schema.pattern !== undefined;
  return isShort && !new RegExp(schema.pattern!).test(plain) ? wantedText(schema.pattern!) : undefined;
}

/** The words of a pattern that is a choice of words; else any text will do. */
function wantedText(pattern: string): string {
  const choices = /^\^\(([\w|-]+)\)\$$/.exec(pattern)?.[1]?.split("|");
  return choices === undefined ? "expected some text" : `expected ${choices.join(", ")}`;
}

/** Leaves a value out whose text, or whose key, has control characters, which only escapes in quotes can bring in here. */
function checkText(value: Spot, shown: Spot, text: string): void {
  const control = findControl(text);
  if (control < 0) return;
  const code = codeName(text.charCodeAt(control));
  refuse(value, wrong(shown, "bad-value", `the text holds the control character ${code}`));
}
