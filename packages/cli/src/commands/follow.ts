import { extname } from "node:path";
import { type Recipe, soundRecipe } from "@drawcord/files";
import { FollowError, followPage, followPlan } from "@drawcord/follow";
import { cautionOf } from "@drawcord/review";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import { namedOutput } from "../named-output.js";
import { onlyRecipes } from "../only-recipes.js";
import { oneLine } from "../printable.js";
import { writeWhole } from "../write-whole.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Writes a page to weave by, for a phone or tablet on the loom: the row that is woven in large type, the handles to draw and to let go, the treadle and the weft of each pick, what comes next, and how far the cloth has come. Go on and back by touch, keys or a foot pedal; it marks slips, leads back through picks to take out, and keeps the place and a log of who wove what.

The page is one file and asks for nothing from elsewhere; the place and the log stay in the browser of the device. For FILE, - is standard input.`,
  examples: [
    ["drawcord follow runner.recipe.yaml -o runner-loom.html", "writes the page; open it in any browser"],
  ],
  options: {
    output: { type: "string", short: "o", value: "FILE", help: "the file to write; its name ends in .html" },
    force: { type: "boolean", help: "replace a file that is there" },
  },
  async run({ operands, options }, io) {
    const { force } = options;
    const output = namedOutput("follow", options.output, "runner-loom.html");
    if (extname(output).toLowerCase() !== ".html") {
      throw new CliError("unknown-format", `${output}: a page for the loom is written as .html`, {
        file: output,
      });
    }
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "only recipes have lifts to follow");
    const page = pageOf(soundRecipe(bytes, source.name));
    await writeWhole(output, io.cwd, [page], { force });
    await io.stdout.write(`${oneLine(output)} was written\n`);
    return 0;
  },
});

function pageOf(recipe: Recipe): string {
  try {
    return followPage(followPlan(recipe, cautionOf(recipe)));
  } catch (error) {
    if (!(error instanceof FollowError)) throw error;
    throw new CliError("no-sheet", error.message, { file: recipe.file });
  }
}
