import { type Mend, mend, sayChange } from "@drawcord/check";
import { checkOptions, type Recipe, readRecipe, reviseRecipe } from "@drawcord/files";
import { CliError } from "../error.js";
import type { Io } from "../io.js";
import { writeWhole } from "../write-whole.js";
import { revisionsFor, same } from "./revisions.js";

/** Where the mended recipe goes. */
export interface MendTo {
  readonly output: string;
  /** Replaces a file that is there. */
  readonly force: boolean;
}

/**
 * Mends a recipe: writes it to a file, its comments and layout kept, and says on standard error what was changed. Where
 * nothing can be mended nothing is written.
 * @throws {CliError} `unmendable` where the change cannot be written in this recipe, `unwritable`; `FileError` where the
 * recipe cannot be read
 */
export async function mendFile(source: Uint8Array, name: string, to: MendTo, io: Io): Promise<void> {
  const recipe = readRecipe(source, name);
  const mends = mend(recipe.draft, checkOptions(recipe));
  const last = mends.at(-1);
  if (last === undefined) {
    await io.stderr.write(`${name}: no mend was found, so nothing was written\n`);
    return;
  }
  const text = reviseRecipe(source, name, revisionsFor(recipe, last.draft));
  prove(recipe, text, last);
  await writeWhole(to.output, io.cwd, [text], { force: to.force });
  for (const one of mends) await io.stderr.write(`${name}: ${inWords(one)}\n`);
  await io.stderr.write(`${to.output}: the mended recipe\n`);
}

/** Reads the mended text again: it must make just the draft that the mends were proved on. */
function prove({ file }: Recipe, text: string, { draft }: Mend): void {
  if (same(readRecipe(text, file).draft, draft)) return;
  throw new CliError(
    "unmendable",
    `${file}: the change cannot be written in this recipe; nothing was written`,
    {
      file,
    },
  );
}

function inWords({ rule, changes, squares }: Mend): string {
  const turned =
    squares === undefined || squares === 0
      ? ""
      : ` (${squares} ${squares === 1 ? "square" : "squares"} turned)`;
  return `${rule} mended: ${changes.map(sayChange).join("; ")}${turned}`;
}
