import { defineConfig, type Options } from "tsup";

/** One preset for every package: ES modules for Node 20 and current browsers, nothing bundled that is installed. */
function preset(name: string, entry: readonly string[]): Options {
  return {
    name,
    entry: entry.map((file) => `packages/${name}/src/${file}.ts`),
    outDir: `packages/${name}/dist`,
    tsconfig: `packages/${name}/tsconfig.json`,
    format: "esm",
    target: "es2022",
    platform: "neutral",
    sourcemap: true,
    // Chunks are named after their content: those of an older build go, the declarations, which tsc keeps up, stay.
    clean: ["!**/*.d.ts", "!**/*.d.ts.map", "!**/*.tsbuildinfo"],
    skipNodeModulesBundle: true,
  };
}

/** What mathjs loads. */
const underMathjs = [
  /^@babel\/runtime/,
  "complex.js",
  "decimal.js",
  "escape-latex",
  "fraction.js",
  "javascript-natural-sort",
  "seedrandom",
  "tiny-emitter",
  "typed-function",
];

export default defineConfig([
  preset("base", ["index"]),
  preset("grid", ["index"]),
  preset("yarn", ["index", "quantity"]),
  preset("ground", ["index"]),
  preset("units", ["index"]),
  preset("check", ["index", "measure"]),
  preset("causes", ["index"]),
  preset("files", ["index"]),
  preset("review", ["index"]),
  preset("page", ["index", "print"]),
  preset("sheet", ["index"]),
  {
    ...preset("cli", ["bin", "worker"]),
    // What a check needs is bundled and small: to find, load and read a hundred files takes longer than the check itself.
    // So it is with mathjs, in a file of its own that only a question of yarn loads. Outside stays page with its fonts.
    noExternal: [/^@drawcord\/(?!page)/, "fflate", "yaml", /^mathjs/, ...underMathjs],
    minify: true,
    esbuildOptions(options) {
      options.conditions = ["@drawcord/source"];
    },
  },
]);
