import { type Recipe, soundRecipe } from "@drawcord/files";
import { pieceLabel, tickList, unitPaper, wrapCard } from "@drawcord/lesson";
import type { Document } from "@drawcord/page";
import { toMetric } from "@drawcord/yarn";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import { namedOutput } from "../named-output.js";
import { numberOption } from "../number-option.js";
import { onlyRecipes } from "../only-recipes.js";
import { PAPER_OPTION, PRINTED_OPTION } from "../shared-options.js";
import { endingOf, sheetFiles } from "../sheet/sheet-files.js";
import { writeAll } from "../sheet/write-all.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Prints paper for a class from a recipe. units: blank squared paper, a square a unit and a row, in the true proportion of the sett. wraps: a card to wrap a yarn about and count. ticks: the threading as a list to tick. label: labels for the finished piece with fibre, width, length and care as you state them; what you leave out is a line to write on.

The ending of the file says the format: .pdf, .html, .md, .svg or .png. For FILE, - is standard input.`,
  examples: [
    ["drawcord paper runner.recipe.yaml -o units.pdf --kind units", "rules paper for its units and rows"],
    [
      "drawcord paper runner.recipe.yaml -o card.pdf --kind wraps --yarn weft",
      "prints a wrap card for its weft",
    ],
    [
      'drawcord paper runner.recipe.yaml -o label.pdf --kind label --width "26 cm" --care "wash at 40 °C"',
      "prints labels, with lines for length and weaver",
    ],
  ],
  options: {
    output: PRINTED_OPTION,
    kind: {
      type: "string",
      value: "KIND",
      choices: ["units", "wraps", "ticks", "label"],
      default: "units",
      help: "which paper",
    },
    size: { type: "string", value: "MM", help: "units: width of a unit on paper in mm; 4 if left out" },
    yarn: { type: "string", value: "NAME", help: "wraps: which yarn of the recipe; its warp if left out" },
    fibre: { type: "string", value: "TEXT", help: "label: those of the recipe if left out" },
    width: { type: "string", value: "TEXT", help: "label: as measured on the finished piece" },
    length: { type: "string", value: "TEXT", help: "label: as measured on the finished piece" },
    care: { type: "string", value: "TEXT", help: "label: how to wash and press it" },
    weaver: { type: "string", value: "NAME", help: "label: who wove it" },
    paper: PAPER_OPTION,
    force: { type: "boolean", help: "replace files that are there" },
  },
  async run({ operands, options }, io) {
    const { force, kind, paper } = options;
    const output = namedOutput("paper", options.output, "paper.pdf");
    endingOf(output);
    const size = numberOption("paper", "size", options.size, 40, 2);
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "paper is printed from recipes");
    const recipe = soundRecipe(bytes, source.name);
    const papers: Readonly<Record<typeof kind, () => Document>> = {
      units: () => unitsOf(recipe, size),
      wraps: () => wrapCard(yarnOf(recipe, options.yarn)),
      ticks: () => tickList(recipe),
      label: () => {
        const { care, fibre, length, weaver, width } = options;
        return pieceLabel(recipe, {
          ...(care === undefined ? {} : { care }),
          ...(fibre === undefined ? {} : { fibre }),
          ...(length === undefined ? {} : { length }),
          ...(weaver === undefined ? {} : { weaver }),
          ...(width === undefined ? {} : { width }),
        });
      },
    };
    await writeAll(sheetFiles(papers[kind](), output, { paper }), io, force);
    return 0;
  },
});

/** Paper for the units and rows that a recipe has most of. */
function unitsOf({ cloth, draft, title }: Recipe, width: number | undefined): Document {
  const { sett, picks = sett } = cloth;
  const first = (sizes: number | readonly number[]) => (typeof sizes === "number" ? sizes : (sizes[0] ?? 1));
  const inCm = (quantity: typeof sett) => (quantity === undefined ? 10 : toMetric(quantity).value);
  return unitPaper({
    unitEnds: first(draft.unitEnds),
    rowPicks: first(draft.picksPerRow),
    sett: inCm(sett),
    picks: inCm(picks),
    ...(title === undefined ? {} : { title: `${title}: unit paper` }),
    ...(width === undefined ? {} : { width }),
  });
}

function yarnOf({ file, yarns }: Recipe, asked = "warp"): string {
  const found = yarns.find(({ name }) => name === asked);
  if (found !== undefined) {
    const known = [found.count?.text, found.fibre].filter((word) => word !== undefined);
    return known.length === 0 ? found.name : `${found.name}: ${known.join(", ")}`;
  }
  const names = yarns.map(({ name }) => name).join(", ") || "none";
  throw new CliError("unknown-choice", `${file}: there is no yarn "${asked}"; the recipe has ${names}`, {
    option: "yarn",
    value: asked,
  });
}
