/** Keys of a recipe by its schema: those that may stand at a place of the text, what the one there means, what it takes. */
import type { Schema } from "@drawcord/files";
import { editorSchema } from "@drawcord/review";

/** What stands in a path for a name of the weaver's own, such as that of a block. */
export const OWN_NAME = "NAME";

/** The place of a key on the page of all keys. */
export function anchorOf(path: readonly string[]): string {
  return path.join("-").toLowerCase();
}

/** A key with its description. */
export interface SchemaKey {
  readonly name: string;
  readonly description: string;
}

const schema = editorSchema();

/** The keys above a place, outermost first: by the indentation of the lines before it, and within braces by the line itself. */
function pathAt(text: string, at: number): readonly string[] {
  const before = text.slice(0, at).split("\n");
  const line = before.at(-1)!;
  const opened = openBraces(line);
  const path: string[] = [];
  // A line of blanks alone is as deep as it is long.
  let indent = line.trim() === "" ? line.length : line.search(/\S/);
  for (const earlier of before.slice(0, -1).reverse()) {
    const found = /^(\s*)(- )?([\w-]+):/.exec(earlier);
    if (found === null) continue;
    const depth = found[1]!.length + (found[2] ?? "").length;
    if (depth >= indent) continue;
    path.unshift(found[3]!);
    indent = depth;
    if (depth === 0) break;
  }
  return [...path, ...opened];
}

/** The keys whose braces are open at the end of a line. */
function openBraces(line: string): readonly string[] {
  const open: string[] = [];
  for (const [, key, close] of line.matchAll(/([\w-]+):\s*\{|(\})/g)) {
    if (close === undefined) open.push(key!);
    else open.pop();
  }
  return open;
}

/** A part of the schema, and the keys that lead to it. */
interface Section {
  readonly schema: Schema;
  readonly path: readonly string[];
}

function sectionsAt(path: readonly string[]): readonly Section[] {
  let sections: readonly Section[] = choices(schema).map((one) => ({ schema: one, path: [] }));
  for (const key of path) {
    sections = sections.flatMap(({ path: above, schema: one }) => {
      const known = one.properties?.[key];
      const any = one.additionalProperties;
      const found = known ?? (typeof any === "object" ? any : undefined);
      const name = known === undefined ? OWN_NAME : key;
      return found === undefined
        ? []
        : choices(found).map((below) => ({ schema: below, path: [...above, name] }));
    });
  }
  return sections;
}

/** A schema and the items of its list. */
function choices(one: Schema): readonly Schema[] {
  return one.items === undefined ? [one] : [one, ...choices(one.items)];
}

/**
 * The keys that may stand at a place of a recipe's text.
 * @param text the recipe
 * @param at the place, from 0
 */
export function keysAt(text: string, at: number): readonly SchemaKey[] {
  const found = new Map<string, string>();
  for (const {
    schema: { properties = {}, propertyNames },
  } of sectionsAt(pathAt(text, at))) {
    for (const [name, { description = "" }] of Object.entries(properties)) found.set(name, description);
    for (const name of propertyNames?.enum ?? []) found.set(name, "");
  }
  return [...found].map(([name, description]) => ({ name, description }));
}

/**
 * The words that may stand for the value at a place, behind its key.
 * @param text the recipe
 * @param at the place, from 0
 */
export function valuesAt(text: string, at: number): readonly string[] {
  const line = text.slice(text.lastIndexOf("\n", at - 1) + 1, at);
  const [, key] = /([\w-]+):\s+$/.exec(line) ?? [];
  if (key === undefined) return [];
  const path = pathAt(text, at - line.length + line.lastIndexOf(key));
  return sectionsAt([...path, key]).flatMap(({ schema: { enum: words = [] } }) => words.map(String));
}

/** A key where it stands in a text. */
export interface KeyInText extends SchemaKey {
  readonly from: number;
  readonly to: number;
  /** The keys that lead to it, and itself. */
  readonly path: readonly string[];
}

/**
 * The key at a place of a recipe's text, where it stands, and what it means; undefined where there is none.
 * @param text the recipe
 * @param at the place, from 0
 */
export function keyAt(text: string, at: number): KeyInText | undefined {
  const start = text.lastIndexOf("\n", at - 1) + 1;
  const end = text.indexOf("\n", at);
  const line = text.slice(start, end < 0 ? text.length : end);
  for (const { 0: key, index } of line.matchAll(/[\w-]+(?=:)/g)) {
    const from = start + index;
    if (at < from || at > from + key.length) continue;
    const known = keysAt(text, from).find((one) => one.name === key);
    if (known === undefined) return undefined;
    const [{ path } = { path: [] }] = sectionsAt(pathAt(text, from));
    return { ...known, from, to: from + key.length, path: [...path, key] };
  }
  return undefined;
}
