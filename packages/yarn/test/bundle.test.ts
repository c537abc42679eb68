import { readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";

const source = (file: string): string => fileURLToPath(new URL(`../src/${file}`, import.meta.url));

/** A browser bundle of an entry: its code, its modules, and its weight over the wire. */
async function bundle(file: string, external: string[] = []) {
  const { outputFiles, metafile } = await build({
    entryPoints: [source(file)],
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    platform: "browser",
    format: external.length > 0 ? "esm" : "iife",
    globalName: "yarn",
    external,
    logLevel: "silent",
  });
  const code = outputFiles[0]!.text;
  // Modules that leave a byte; the rest were shaken off.
  const modules = Object.values(metafile.outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
  );
  const imported = Object.values(metafile.inputs).flatMap(({ imports }) => imports.map(({ path }) => path));
  return { code, modules, imported, kB: gzipSync(code, { level: 9 }).length / 1000 };
}

/** What a page without anything of Node's gets from an expression of the bundle. */
function inAPage(code: string, expression: string): unknown {
  return runInContext(`${code};JSON.stringify(${expression})`, createContext({}));
}

describe("in a browser", () => {
  it("the package works, with no module of Node's", async () => {
    const { code, imported } = await bundle("index.ts");
    for (const path of imported) expect(builtinModules).not.toContain(path.replace(/^node:/, ""));
    expect(
      inAPage(code, 'yarn.rounded(yarn.calculate("width-in-reed", { n: 564, S: "40 per inch" })).value'),
    ).toBe("358.1");
  });

  it("quantities and notations are read without mathjs", async () => {
    const { code, modules, imported } = await bundle("quantity.ts");
    expect(modules.length).toBeGreaterThan(5);
    expect([...modules, ...imported].filter((path) => /node_modules|mathjs/.test(path))).toEqual([]);
    expect(inAPage(code, 'yarn.readQuantity("14 1/2 in")')).toBe(
      '{"value":14.5,"unit":"in","kind":"length"}',
    );
    expect(inAPage(code, 'yarn.readYarn("16/2 Ne").plies')).toBe("2");
  });

  it("takes from mathjs the parser and the units, not the matrices and the statistics", async () => {
    const { modules } = await bundle("index.ts");
    const used = modules.filter((path) => path.includes("/mathjs/lib/esm/function/"));
    expect(modules.some((path) => path.includes("/mathjs/"))).toBe(true);
    for (const area of ["matrix", "statistics", "probability", "algebra", "signal", "set", "combinatorics"]) {
      // The parser's index node asks for the size of a list.
      const foreign = used.filter(
        (path) => path.includes(`/function/${area}/`) && !path.endsWith("/matrix/size.js"),
      );
      expect(foreign).toEqual([]);
    }
  });

  it("weighs what the README says, and no more than is good", async () => {
    const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
    const stated = [...readme.matchAll(/\| (\d+(?:\.\d+)?) kB \|/g)].map(([, kB]) => Number(kB));
    const whole = await bundle("index.ts");
    const alone = await bundle("index.ts", ["mathjs", "mathjs/number"]);
    const light = await bundle("quantity.ts");
    const measured = [whole.kB, alone.kB, light.kB];
    expect(stated.length).toBe(3);
    for (const [i, kB] of measured.entries()) {
      expect(
        Math.abs(kB - stated[i]!),
        `measured ${measured.map((one) => one.toFixed(1)).join(", ")} kB`,
      ).toBeLessThan(0.05 * kB);
    }
    // All of mathjs is 190 kB; the checker and the first page load only the light entry.
    expect(whole.kB).toBeLessThan(100);
    expect(light.kB).toBeLessThan(8);
  });
});
