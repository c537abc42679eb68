/** The tests of a package in one file, with all that they import, so that a thread reads them in no time. */
import { readdirSync, readFileSync, realpathSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import process from "node:process";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

/** Tests of how much the sources weigh and what is written of them, which no changed source can pass. */
const OF_SOURCES = /^(?:bundle|trees)\.test\.ts$/;

/** @param {string} name of the package, in the folder `packages` of the place where this runs */
export async function bundleTests(name) {
  const root = process.cwd();
  const folder = join(root, "packages", name, "test");
  const file = join(folder, `all-${process.pid}.mjs`);
  const tests = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((test) => test.replaceAll("\\", "/"))
    .filter((test) => test.endsWith(".test.ts") && !OF_SOURCES.test(test));
  await build({
    stdin: { contents: program(tests), resolveDir: folder, loader: "ts" },
    outfile: file,
    bundle: true,
    format: "esm",
    platform: "node",
    external: ["esbuild"],
    banner: {
      js: 'import { createRequire as makeRequire } from "node:module"; const require = makeRequire(import.meta.url);',
    },
    // A test that asks for its own place stands in the folder of tests.
    define: { "import.meta.url": JSON.stringify(pathToFileURL(join(folder, "x.test.ts")).href) },
    logLevel: "error",
    plugins: [sources(root)],
  });
  return { file, remove: () => rmSync(file, { force: true }) };
}

function program(tests) {
  return [
    'import { configureGlobal, readConfigureGlobal } from "fast-check";',
    'import "../../../tests/support/seed.ts";',
    'import { collected, inFile } from "vitest";',
    // One failure is enough: no smaller one is looked for.
    "configureGlobal({ ...readConfigureGlobal(), endOnFailure: true });",
    "export async function collect() {",
    ...tests.map((test) => `  await inFile(${JSON.stringify(test)}, () => import("./${test}"));`),
    "  return collected;",
    "}",
  ].join("\n");
}

/** Where imports lead: to the sources here, not where the workspace is linked from, and to what stands in for vitest. */
function sources(root) {
  const vitest = dirname(realpathSync(join(root, "node_modules/vitest/package.json")));
  return {
    name: "sources",
    setup(set) {
      set.onResolve({ filter: /^@drawcord\// }, ({ path }) => ({ path: sourceOf(root, path) }));
      set.onResolve({ filter: /^vitest$/ }, () => ({ path: join(root, "tests/mutants/vitest.mjs") }));
      set.onResolve({ filter: /^(?:@vitest\/expect|chai)$/ }, ({ kind, path, pluginData }) =>
        pluginData === vitest
          ? undefined
          : set.resolve(path, { kind, resolveDir: vitest, pluginData: vitest }),
      );
    },
  };
}

/** @param {string} specifier `@drawcord/check/measure` @returns {string} the file that it is made of */
function sourceOf(root, specifier) {
  const [, name, ...entry] = specifier.split("/");
  const folder = join(root, "packages", name);
  const manifest = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  return join(folder, manifest.exports[[".", ...entry].join("/")]["@drawcord/source"]);
}
