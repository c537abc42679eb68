import { soundRecipe } from "@drawcord/files";
import { exerciseOf, type Level, type SetClass, taskKinds, taskNames } from "@drawcord/lesson";
import { defineCommand } from "../command.js";
import { input } from "../inputs.js";
import { namedOutput } from "../named-output.js";
import { numberOption } from "../number-option.js";
import { onlyRecipes } from "../only-recipes.js";
import { PAPER_OPTION, PRINTED_OPTION } from "../shared-options.js";
import {
  beside,
  boundFiles,
  endingOf,
  type SheetLook,
  sheetFiles,
  slideFiles,
} from "../sheet/sheet-files.js";
import { writeAll } from "../sheet/write-all.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Sets exercises from a recipe: two pages a student, each with numbers, starts and slips of its own, instructions, a line for the name, time, points and room for the answers; after them the key, with other answers that count and how far off an answer may be, and the worked answers as on the board. The same seed sets the same sheets.

${taskNames.map((name) => `${name}: ${taskKinds[name].summary}.`).join("\n")}

The ending of the file says the format: .pdf, .html or .md. For FILE, - is standard input.`,
  examples: [
    [
      "drawcord exercise runner.recipe.yaml -o class.pdf --level 2 --seed 7 --count 24",
      "writes sheets for 24 students, their key and the worked answers into one file",
    ],
    [
      "drawcord exercise runner.recipe.yaml -o class.html --count 12 --apart",
      "writes class-01.html to class-12.html, class-key.html and class-worked.html",
    ],
    ["drawcord exercise runner.recipe.yaml -o slips.pdf --task slip --task slip", "sets two slips to find"],
  ],
  options: {
    output: PRINTED_OPTION,
    level: {
      type: "string",
      value: "LEVEL",
      choices: ["1", "2", "3"],
      default: "1",
      help: "1 for beginners, 3 for those who design",
    },
    seed: { type: "string", value: "N", help: "the same number sets the same sheets; 1 if left out" },
    count: { type: "string", value: "N", help: "sheets for so many students; 1 if left out" },
    task: {
      type: "string",
      value: "TASK",
      choices: taskNames,
      multiple: true,
      help: "this kind of task instead of those of the level; may be given several times",
    },
    paper: PAPER_OPTION,
    apart: {
      type: "boolean",
      help: "a file for each student, the key and the worked answers in files of their own; .svg and .png too",
    },
    slides: {
      type: "boolean",
      help: "slides for a projector, one thing a slide, in one .html that steps with the arrows",
    },
    force: { type: "boolean", help: "replace files that are there" },
  },
  async run({ operands, options }, io) {
    const { apart, force, slides, level, paper, task } = options;
    const output = namedOutput("exercise", options.output, "class.pdf");
    endingOf(output);
    const seed = numberOption("exercise", "seed", options.seed, 4_000_000_000);
    const count = numberOption("exercise", "count", options.count, 200);
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "exercises are set from recipes");
    const set = exerciseOf(soundRecipe(bytes, source.name), {
      level: Number(level) as Level,
      ...(seed === undefined ? {} : { seed }),
      ...(count === undefined ? {} : { count }),
      ...(task.length === 0 ? {} : { tasks: task }),
    });
    const files = slides
      ? slideFiles(set.slides, output)
      : apart
        ? filesApart(set, output, { paper })
        : boundFiles(set.bound, output, { paper });
    await writeAll(files, io, force);
    return 0;
  },
});

/** A file a student, and the key and the worked answers in files of their own. */
function filesApart({ key, sheets, worked }: SetClass, output: string, look: SheetLook) {
  const digits = `${sheets.length}`.length;
  return [
    ...sheets.flatMap(({ document, number }) =>
      sheetFiles(document, beside(output, `${number}`.padStart(digits, "0")), look),
    ),
    ...sheetFiles(key, beside(output, "key"), look),
    ...(worked.parts.length === 0 ? [] : sheetFiles(worked, beside(output, "worked"), look)),
  ];
}
