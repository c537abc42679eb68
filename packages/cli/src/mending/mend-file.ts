import { listed } from "@drawcord/base";
import { type Mend, mend } from "@drawcord/causes";
import { check } from "@drawcord/check";
import { kindOf, reviseDraft, soundRecipe } from "@drawcord/files";
import { optionsOf } from "@drawcord/review";
import { sayChange } from "@drawcord/units";
import { CliError } from "../error.js";
import type { Io } from "../io.js";
import { oneLine } from "../printable.js";
import { writeWhole } from "../write-whole.js";

/** Where the mended recipe goes. */
export interface MendTo {
  readonly output: string;
  /** Replaces a file that is there. */
  readonly force: boolean;
}

/**
 * Mends a recipe: writes it to a file, its comments and layout kept, and says on standard error what was changed, and which
 * rules have errors and warnings left. Where nothing can be mended nothing is written.
 * @throws {CliError} `unmendable` for what is no recipe, `unwritable`; `FileError` where the recipe cannot be read, or the
 * change not be written in it
 */
export async function mendFile(source: Uint8Array, name: string, to: MendTo, io: Io): Promise<void> {
  if (kindOf(source) !== "recipe") {
    throw new CliError("unmendable", `${name}: only a recipe can be mended; nothing was written`, {
      file: name,
    });
  }
  const recipe = soundRecipe(source, name);
  const options = optionsOf(recipe);
  const mends = mend(recipe.draft, options);
  const last = mends.at(-1);
  const say = (sentence: string) => io.stderr.write(`${oneLine(sentence)}\n`);
  if (last === undefined) return say(`${name}: no mend was found, so nothing was written`);
  const { rewritten, text } = reviseDraft(source, name, last.draft);
  await writeWhole(to.output, io.cwd, [text], { force: to.force });
  for (const one of mends) await say(`${name}: ${inWords(one)}`);
  for (const section of rewritten)
    await say(`${to.output}: the section ${section} had to be written out anew, its comments kept`);
  const { findings } = check(last.draft, options);
  const left = findings.filter(({ severity, waived }) => waived === undefined && severity !== "note");
  for (const rule of new Set(left.map((finding) => finding.rule))) {
    const [first, ...others] = left.filter((finding) => finding.rule === rule);
    const more = others.length === 0 ? "" : ` (and ${others.length} more)`;
    await say(`${name}: ${rule} not mended: ${first!.message}${more}`);
  }
  await say(`${to.output}: the mended recipe`);
}

function inWords({ rules, changes, squares }: Mend): string {
  const turned =
    squares === undefined || squares === 0
      ? ""
      : ` (${squares} ${squares === 1 ? "square" : "squares"} turned)`;
  const names = listed(rules);
  return `${names} mended: ${changes.map(sayChange).join("; ")}${turned}`;
}
