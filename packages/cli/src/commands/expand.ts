import { readRecipe, writePbm } from "@drawcord/files";
import { type Expansion, expand } from "@drawcord/units";
import { defineCommand } from "../command.js";
import { pickLines, textDrawing } from "../drawing.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import { toJson } from "../printable.js";
import { writeWhole } from "../write-whole.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Works a recipe out to every end and pick and draws the cloth as it looks from the face: # where the end lies over the pick, . where it lies under. The last pick is on top, as the cloth lies on the loom; end 1 is on the left.

For FILE, - is standard input.`,
  examples: [
    ["drawcord expand runner.recipe.yaml", "draws the runner in text"],
    [
      "drawcord expand runner.recipe.yaml --format pbm -o runner.pbm",
      "writes it as a picture, a pixel an interlacement",
    ],
  ],
  options: {
    format: {
      type: "string",
      value: "FORMAT",
      choices: ["text", "pbm", "json"],
      default: "text",
      help: "how to draw it",
    },
    output: { type: "string", short: "o", value: "FILE", help: "write to this file, whole or not at all" },
    force: { type: "boolean", help: "replace the file if there is one" },
  },
  async run({ operands, options }, io) {
    const source = input(operands[0]!, io);
    const recipe = readRecipe(await source.read(), source.name);
    if (options.format === "pbm" && options.output === undefined && io.isTerminal) {
      throw new CliError("unwritable", "a pbm picture is not for a terminal; name a file for it with -o");
    }
    const chunks = drawings[options.format](expand(recipe.draft), source.name, recipe.title);
    if (options.output !== undefined) {
      await writeWhole(options.output, io.cwd, chunks, { force: options.force });
    } else {
      for (const chunk of chunks) await io.stdout.write(chunk);
    }
    return 0;
  },
});

const drawings = {
  text: ({ drawdown }: Expansion) => textDrawing(drawdown),
  pbm: ({ drawdown }: Expansion) => [writePbm(drawdown)],
  json: asJson,
};

/** Ends and picks in their order, end 1 and pick 1 first; units, rows and steps are counted from 1. */
function* asJson(expansion: Expansion, file: string, title: string | undefined): Iterable<string> {
  const { drawdown, rowOfPick, stepOfPick, unitOfEnd } = expansion;
  const head = {
    file,
    title,
    ends: drawdown.columns,
    picks: drawdown.rows,
    unitOfEnd: Array.from(unitOfEnd, (unit) => (unit < 0 ? null : unit + 1)),
    rowOfPick: Array.from(rowOfPick, (row) => row + 1),
    stepOfPick: Array.from(stepOfPick, (step) => step + 1),
  };
  yield `${toJson(head).slice(0, -1)},"drawdown":[`;
  let comma = "";
  for (const line of pickLines(drawdown)) {
    yield `${comma}"${line}"`;
    comma = ",\n";
  }
  yield "]}\n";
}
