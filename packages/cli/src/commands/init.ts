import { basename, extname } from "node:path";
import type { ShaftDraft } from "@drawcord/check";
import { FileError, read, recipeOfDraft, soundRecipe, starterRecipe } from "@drawcord/files";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { recipeFileName } from "../file-name.js";
import { type InputFile, input } from "../inputs.js";
import type { Io } from "../io.js";
import { sayIgnored } from "../plain/ignored.js";
import { oneLine } from "../printable.js";
import { schemaFrom } from "../schema-from.js";
import { writeWhole } from "../write-whole.js";

/** What the file is called when neither a name nor a title is given. */
const FIRST = "first.recipe.yaml";

export const command = defineCommand({
  operands: "[FILE]",
  help: `Writes a recipe to begin from: a small figured cloth that checks clean, with a comment at each thing to change.

FILE is what the recipe is to be called; without it, the name is made from the title, or is ${FIRST}. With - it is printed. A file that is there already is left alone unless --force is given.

With --from it is made of a weaving draft, a WIF: the same cloth, its colours as yarns, with comments on what a draft does not say.`,
  examples: [
    ["drawcord init", `writes ${FIRST}`],
    ['drawcord init --title "Moth and lantern"', "writes moth-and-lantern.recipe.yaml"],
    ["drawcord init towel.recipe.yaml --from towel.wif", "writes the towel of a draft as a recipe"],
    ["drawcord init -", "prints the recipe"],
  ],
  options: {
    title: { type: "string", value: "TEXT", help: "the title of the recipe" },
    from: {
      type: "string",
      value: "DRAFT",
      help: "make the recipe of this draft, a WIF file, or - for standard input",
    },
    force: { type: "boolean", help: "replace the file if there is one" },
  },
  async run({ operands, options }, io) {
    const { from } = options;
    const draft = from === undefined ? undefined : await draftIn(input(from, io), io);
    const title = options.title ?? draft?.title;
    const called = title ?? (from === undefined || from === "-" ? undefined : basename(from, extname(from)));
    const name = operands[0] ?? (called === undefined ? FIRST : recipeFileName(called));
    const schema = name === "-" ? undefined : schemaFrom(name, io.cwd);
    const recipe =
      draft === undefined
        ? starter(title, schema)
        : recipeOfDraft({ ...draft, ...(title !== undefined && { title }) }, schema);
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

/** The draft of a file, with a word on what of it is not used. */
async function draftIn(source: InputFile, io: Io): Promise<ShaftDraft> {
  const reading = read(await source.read(), source.name);
  if (reading.kind !== "draft") {
    const sentence = `drawcord init: ${source.name} is no weaving draft; --from takes a WIF`;
    throw new CliError("no-draft", sentence, { file: source.name });
  }
  await sayIgnored(reading, source.name, io);
  return reading.draft;
}

/** The starter recipe, read once where its title was given, so that what is written can be read again. */
function starter(title: string | undefined, schema: string | undefined): string {
  const recipe = starterRecipe(title, schema);
  if (title === undefined) return recipe;
  try {
    if (soundRecipe(recipe, "the recipe").title === title) return recipe;
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
  }
  throw new CliError("bad-title", `drawcord init: "${title}" cannot be the title of a recipe`);
}
