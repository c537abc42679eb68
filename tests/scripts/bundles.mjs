// Makes the scripts and styles that pages carry inside: of packages/*/src/browser each NAME.ts with a NAME.css beside it
// becomes src/generated/NAME.ts, the script in one piece and readable, each with the hash that lets it into its page.
// Of the schema of recipes the reader gets what it goes by, without the words for editors.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { build } from "esbuild";

const packages = join(import.meta.dirname, "../../packages");

/** The generated modules, each by its file. */
async function bundles() {
  const styles = readdirSync(packages).flatMap((name) => {
    const folder = join(packages, name, "src/browser");
    if (!existsSync(folder)) return [];
    return readdirSync(folder)
      .filter((file) => file.endsWith(".css"))
      .map((file) => join(folder, file));
  });
  return Promise.all([
    ...styles.map(async (file) => [generatedOf(file), await moduleOf(file)]),
    shapeOfRecipes(),
  ]);
}

/** Writes those that are not as they should be. */
async function writeBundles() {
  for (const [file, text] of await bundles()) {
    if (existsSync(file) && readFileSync(file, "utf8") === text) continue;
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
}

function generatedOf(style) {
  return join(dirname(style), "../generated", `${basename(style, ".css")}.ts`);
}

async function moduleOf(style) {
  const { outputFiles } = await build({
    entryPoints: [style.replace(/\.css$/, ".ts")],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
    conditions: ["@drawcord/source"],
    charset: "utf8",
    logLevel: "error",
  });
  const script = `\n${outputFiles[0].text}`;
  const dress = `\n${readFileSync(style, "utf8")}`;
  const facts = { script, scriptHash: hashOf(script), style: dress, styleHash: hashOf(dress) };
  const name = basename(style, ".css");
  return [
    `// Made by tests/scripts/bundles.mjs from src/browser/${name}.ts and src/browser/${name}.css.`,
    ...Object.entries(facts).map(([fact, text]) => `export const ${fact} = ${JSON.stringify(text)};`),
    "",
  ].join("\n");
}

/** The module with the schema of recipes as far as the reader goes by it. */
async function shapeOfRecipes() {
  const schema = join(packages, "files/src/schema/recipe.ts");
  const { outputFiles } = await build({
    entryPoints: [schema],
    bundle: true,
    write: false,
    format: "esm",
    conditions: ["@drawcord/source"],
    logLevel: "error",
  });
  const code = Buffer.from(outputFiles[0].contents).toString("base64");
  const { recipeSchema } = await import(`data:text/javascript;base64,${code}`);
  const text = [
    "// Made by tests/scripts/bundles.mjs from src/schema/recipe.ts.",
    'import type { Schema } from "../tree/json-schema.js";',
    "",
    `export const recipeShape: Schema = ${JSON.stringify(shapeOf(recipeSchema))};`,
    "",
  ].join("\n");
  return [join(packages, "files/src/generated/recipe-shape.ts"), text];
}

/** A schema without its words: of the examples of a text the first stays, which a sentence shows. */
function shapeOf({
  $schema,
  title,
  description,
  examples,
  properties,
  additionalProperties,
  items,
  ...rest
}) {
  const ofEach = ([key, schema]) => [key, shapeOf(schema)];
  return {
    ...rest,
    ...(rest.type === "string" && typeof examples?.[0] === "string" && { examples: [examples[0]] }),
    ...(properties && { properties: Object.fromEntries(Object.entries(properties).map(ofEach)) }),
    ...(additionalProperties !== undefined && {
      additionalProperties: additionalProperties && shapeOf(additionalProperties),
    }),
    ...(items && { items: shapeOf(items) }),
  };
}

/** What a content security policy calls it by. */
function hashOf(text) {
  return `sha256-${createHash("sha256").update(text).digest("base64")}`;
}

/** Before the first test: tests see the sources of the workspace, and what is made of them. */
export async function setup() {
  await writeBundles();
}

if (process.argv[1] === import.meta.filename) await writeBundles();
