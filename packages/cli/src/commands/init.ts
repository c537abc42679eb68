import { FileError, soundRecipe, starterRecipe } from "@drawcord/files";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { recipeFileName } from "../file-name.js";
import { oneLine } from "../printable.js";
import { writeWhole } from "../write-whole.js";

/** What the file is called when neither a name nor a title is given. */
const FIRST = "first.recipe.yaml";

export const command = defineCommand({
  operands: "[FILE]",
  help: `Writes a recipe to begin from: a small figured cloth that checks clean, with a comment at each thing to change.

FILE is what the recipe is to be called; without it, the name is made from --title, or is ${FIRST}. With - it is printed. A file that is there already is left alone unless --force is given.`,
  examples: [
    ["drawcord init", `writes ${FIRST}`],
    ['drawcord init --title "Moth and lantern"', "writes moth-and-lantern.recipe.yaml"],
    ["drawcord init -", "prints the recipe"],
  ],
  options: {
    title: { type: "string", value: "TEXT", help: "the title of the recipe" },
    force: { type: "boolean", help: "replace the file if there is one" },
  },
  async run({ operands, options }, io) {
    const { title } = options;
    const recipe = starter(title);
    const name = operands[0] ?? (title === undefined ? FIRST : recipeFileName(title));
    if (name === "-") {
      await io.stdout.write(recipe);
      return 0;
    }
    await writeWhole(name, io.cwd, [recipe], { force: options.force });
    const shown = oneLine(name);
    await io.stdout.write(
      `${shown} was written.\n\nDraw its cloth:   drawcord expand ${shown}\nCheck it:         drawcord check ${shown}\n`,
    );
    return 0;
  },
});

/** The starter recipe, read once where its title was given, so that what is written can be read again. */
function starter(title: string | undefined): string {
  const recipe = starterRecipe(title);
  if (title === undefined) return recipe;
  try {
    if (soundRecipe(recipe, "the recipe").title === title) return recipe;
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
  }
  throw new CliError("bad-title", `drawcord init: "${title}" cannot be the title of a recipe`);
}
