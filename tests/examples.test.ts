import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import {
  docstringExamples,
  fencedExamples,
  functionsOf,
  type Promised,
  runExample,
} from "./support/examples.js";
import { libraries, type Package, root } from "./support/packages.js";

const load = (specifier: string): Promise<Record<string, unknown>> => import(specifier);

const entriesOf = ({ entries, specifier }: Package) =>
  entries.map((entry) => `${specifier}${entry.slice(1)}`);

/** The sources of a package. */
const sourcesOf = ({ src }: Package) =>
  readdirSync(src, { recursive: true, encoding: "utf8" })
    // The script of a page needs a page about it.
    .filter((file) => file.endsWith(".ts") && !file.startsWith("browser/"))
    .sort()
    .map((file) => ({ file, path: join(src, file) }));

/** What a package lets its examples name besides: the `scope` of its `test/example-scope.ts`, if it has one. */
async function scopeOf({ folder }: Package): Promise<unknown> {
  const file = join(folder, "test/example-scope.ts");
  return existsSync(file) ? (await load(file))["scope"] : {};
}

/** What an example may name: the exports of every package and of every file of its own. */
async function namesFor(library: Package): Promise<Record<string, unknown>> {
  const beside = sourcesOf(library).map((source) => source.path);
  const modules = await Promise.all([...libraries.flatMap(entriesOf), ...beside].map(load));
  return Object.assign({}, ...modules, await scopeOf(library));
}

describe("the runner of examples", () => {
  const results = async (code: string) => {
    const promises = await runExample(code, { half: (x: number) => x / 2 }, load);
    const outcomes = await Promise.allSettled(promises.map(({ check }) => check()));
    return outcomes.map(({ status }) => (status === "fulfilled" ? "kept" : "broken"));
  };

  it("compares numbers to the digits shown, and whole numbers as such", async () => {
    expect(
      await results("half(2 / 3); // 0.33\nhalf(2 / 3); // 0.34\nhalf(5); // 2\n[half(-1)]; // [-0.5]"),
    ).toEqual(["kept", "broken", "broken", "kept"]);
  });

  it("compares text, lists and objects whole", async () => {
    expect(
      await results('({ a: "1.50" }); // { a: "1.50" }\n[1, 2]; // [1]\nInt32Array.of(3); // [3]'),
    ).toEqual(["kept", "broken", "kept"]);
  });

  it("knows what is printed and what is thrown", async () => {
    expect(await results('console.log("#.\\n.#");\n// #.\n// .#\nconsole.log("#");\n// .')).toEqual([
      "kept",
      "broken",
    ]);
    expect(await results("Object.fromEntries(1) // throws x\nhalf(1) // throws x")).toEqual([
      "broken",
      "broken",
    ]);
    const throwing =
      'const fail = (): never => { throw Object.assign(new Error("no"), { code: "bad-size" }) };';
    expect(await results(`${throwing}\nfail() // throws bad-size\nfail() // throws other`)).toEqual([
      "kept",
      "broken",
    ]);
  });

  it("knows a result from a remark behind a declaration", async () => {
    expect(
      await results("const a = half(4); // 2\nconst b = half(4); // 2 or so\nconst c = half(4); // 3"),
    ).toEqual(["kept", "broken"]);
  });

  it("refuses a result that is not one", async () => {
    await expect(results("half(1) // a half, or so")).rejects.toThrow("no expression");
  });
});

describe.each(libraries)("$specifier", (library) => {
  let names: Record<string, unknown>;
  beforeAll(async () => {
    names = await namesFor(library);
  });

  const examples = sourcesOf(library).flatMap(({ file, path }) =>
    docstringExamples(readFileSync(path, "utf8")).map((code) => ({ file, path, code })),
  );

  it("has an example for every function that it exports", async () => {
    const exported = new Set((await Promise.all(entriesOf(library).map(load))).flatMap(Object.keys));
    const functions = sourcesOf(library).map(({ path }) => functionsOf(readFileSync(path, "utf8")));
    expect(functions.flatMap(({ told }) => told).length).toBeGreaterThan(0);
    expect(functions.flatMap(({ untold }) => untold.filter((name) => exported.has(name)))).toEqual([]);
  });

  it.each(examples)("$file: $code", async ({ path, code }) => {
    const promises = await runExample(code, { ...names, ...(await load(path)) }, load);
    expect(promises.length, "promises in the example").toBeGreaterThan(0);
    await keep(promises);
  });

  it("has examples in its README, and they are true", async () => {
    const promises = (
      await Promise.all(
        fencedExamples(readFileSync(library.readme, "utf8")).map((code) => runExample(code, {}, load)),
      )
    ).flat();
    expect(promises.length).toBeGreaterThan(0);
    await keep(promises);
  });
});

it("the examples of the project's README are true", async () => {
  const fences = fencedExamples(readFileSync(join(root, "README.md"), "utf8"));
  const promises = (await Promise.all(fences.map((code) => runExample(code, {}, load)))).flat();
  expect(promises.length).toBeGreaterThan(0);
  await keep(promises);
});

it("the examples of the page for the app developer are true", async () => {
  const fences = fencedExamples(readFileSync(join(root, "docs/guide/apps.md"), "utf8"));
  const promises = (await Promise.all(fences.map((code) => runExample(code, {}, load)))).flat();
  expect(promises.length).toBeGreaterThan(5);
  await keep(promises);
});

async function keep(promises: readonly Promised[]): Promise<void> {
  for (const { check } of promises) await check();
}
