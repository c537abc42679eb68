import { soundRecipe } from "@drawcord/files";
import { type Level, practicePage, taskNames } from "@drawcord/lesson";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import { numberOption } from "../number-option.js";
import { onlyRecipes } from "../only-recipes.js";
import { writeAll } from "../sheet/write-all.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Writes a page to practise on, one .html file that needs no network: some 16 ends of the recipe, its treadles, and the handles of their units. Press a treadle, draw handles, see which ends rise and why, throw a pick and take it out again. With --task exercises stand below it; with --check the page says whether an answer is right, and has the answers in it, so leave --check out where they count.

For FILE, - is standard input.`,
  examples: [
    ["drawcord practice runner.recipe.yaml -o practice.html", "writes the loom alone"],
    [
      "drawcord practice runner.recipe.yaml -o practice.html --task plan --task cut --check",
      "sets two tasks below it, whose answers the page checks",
    ],
  ],
  options: {
    output: { type: "string", short: "o", value: "FILE", help: "the .html file to write" },
    seed: { type: "string", value: "N", help: "which place of the cloth, and which tasks; 1 if left out" },
    level: {
      type: "string",
      value: "LEVEL",
      choices: ["1", "2", "3"],
      default: "1",
      help: "1 for beginners, 3 for those who design",
    },
    task: {
      type: "string",
      value: "TASK",
      choices: taskNames,
      multiple: true,
      help: "a kind of task to set below the loom; may be given several times",
    },
    check: { type: "boolean", help: "let the page say whether an answer is right" },
    force: { type: "boolean", help: "replace a file that is there" },
  },
  async run({ operands, options }, io) {
    const { check = false, force, level, output, task } = options;
    if (output === undefined || !/\.html?$/i.test(output)) {
      const sentence = "drawcord practice: name the page to write, as in -o practice.html";
      throw new CliError(output === undefined ? "missing-value" : "unknown-format", sentence, {
        option: "output",
      });
    }
    const seed = numberOption("practice", "seed", options.seed, 4_000_000_000);
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "only recipes have a loom to practise on");
    const page = practicePage(soundRecipe(bytes, source.name), {
      check,
      level: Number(level) as Level,
      tasks: task,
      ...(seed === undefined ? {} : { seed }),
    });
    await writeAll([{ name: output, make: async () => page }], io, force);
    return 0;
  },
});
