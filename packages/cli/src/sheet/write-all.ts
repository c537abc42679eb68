import { stat } from "node:fs/promises";
import { resolve } from "node:path";
import { CliError } from "../error.js";
import type { Io } from "../io.js";
import { oneLine } from "../printable.js";
import { writeWhole } from "../write-whole.js";
import type { SheetFile } from "./sheet-files.js";

/** Writes every file whole. Files that are there already are found before the first is written. */
export async function writeAll(files: readonly SheetFile[], io: Io, force: boolean): Promise<void> {
  if (!force && files.length > 1) {
    for (const { name } of files) {
      const there = await stat(resolve(io.cwd, name)).catch(() => undefined);
      if (there !== undefined) {
        throw new CliError(
          "unwritable",
          `${name} is there already; --force replaces it; nothing was written`,
          {
            file: name,
          },
        );
      }
    }
  }
  for (const { name, make } of files) {
    await writeWhole(name, io.cwd, [await make()], { force });
    await io.stdout.write(`${oneLine(name)} was written\n`);
  }
}
