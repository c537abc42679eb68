import { type Revision, reviseRecipe, soundRecipe } from "@drawcord/files";
import { statedValues } from "@drawcord/review";
import { YarnError } from "@drawcord/yarn";
import { CliError } from "../error.js";
import type { Io } from "../io.js";
import { onlyRecipes } from "../only-recipes.js";
import { writeWhole } from "../write-whole.js";

/**
 * Writes a recipe with every number that it may state as it comes out.
 * @throws {CliError} `missing-value` without a file to write, `not-a-recipe`, `no-plan`, `unwritable`
 */
export async function fillStated(
  bytes: Uint8Array,
  file: string,
  { force, output }: { readonly force: boolean; readonly output: string | undefined },
  io: Io,
): Promise<void> {
  if (output === undefined) {
    throw new CliError("missing-value", "drawcord plan --fill-stated needs -o FILE, the file to write", {
      option: "output",
    });
  }
  onlyRecipes(bytes, file, "only recipes state numbers");
  const { text } = reviseRecipe(bytes, file, revisionsFor(bytes, file));
  await writeWhole(output, io.cwd, [text], { force });
  await io.stdout.write(`${output} was written, with the numbers worked out as its stated ones.\n`);
}

function revisionsFor(bytes: Uint8Array, file: string): Revision[] {
  try {
    return Object.entries(statedValues(soundRecipe(bytes, file))).map(([name, value]) => ({
      path: ["stated", name],
      value,
    }));
  } catch (failure) {
    if (!(failure instanceof YarnError)) throw failure;
    throw new CliError("no-plan", `${file}: ${failure.message}`, { file });
  }
}
