import { ownNumbers, projectOf, projectOfDraft, type Reading, read } from "@drawcord/files";
import { type Plan, type Project, plan, planNumbers, type Quantity, YarnError } from "@drawcord/yarn";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import { loomJson, loomPlanOf, loomText } from "../loom/loom-needs.js";
import { numberOption } from "../number-option.js";
import { paintFor } from "../paint.js";
import { sayIgnored } from "../plain/ignored.js";
import { agreementJson, agreementOf, agreementStatus, agreementText } from "../plan/agreement.js";
import { fillStated } from "../plan/fill-stated.js";
import { planJson } from "../plan/json.js";
import { plainNeeds, plainNeedsText } from "../plan/plain.js";
import { planText } from "../plan/text.js";
import { whatIf } from "../plan/what-if.js";
import { windingNumbers, windingOf } from "../plan/winding.js";
import { workingJson, workingText } from "../plan/working.js";
import { oneLine, toJson } from "../printable.js";
import { textOrJson } from "../shared-options.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Works out the numbers of a recipe's project: ends, units and lingos, reed and sley, widths in the reed, on the loom and finished, the length of the warp and how it is wound (double passes and chains), the pieces, the yarn by colour with its weight and the packages to buy, and the weight of the cloth; then what the loom must have (lingos, leashes, heddles, cords, treadles, ties) against what the section loom says it has, and what the heaviest lift weighs.

It takes what the sections yarns, cloth and project say. Where the trade has a usual value and the recipe has none, that is taken and listed under "assumed"; what cannot be worked out is listed under "missing". Whether the numbers agree is said last, by the same rules as check: length and rows, width and units, sett, sley and reed, the loom, the warp, the stock, and what is stated. The exit status is 1 when one of them is an error (or what --fail-on and --max-warnings say).

Numbers by formulas of one's own, from the section formulas of a recipe, stand under "own", with their working like all others.

For a shaft draft (WIF) it gives ends, picks by colour, the setts, and the shafts, heddles, treadles and ties.

For FILE, - is standard input.`,
  examples: [
    ["drawcord plan runner.recipe.yaml", "prints the project"],
    ["drawcord plan runner.recipe.yaml --explain", "shows how each number was found, with its source"],
    [
      "drawcord plan runner.recipe.yaml --with 'cloth.sett: 14 per cm' --with 'project.pieces: 12'",
      "prints the numbers that another sett and more pieces change, side by side",
    ],
    ["drawcord plan runner.recipe.yaml --format json", "gives a script metric numbers"],
  ],
  options: {
    format: textOrJson("how to print the plan"),
    with: {
      type: "string",
      value: "CHANGE",
      multiple: true,
      help: "plan it with a change, such as 'cloth.sett: 14 per cm', and print what differs",
    },
    "fill-stated": {
      type: "boolean",
      help: "write the recipe, with the numbers worked out as its stated ones, to the file of -o",
    },
    output: { type: "string", short: "o", value: "FILE", help: "the file that --fill-stated writes" },
    force: { type: "boolean", help: "replace the file if there is one" },
    "fail-on": {
      type: "string",
      value: "LEVEL",
      choices: ["error", "warning", "note"],
      default: "error",
      help: "the least level of finding that makes the exit status 1",
    },
    "max-warnings": {
      type: "string",
      value: "NUMBER",
      help: "how many warnings still leave the exit status 0",
    },
    explain: { type: "boolean", help: "add the working of each number: formula, values, result, source" },
  },
  async run({ operands, options }, io) {
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    if (options.with.length > 0) {
      await io.stdout.write(await whatIf(bytes, source.name, options.with, options.format));
      return 0;
    }
    if (options["fill-stated"]) {
      await fillStated(bytes, source.name, options, io);
      return 0;
    }
    const reading = read(bytes, source.name);
    await sayIgnored(reading, source.name, io);
    const { loom, project, title } = subjectOf(reading, source.name);
    const found = await planOf(reading, project, source.name);
    const numbers = options.explain ? numbersOf(found) : [];
    const agreement = reading.kind === "recipe" ? agreementOf(reading.recipe) : undefined;
    const strictness = {
      failOn: options["fail-on"],
      maxWarnings:
        numberOption("plan", "max-warnings", options["max-warnings"], undefined, 0) ??
        Number.POSITIVE_INFINITY,
    };
    const status = agreement === undefined ? 0 : agreementStatus(agreement, strictness);
    if (options.format === "json") {
      const whole = {
        file: source.name,
        title,
        ...planJson(found),
        loom: loom.json(),
        ...(agreement === undefined ? {} : { agreement: agreementJson(agreement) }),
        ...(options.explain ? { working: workingJson(numbers) } : {}),
      };
      await io.stdout.write(`${toJson(whole, 2)}\n`);
      return status;
    }
    const paint = paintFor(io);
    const heading = title === undefined ? "" : paint.strong(`  ${oneLine(title)}`);
    await io.stdout.write(
      `${oneLine(source.name)}${heading}\n\n${planText(found, io.width, paint)}\n${loom.text(io.width)}`,
    );
    if (options.explain) await io.stdout.write(`\n${workingText(numbers)}`);
    if (agreement !== undefined) await io.stdout.write(`\n${agreementText(agreement, io.width, paint)}`);
    return status;
  },
});

/** Every number of the plan whose working can be shown. */
function numbersOf(found: Plan): readonly Quantity[] {
  const winding = windingOf(found);
  return [
    ...planNumbers(found).map(({ value }) => value),
    ...(winding === undefined ? [] : windingNumbers(winding)),
  ];
}

/** What is planned: the project, and what the loom must have. */
interface Subject {
  readonly title: string | undefined;
  readonly project: Project;
  readonly loom: { text(width: number): string; json(): object };
}

/**
 * What there is to plan in a file.
 * @throws {CliError} `no-plan` for a chart
 */
function subjectOf(found: Reading, file: string): Subject {
  switch (found.kind) {
    case "recipe": {
      const { recipe } = found;
      const loom = loomPlanOf(recipe);
      return {
        title: recipe.title,
        project: projectOf(recipe),
        loom: { text: (width) => loomText(loom, width), json: () => loomJson(loom) },
      };
    }
    case "draft": {
      const needs = plainNeeds(found.draft);
      return {
        title: found.draft.title,
        project: projectOfDraft(found.draft),
        loom: { text: (width) => plainNeedsText(needs, width), json: () => ({ needs }) },
      };
    }
    case "chart":
      throw new CliError(
        "no-plan",
        `${file}: a chart alone has no project; make a recipe of it with drawcord chart`,
        {
          file,
        },
      );
  }
}

/**
 * The plan of a project, with the numbers of the recipe's own formulas. Of a recipe whose numbers cannot be, what is counted
 * is told, and a rule says what is wrong.
 * @throws {CliError} `no-plan` for a draft whose numbers cannot be
 */
async function planOf(reading: Reading, project: Project, file: string): Promise<Plan> {
  try {
    const found = plan(project);
    const own = reading.kind === "recipe" ? await ownNumbers(reading.recipe) : [];
    return own.length === 0 ? found : { ...found, own };
  } catch (error) {
    if (!(error instanceof YarnError)) throw error;
    if (reading.kind !== "recipe") throw new CliError("no-plan", `${file}: ${error.message}`, { file });
    const { ends, lingos, picks, units } = project;
    const counted = plan({
      ends,
      picks,
      ...(units === undefined ? {} : { units }),
      ...(lingos === undefined ? {} : { lingos }),
    });
    return { ...counted, missing: ["the numbers of the project cannot be, so no other is worked out"] };
  }
}
