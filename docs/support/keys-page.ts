import type { Schema } from "@drawcord/files";
import { editorSchema } from "@drawcord/review";
import { anchorOf, OWN_NAME } from "../bench/schema-keys.js";
import { escaped } from "./text.js";
import { isWhole } from "./whole.js";

/** Every key of a recipe with what it means and an example of it: where the bench's helps lead to. */
export function keysPage(): string {
  const schema = editorSchema();
  return [
    "# Keys of a recipe",
    "Every key that a recipe may have, section by section, as the reader knows them. How threadings, rows and orders are written stands, with pictures, under [the recipe's language](./recipe-language). Of the sections only `recipe`, `ground`, `units` and `lifts` are needed, and of `lifts` a recipe with `pieces` may have none.",
    ...(isWhole
      ? ["What is read of them is the [`Recipe`](./reference/files#Recipe) of the reference."]
      : []),
    ...Object.entries(schema.properties ?? {}).map(([key, section]) => sectionText(key, section)),
  ].join("\n\n");
}

function sectionText(key: string, section: Schema): string {
  const below = keysBelow(section, [key]);
  return [
    `## ${key} {#${anchorOf([key])}}`,
    ...facts(section),
    ...(below.length === 0 ? [] : [`<dl class="lines">${below.join("")}</dl>`]),
  ].join("\n\n");
}

/** A key and those beneath it, each as a term and what it means. */
function keysBelow(schema: Schema, path: readonly string[]): readonly string[] {
  const { items, properties = {}, additionalProperties: any } = schema;
  return [
    ...Object.entries(properties).flatMap(([key, one]) => termOf(one, [...path, key])),
    ...(typeof any === "object" ? termOf(any, [...path, OWN_NAME]) : []),
    ...(items === undefined ? [] : keysBelow(items, path)),
  ];
}

function termOf(schema: Schema, path: readonly string[]): readonly string[] {
  const text = facts(schema).map((fact) => `<dd>${inline(fact)}</dd>`);
  const name = `<dt id="${anchorOf(path)}"><code>${path.join(": ")}</code></dt>`;
  return [name, ...text, ...keysBelow(schema, path)];
}

/** What a key means, which words it takes, and an example of it. */
function facts({ description, enum: words, examples = [], minimum, maximum }: Schema): readonly string[] {
  const [example] = examples;
  const bounds = maximum === undefined ? `from ${minimum} on` : `from ${minimum} to ${maximum}`;
  return [
    ...(description === undefined ? [] : [description]),
    ...(words === undefined ? [] : [`One of ${words.map((word) => `\`${word}\``).join(", ")}.`]),
    ...(minimum === undefined ? [] : [`A number ${bounds}.`]),
    ...(example === undefined ? [] : [`For example \`${JSON.stringify(example).replace(/^"|"$/g, "")}\`.`]),
  ];
}

/** The code within a sentence, where Markdown is not read. */
function inline(sentence: string): string {
  return escaped(sentence).replace(/`([^`]*)`/g, "<code>$1</code>");
}
