import { formatRecipe } from "@drawcord/files";
import { defineCommand } from "../command.js";
import { complain } from "../complain.js";
import { CliError } from "../error.js";
import { type InputFile, inputs } from "../inputs.js";
import type { Io } from "../io.js";
import { onlyRecipes } from "../only-recipes.js";
import { oneLine } from "../printable.js";
import { writeWhole } from "../write-whole.js";

export const command = defineCommand({
  operands: "FILE...",
  help: `Lays recipes out in the one way that all recipes share: sections in their order and apart, indented by two spaces, short settings on one line, no quotes that are not needed. Comments stay, and the cloth stays the same. A file is written only when something changes, whole or not at all.

For FILE, - is standard input, and the recipe is then printed; a folder is every recipe in it (*.recipe.yaml), and a pattern such as 'drafts/*.yaml' is every file that fits it. One bad file never stops the rest.

With --check nothing is written: the files that would change are named, and the exit status is 1 when there are any.`,
  examples: [
    ["drawcord format runner.recipe.yaml", "lays out one recipe"],
    ["drawcord format drafts --check", "says which recipes of a folder are not laid out so"],
    [
      "drawcord format runner.recipe.yaml -o tidy.recipe.yaml",
      "leaves the recipe as it is and writes another",
    ],
  ],
  options: {
    check: { type: "boolean", help: "write nothing; exit status 1 when a recipe would change" },
    output: {
      type: "string",
      short: "o",
      value: "FILE",
      help: "write the one recipe to this file, instead of in place",
    },
    force: { type: "boolean", help: "with -o, replace the file if there is one" },
  },
  async run({ operands, options }, io) {
    const { check, force, output } = options;
    const files = await inputs(operands, io);
    if (output !== undefined && (check || files.length > 1)) {
      const sentence = check
        ? "drawcord format: --check writes nothing, so it does not go with -o"
        : `drawcord format: -o takes one recipe, and ${files.length} were named`;
      throw new CliError("unwanted-option", sentence, { option: "output" });
    }
    let changed = 0;
    let failed = 0;
    for (const file of files) {
      try {
        const before = await file.read();
        const after = layOut(before, file.name);
        const isChanged = !Buffer.from(after).equals(before);
        if (isChanged) changed++;
        if (check) {
          if (isChanged)
            await io.stdout.write(`${oneLine(file.name)}: not laid out as drawcord format does\n`);
        } else if (output !== undefined) {
          await writeWhole(output, io.cwd, [after], { force });
          await io.stdout.write(`${oneLine(output)} was written\n`);
        } else await putBack(file, after, isChanged, io);
      } catch (error) {
        failed++;
        await complain(io, error);
      }
    }
    if (failed > 0) return 2;
    return check && changed > 0 ? 1 : 0;
  },
});

function layOut(bytes: Uint8Array, name: string): string {
  onlyRecipes(bytes, name, "only recipes are laid out");
  return formatRecipe(bytes, name);
}

/** A file in its place, where it has changed; what was piped in is printed either way. */
async function putBack(file: InputFile, text: string, isChanged: boolean, io: Io): Promise<void> {
  if (file.onDisk !== true) {
    await io.stdout.write(text);
  } else if (isChanged) {
    await writeWhole(file.name, io.cwd, [text], { force: true });
    await io.stdout.write(`${oneLine(file.name)} was laid out anew\n`);
  }
}
