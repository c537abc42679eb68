import { builtinModules } from "node:module";
import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";

const folder = fileURLToPath(new URL("..", import.meta.url));

/** A browser bundle of what names some exports: its code without what is loaded later, the modules in it, its weight. */
async function bundle(names: string) {
  const { outputFiles, metafile } = await build({
    stdin: { contents: `export ${names} from "./src/index.ts";`, resolveDir: folder, loader: "ts" },
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    splitting: true,
    platform: "browser",
    format: "esm",
    outdir: "out",
    logLevel: "silent",
  });
  const [first] = Object.entries(metafile.outputs).filter(([, { entryPoint }]) =>
    entryPoint?.includes("stdin"),
  );
  const { imports, inputs } = first![1];
  const now = [first!, ...Object.entries(metafile.outputs).filter(([path]) => isLoaded(path, imports))];
  const later = Object.entries(metafile.outputs).filter(([path]) => !now.some(([one]) => one === path));
  const modulesOf = (outputs: typeof now): string[] =>
    outputs.flatMap(([, output]) =>
      Object.entries(output.inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
    );
  expect(Object.keys(inputs).length).toBeGreaterThan(0);
  const kB = now.reduce((sum, [path]) => {
    const file = outputFiles.find((one) => one.path.endsWith(path))!;
    return sum + gzipSync(file.contents, { level: 9 }).length / 1000;
  }, 0);
  const imported = Object.values(metafile.inputs).flatMap((input) => input.imports.map(({ path }) => path));
  return { modules: modulesOf(now), later: modulesOf(later), imported, kB };
}

function isLoaded(path: string, imports: readonly { path: string; kind: string }[]): boolean {
  return imports.some((one) => one.path === path && one.kind === "import-statement");
}

/** The code of the whole package for a page, as one script. */
async function script(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [`${folder}/src/index.ts`],
    bundle: true,
    minify: true,
    write: false,
    platform: "browser",
    format: "iife",
    globalName: "yarn",
    logLevel: "silent",
  });
  return outputFiles[0]!.text;
}

/** What a page without anything of Node's gets from an expression of the bundle. */
function inAPage(code: string, expression: string): unknown {
  return runInContext(`${code};JSON.stringify(${expression})`, createContext({}));
}

describe("in a browser", () => {
  it("the package works, with no module of Node's", async () => {
    const { imported } = await bundle("*");
    for (const path of imported) expect(builtinModules).not.toContain(path.replace(/^node:/, ""));
    expect(
      inAPage(
        await script(),
        'yarn.rounded(yarn.calculate("width-in-reed", { n: 540, S: "10 per cm" })).value',
      ),
    ).toBe("540");
  });

  it("works its formulas without mathjs, which is loaded for one of the user's own", async () => {
    const { later, modules } = await bundle("*");
    expect(modules.length).toBeGreaterThan(20);
    expect(modules.filter((path) => path.includes("node_modules"))).toEqual([]);
    expect(later.some((path) => path.includes("/mathjs/"))).toBe(true);
  });

  it("takes the parser from mathjs, not matrices, statistics or units", async () => {
    const { later } = await bundle("*");
    const used = later.filter((path) => path.includes("/mathjs/lib/esm/"));
    for (const area of ["matrix", "statistics", "probability", "algebra", "signal", "set", "combinatorics"]) {
      // The parser's index node asks for the size of a list.
      const foreign = used.filter(
        (path) => path.includes(`/function/${area}/`) && !path.endsWith("/matrix/size.js"),
      );
      expect(foreign).toEqual([]);
    }
    expect(used.filter((path) => path.includes("/type/unit/"))).toEqual([]);
  });

  it("weighs no more than is good", async () => {
    const measured: number[] = [];
    for (const names of ["*", "{ tex }", "{ parseQuantity }"]) measured.push((await bundle(names)).kB);
    expect(measured[0]).toBeLessThan(30);
    expect(measured[1]).toBeLessThan(8);
    expect(measured[2]).toBeLessThan(4);
  });
});
