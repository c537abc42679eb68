import { soundRecipe } from "@drawcord/files";
import { mendThreading, threadingList, threadingParts } from "@drawcord/units";
import { defineCommand } from "../command.js";
import { input } from "../inputs.js";
import { threadingCsv, threadingJson, threadingText } from "../loom/threading-list.js";
import { numberOption } from "../number-option.js";
import { onlyRecipes } from "../only-recipes.js";
import { toJson } from "../printable.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Lists the unit threading of a recipe for use at the loom: the shortest notation, the order in words, and every unit with its pattern shafts in counted groups to tick off, with the part of the threading that they belong to. The list runs from right to left as seen from the weaver's bench, or from left to right.

For FILE, - is standard input.`,
  examples: [
    ["drawcord threading runner.recipe.yaml", "prints the list"],
    ["drawcord threading runner.recipe.yaml --from left --group 8", "from the left, eight units a group"],
  ],
  options: {
    from: {
      type: "string",
      value: "SIDE",
      choices: ["right", "left"],
      default: "right",
      help: "the side to begin at",
    },
    group: { type: "string", value: "N", default: "10", help: "units in a group" },
    units: {
      type: "string",
      value: "N",
      help: "fit the threading to so many units: whole repeats, and what is left over shared to both sides",
    },
    format: {
      type: "string",
      value: "FORMAT",
      choices: ["text", "json", "csv"],
      default: "text",
      help: "how to print the list",
    },
  },
  async run({ operands, options }, io) {
    const { from, format } = options;
    const group = numberOption("threading", "group", options.group, 1000)!;
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "only recipes have units");
    const { draft, title } = soundRecipe(bytes, source.name);
    const units = numberOption("threading", "units", options.units, 1_000_000);
    const threading = units === undefined ? draft.threading : mendThreading(draft.threading, units);
    const groups = threadingList(threading, { from, group });
    const sheet = { file: source.name, title, threading, from, groups, parts: threadingParts(threading) };
    if (format === "json") {
      await io.stdout.write(`${toJson(threadingJson(sheet), 2)}\n`);
      return 0;
    }
    const text = format === "csv" ? threadingCsv(sheet) : threadingText(sheet, io.width);
    for (const line of text) await io.stdout.write(line);
    return 0;
  },
});
