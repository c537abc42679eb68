import { soundRecipe } from "@drawcord/files";
import { handleOrder, liftWork } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import { defineCommand } from "../command.js";
import { input } from "../inputs.js";
import { liftCsv, liftJson, liftText } from "../loom/lift-list.js";
import { wholeNumber } from "../number-option.js";
import { toJson } from "../printable.js";

/** Past this many shafts their order is not weighed. */
const MOST_ORDERED = 200;

import { onlyRecipes } from "../only-recipes.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Lists the lifts of a recipe to have at the loom: each row with its picks, the handles drawn, those to pull and to let go, the units they draw and what these weigh. The last row is on top, so that you weave from the bottom up; rows alike are one line.

The weight of a lingo is the recipe's loom: lingo-weight, or --lingo. For FILE, - is standard input.`,
  examples: [
    ["drawcord lifts runner.recipe.yaml", "prints the list"],
    ["drawcord lifts runner.recipe.yaml --lingo 25 --format csv", "makes a table of it, with lingos of 25 g"],
  ],
  options: {
    lingo: { type: "string", value: "GRAMS", help: "the weight of one lingo in grams" },
    format: {
      type: "string",
      value: "FORMAT",
      choices: ["text", "json", "csv"],
      default: "text",
      help: "how to print the list",
    },
  },
  async run({ operands, options }, io) {
    const lingo = wholeNumber("lifts", "lingo", options.lingo, 100_000);
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "only recipes have lifts of pattern shafts");
    const { draft, loom, title } = soundRecipe(bytes, source.name);
    const lingoGrams = lingo ?? (loom.lingoWeight && toMetric(loom.lingoWeight).value);
    const work = liftWork(draft, lingoGrams === undefined ? {} : { lingoGrams });
    const highest = draft.lifts.reduce((most, lift) => Math.max(most, lift.at(-1) ?? 0), 0);
    const order = highest <= MOST_ORDERED ? handleOrder(draft.lifts) : undefined;
    const list = { file: source.name, title, work, order };
    if (options.format === "json") {
      await io.stdout.write(`${toJson(liftJson(list), 2)}\n`);
      return 0;
    }
    const text = options.format === "csv" ? liftCsv(list) : liftText(list, io.width);
    for (const line of text) await io.stdout.write(line);
    return 0;
  },
});
