import { check, type Report, type Severity } from "@drawcord/check";
import { checkOptions, readRecipe } from "@drawcord/files";
import { expand } from "@drawcord/units";
import { defineCommand } from "../command.js";
import { complain } from "../complain.js";
import { CliError } from "../error.js";
import { type Input, inputs } from "../inputs.js";
import type { Cloth } from "../pretty/report.js";
import { printers } from "../printers.js";

export const command = defineCommand({
  operands: "FILE...",
  help: `Works each recipe out to every end and pick and says what cloth it makes: how long the floats are, where figure and ground do not cut, how evenly the threads are bound, and whether the cloth hangs together. Each fault is named with its ends and picks, its units and rows, and drawn.

For FILE, - is standard input, and a pattern such as 'drafts/*.yaml' is every file that fits it.

The exit status is 1 when there is an error (or what --fail-on says), 2 when a file or an option cannot be used, else 0.`,
  examples: [
    ["drawcord check runner.recipe.yaml", "reports on one recipe"],
    ["drawcord check '*.recipe.yaml' --format ndjson", "reports on many, a line of JSON each"],
    ["drawcord check runner.recipe.yaml --fail-on warning", "is stricter than usual"],
  ],
  options: {
    format: {
      type: "string",
      value: "FORMAT",
      choices: ["pretty", "json", "ndjson"],
      default: "pretty",
      help: "how to print the report",
    },
    "fail-on": {
      type: "string",
      value: "LEVEL",
      choices: ["error", "warning", "note"],
      default: "error",
      help: "the least level of finding that makes the exit status 1",
    },
  },
  async run({ operands, options }, io) {
    const files = await inputs(operands, io);
    const printer = printers[options.format](io, files.length);
    let unusable = false;
    let failed = false;
    for (const file of files) {
      try {
        const cloth = await checked(file);
        failed ||= fails(cloth.report, options["fail-on"]);
        await printer.cloth(cloth);
      } catch (error) {
        unusable = true;
        await complain(io, error);
      }
    }
    await printer.end();
    if (unusable) return 2;
    return failed ? 1 : 0;
  },
});

async function checked(file: Input): Promise<Cloth> {
  const recipe = readRecipe(await file.read(), file.name);
  const report = check(recipe.draft, checkOptions(recipe));
  if (report.rules.ran.length === 0) {
    throw new CliError("no-rule", `${file.name}: every rule is switched off, so nothing was checked`, {
      file: file.name,
    });
  }
  return { file: file.name, title: recipe.title, report, drawdown: () => expand(recipe.draft).drawdown };
}

function fails({ summary }: Report, level: Severity): boolean {
  if (level === "error") return summary.error > 0;
  return summary.error + summary.warning > 0 || (level === "note" && summary.note > 0);
}
