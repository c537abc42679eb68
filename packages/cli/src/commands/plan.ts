import { projectOf, type Recipe, readRecipe } from "@drawcord/files";
import { type Plan, plan, planNumbers, YarnError } from "@drawcord/yarn";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import { loomJson, loomPlanOf, loomText } from "../loom/loom-needs.js";
import { paintFor } from "../paint.js";
import { planJson } from "../plan/json.js";
import { planText } from "../plan/text.js";
import { workingJson, workingText } from "../plan/working.js";
import { oneLine, toJson } from "../printable.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Works out the numbers of a recipe's project: ends, units and lingos, reed and sley, widths in the reed, on the loom and finished, the length of the warp, the pieces, the yarn by colour with its weight and the packages to buy, and the weight of the cloth; then what the loom must have (lingos, leashes, heddles, cords, treadles, ties) against what the section loom says it has, and what the heaviest lift weighs.

It takes what the sections yarns, cloth and project say. Where the trade has a usual value and the recipe has none, that is taken and listed under "assumed"; what cannot be worked out is listed under "missing".

For FILE, - is standard input.`,
  examples: [
    ["drawcord plan runner.recipe.yaml", "prints the project"],
    ["drawcord plan runner.recipe.yaml --explain", "shows how each number was found, with its source"],
    ["drawcord plan runner.recipe.yaml --format json", "gives a script metric numbers"],
  ],
  options: {
    format: {
      type: "string",
      value: "FORMAT",
      choices: ["text", "json"],
      default: "text",
      help: "how to print the plan",
    },
    explain: { type: "boolean", help: "add the working of each number: formula, values, result, source" },
  },
  async run({ operands, options }, io) {
    const source = input(operands[0]!, io);
    const recipe = readRecipe(await source.read(), source.name);
    const found = planned(recipe);
    const numbers = options.explain ? planNumbers(found).map(({ value }) => value) : [];
    if (options.format === "json") {
      const whole = {
        file: source.name,
        title: recipe.title,
        ...planJson(found),
        loom: loomJson(loomPlanOf(recipe)),
        ...(options.explain ? { working: workingJson(numbers) } : {}),
      };
      await io.stdout.write(`${toJson(whole, 2)}\n`);
      return 0;
    }
    const title = recipe.title === undefined ? "" : `  ${oneLine(recipe.title)}`;
    const paint = paintFor(io);
    await io.stdout.write(
      `${oneLine(source.name)}${paint.strong(title)}\n\n${planText(found, io.width, paint)}\n${loomText(loomPlanOf(recipe), io.width)}`,
    );
    if (options.explain) await io.stdout.write(`\n${workingText(numbers)}`);
    return 0;
  },
});

/** The plan of a recipe; a number that cannot be is told with the name of the file. */
function planned(recipe: Recipe): Plan {
  try {
    return plan(projectOf(recipe));
  } catch (error) {
    if (!(error instanceof YarnError)) throw error;
    throw new CliError("no-plan", `${recipe.file}: ${error.message}`, { file: recipe.file });
  }
}
