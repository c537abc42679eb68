import { gzipSync } from "node:zlib";
import { build } from "esbuild";

/** The most that an import may weigh in a page, in kB minified and gzipped; what is more is a fault of ours. */
export const ceilings: Readonly<Record<string, number>> = {
  "@drawcord/base DrawcordError": 1,
  "@drawcord/grid GridError": 1,
  "@drawcord/grid BitGrid": 1,
  "@drawcord/draw DrawError": 1,
  "@drawcord/draw drawPixels": 5,
  "@drawcord/draw drawSvg": 5,
  "@drawcord/yarn YarnError": 1,
  "@drawcord/yarn tex": 8,
  "@drawcord/ground GroundError": 1,
  "@drawcord/units UnitsError": 1,
  "@drawcord/units expand": 3.2,
  "@drawcord/units parseThreading": 2,
  "@drawcord/chart ChartError": 1,
  "@drawcord/check CheckError": 1,
  "@drawcord/check check": 27,
  "@drawcord/check sayFinding": 8,
  "@drawcord/causes sayCause": 3,
  "@drawcord/causes mend": 48,
  "@drawcord/files FileError": 1,
  "@drawcord/files readWif": 6,
  "@drawcord/files writePng": 6,
  // Of these, `yaml` is 30; what the reader itself and the notations weigh is 41.
  "@drawcord/files readRecipe": 73,
  "@drawcord/review checkRecipe": 120,
};

/** An import that a README states the weight of. */
export interface StatedSize {
  readonly specifier: string;
  readonly name: string;
  /** kB, minified and gzipped. */
  readonly kB: number;
}

/** The rows of the tables of sizes in a README: `` | `import { name } from "specifier"` | 1.2 kB | ``. */
export function statedSizes(readme: string): readonly StatedSize[] {
  return [...readme.matchAll(/^\| `import \{ (\w+) \} from "([^"]+)"` +\| ([\d.]+) kB \|$/gm)].map(
    ([, name, specifier, kB]) => ({ specifier: specifier!, name: name!, kB: Number(kB) }),
  );
}

/** What an import alone weighs in a page, in kB minified and gzipped. @param folder where its package is installed */
export async function sizeOf(specifier: string, name: string, folder: string): Promise<number> {
  const { outputFiles } = await build({
    stdin: { contents: `export { ${name} } from "${specifier}";`, resolveDir: folder },
    bundle: true,
    minify: true,
    write: false,
    format: "esm",
    platform: "browser",
    logLevel: "silent",
  });
  return gzipSync(outputFiles[0]!.contents, { level: 9 }).length / 1000;
}
