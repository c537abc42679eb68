// Takes out of each package's `dist/` what no source stands behind any more: tsc writes what is there, and leaves the rest.
import { existsSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";

const packages = join(import.meta.dirname, "../../packages");

for (const name of readdirSync(packages)) {
  const dist = join(packages, name, "dist");
  if (!existsSync(dist)) continue;
  for (const file of readdirSync(dist, { recursive: true, encoding: "utf8" })) {
    const module = /^(.*?)\.(?:d\.ts|js)(?:\.map)?$/.exec(file)?.[1];
    if (module === undefined || existsSync(join(packages, name, "src", `${module}.ts`))) continue;
    // The command's own code is bundled, and tsup clears it away.
    if (name !== "cli" || file.includes(".d.ts")) rmSync(join(dist, file));
  }
}
