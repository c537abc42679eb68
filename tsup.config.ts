import { copyFile } from "node:fs/promises";
import { defineConfig } from "tsup";

/** The command alone is bundled; the packages are built by `tsc`, one file a module, so that an import takes only what it needs. */
export default defineConfig({
  name: "cli",
  entry: ["bin", "worker"].map((file) => `packages/cli/src/${file}.ts`),
  outDir: "packages/cli/dist",
  tsconfig: "packages/cli/tsconfig.json",
  format: "esm",
  target: "es2022",
  platform: "neutral",
  minify: true,
  // Tells which packages the bundle holds; it is not published.
  metafile: true,
  // Chunks are named after their content: those of an older build go, the declarations, which tsc keeps up, stay.
  clean: ["!**/*.d.ts", "!**/*.d.ts.map", "!**/*.tsbuildinfo"],
  skipNodeModulesBundle: true,
  // What a check needs is bundled and small: to find, load and read a hundred files takes longer than the check itself.
  // Outside stay the print of pages, with its fonts, and mathjs, which only a formula of the user's own loads.
  noExternal: [/^@drawcord\/(?!page\/print)/, "fflate", "yaml", "bidi-js"],
  esbuildOptions(options) {
    options.conditions = ["@drawcord/source"];
  },
  // The second line of the starter leads an editor to it.
  onSuccess: () => copyFile("packages/files/recipe.schema.json", "packages/cli/recipe.schema.json"),
});
