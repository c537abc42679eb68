import type { SearchBounds } from "@drawcord/causes";
import { kindOf, type Recipe, type RevisedRecipe, recipeOfPiece, soundRecipe } from "@drawcord/files";
import { checkRecipe, mendText, type PlacedCause } from "@drawcord/review";
import { sayEdit } from "@drawcord/units";
import { CliError } from "../error.js";

import type { Io } from "../io.js";
import { oneLine } from "../printable.js";
import type { Progress } from "../progress.js";
import { writeWhole } from "../write-whole.js";

/** Where the mended recipe goes. */
export interface MendTo {
  readonly output: string;
  /** Replaces a file that is there. */
  readonly force: boolean;
}

/** How long causes are looked for, and where it is shown how far that has come. */
export interface MendSearch extends Pick<SearchBounds, "seconds"> {
  readonly progress: Progress;
}

/**
 * Mends a recipe: undoes the slips that are sure and writes it to a file, its comments and layout kept; says on standard
 * error what was changed, what is offered beside it, and which rules have errors and warnings left. Where nothing is sure
 * nothing is written.
 * @throws {CliError} `unmendable` for what is no recipe, `unwritable`; `FileError` where the recipe cannot be read, or the
 * change not be written in it
 */
export async function mendFile(
  source: Uint8Array,
  name: string,
  to: MendTo,
  io: Io,
  { progress, ...bounds }: MendSearch,
): Promise<void> {
  if (kindOf(source) !== "recipe") {
    throw new CliError("unmendable", `${name}: only a recipe can be mended; nothing was written`, {
      file: name,
    });
  }
  const say = (sentence: string) => io.stderr.write(`${oneLine(sentence)}\n`);
  const recipe = soundRecipe(source, name);
  const { causes, untried } = checkRecipe(recipe, { ...bounds, progress: progress.search });
  await progress.clear();
  for (const what of untried) await say(`${name}: not tried: ${what}`);
  const sure = causes.filter((cause) => cause.sure);
  const offered = causes.filter((cause) => !cause.sure && cause.waived === undefined);
  const offer = async () => {
    for (const { changes, message, rivals } of offered)
      await say(
        `${name}: not mended, as it is not sure: ${message}; perhaps ${[changes, ...rivals].map((edit) => sayEdit(edit)).join("; or ")}`,
      );
  };
  if (sure.length === 0) {
    await offer();
    return say(
      `${name}: no mend was found${offered.length === 0 ? "" : " that is sure"}, so nothing was written`,
    );
  }
  const { rewritten, text } = mendedPieces(recipe, sure);
  await writeWhole(to.output, io.cwd, [text], { force: to.force });
  for (const { changes, message } of sure) await say(`${name}: mended: ${message}: ${sayEdit(changes)}`);
  for (const section of rewritten)
    await say(`${to.output}: the section ${section} had to be written out anew, its comments kept`);
  await offer();
  const { findings } = checkRecipe(soundRecipe(text, name), { causes: false });
  const left = findings.filter(({ severity, waived }) => waived === undefined && severity !== "note");
  for (const rule of new Set(left.map((finding) => finding.rule))) {
    const [first, ...others] = left.filter((finding) => finding.rule === rule);
    const more = others.length === 0 ? "" : ` (and ${others.length} more)`;
    await say(`${name}: ${rule} not mended: ${first!.message}${more}`);
  }
  await say(`${to.output}: the mended recipe`);
}

/** The recipe with slips undone: those of the warp or of all pieces first, then those of each piece. */
function mendedPieces(
  recipe: Recipe,
  causes: readonly PlacedCause[],
): Pick<RevisedRecipe, "text" | "rewritten"> {
  let current = recipe;
  const rewritten = new Set<string>();
  for (const name of [undefined, ...recipe.pieces.map((piece) => piece.name)]) {
    const changes = causes.filter(({ piece }) => piece === name).flatMap((cause) => cause.changes);
    if (changes.length === 0) continue;
    const piece = name === undefined ? undefined : recipeOfPiece(current, name);
    const revised = mendText(piece ?? current, changes);
    for (const section of revised.rewritten) rewritten.add(section);
    current = soundRecipe(revised.text, recipe.file);
  }
  return { text: current.text, rewritten: [...rewritten] };
}
