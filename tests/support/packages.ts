import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** The folder of the whole project. */
export const root = join(import.meta.dirname, "../..");

/** A package of the workspace. */
export interface Package {
  /** Its folder in `packages/`. */
  readonly name: string;
  /** What an `import` says. */
  readonly specifier: string;
  readonly folder: string;
  readonly src: string;
  readonly readme: string;
  /** What can be imported from it: `.`, `./quantity`, ... */
  readonly entries: readonly string[];
}

interface Manifest {
  readonly name: string;
  readonly exports: Readonly<Record<string, unknown>>;
}

/** Every package of the workspace, in the order of their names. */
export const packages: readonly Package[] = readdirSync(join(root, "packages"), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => {
    const folder = join(root, "packages", name);
    const manifest = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as Manifest;
    return {
      name,
      specifier: manifest.name,
      folder,
      src: join(folder, "src"),
      readme: join(folder, "README.md"),
      entries: Object.keys(manifest.exports).filter((entry) => !entry.endsWith(".json")),
    };
  });

/** Those that are imported; the command is not. */
export const libraries: readonly Package[] = packages.filter(({ entries }) => entries.length > 0);
