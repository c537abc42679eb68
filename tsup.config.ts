import { defineConfig, type Options } from "tsup";

/** One preset for every package: ES modules for Node 20 and current browsers, nothing bundled that is installed. */
function preset(name: string, entry: readonly string[], platform: "neutral" | "node" = "neutral"): Options {
  return {
    name,
    entry: entry.map((file) => `packages/${name}/src/${file}.ts`),
    outDir: `packages/${name}/dist`,
    tsconfig: `packages/${name}/tsconfig.json`,
    format: "esm",
    target: "es2022",
    platform,
    sourcemap: true,
    skipNodeModulesBundle: true,
  };
}

export default defineConfig([
  preset("grid", ["index"]),
  preset("yarn", ["index", "quantity"]),
  preset("ground", ["index"]),
  preset("units", ["index"]),
  preset("check", ["index"]),
  preset("files", ["index"]),
  preset("sheet", ["index", "print"]),
  preset("cli", ["bin", "worker"], "node"),
]);
