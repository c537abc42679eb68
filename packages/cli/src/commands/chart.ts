import { basename, extname } from "node:path";
import { framedChart, MOST_CHART_SHAFTS, threadedChart, weavable } from "@drawcord/chart";
import { kindOf, soundRecipe } from "@drawcord/files";
import { checkRecipe } from "@drawcord/review";
import { parseThreading } from "@drawcord/units";
import { changedPicture } from "../chart/changed-picture.js";
import { chartRecipe } from "../chart/chart-recipe.js";
import { chartJson, chartText } from "../chart/chart-report.js";
import { readChart } from "../chart/read-chart.js";
import {
  chartOfRecipe,
  inOrderOf,
  looksLikeRecipe,
  type RecipeChart,
  recipeBy,
} from "../chart/recipe-chart.js";
import { type ChartMeans, onUnits, shaftsUsed, weaveChart } from "../chart/weave-chart.js";
import { PIECE_OPTION } from "../chosen-piece.js";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { input } from "../inputs.js";
import type { Io } from "../io.js";
import { numberOption } from "../number-option.js";
import { toJson } from "../printable.js";
import { textOrJson } from "../shared-options.js";
import { writeWhole } from "../write-whole.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Turns a chart into threading and lifts: a square across is a unit, a square up is a row, the lowest row is woven first. It is exact on as many pattern shafts as the chart has different columns; with fewer it finds the nearest picture and shows the squares that change.

FILE is a text of # and ., a PBM or a PNG picture (a pixel a unit, or a square of --scale pixels), or - for standard input. A photographed grid is not read: redraw it, a pixel a square.

FILE may be a recipe too: its figure is then looked at again, for fewer shafts with --shafts or fewer lifts with --lifts. Its borders stay, and so do the squares that the picture of --keep draws: an outline, a letter. Where shafts can be saved without a change it says so.

With -o it writes a recipe that drawcord check reads, whole or not at all. Where FILE is a recipe, it is that recipe with its new threading and lifts, its blocks, pieces and comments kept; with --piece no other piece is left in it. With --picture it draws the squares that change.`,
  examples: [
    ["drawcord chart moth.txt", "says how many shafts the chart takes, and how they are threaded"],
    [
      "drawcord chart moth.png --shafts 10 --unit-ends 4 -o runner.recipe.yaml",
      "weaves it on ten shafts, as near as can be, and writes the recipe",
    ],
    [
      "drawcord chart runner.recipe.yaml --shafts 12 --keep outline.txt",
      "shows the runner on twelve shafts, its borders and an outline kept",
    ],
    [
      "drawcord chart moth.txt --border vine.txt --corner mitred",
      "frames it in a vine that turns its corners",
    ],
    ["drawcord chart moth.txt --threading '(1-8 7-2)*4 1'", "finds the lifts for a threading on the loom"],
  ],
  options: {
    shafts: {
      type: "string",
      value: "N",
      help: "the most pattern shafts, up to 200; as many as it takes when not given",
    },
    lifts: { type: "string", value: "N", help: "the most different lifts" },
    symmetry: {
      type: "string",
      value: "KIND",
      choices: ["none", "mirror", "point"],
      default: "none",
      help: "make the right half mirror the left, or thread in repeated points",
    },
    threading: {
      type: "string",
      value: "TEXT",
      help: "the threading that is on the loom, such as '(1-8 7-2)*4'",
    },
    "single-unit": { type: "boolean", help: "a cord for each unit" },
    units: { type: "string", value: "N", help: "the units of the loom; those beside the chart are static" },
    keep: {
      type: "string",
      value: "PICTURE",
      help: "a picture of the squares that may not change: # stays as it is (of a recipe)",
    },
    piece: { ...PIECE_OPTION, help: "ask this piece of a recipe alone, by its name" },
    picture: {
      type: "string",
      value: "FILE",
      help: "draw the squares that change to this SVG file, those newly drawn and those drawn no more in colours of their own",
    },
    border: {
      type: "string",
      value: "PICTURE",
      help: "frame the picture in this strip, its lowest line outermost, turned at the corners",
    },
    corner: {
      type: "string",
      value: "KIND",
      choices: ["mitred", "meeting"],
      help: "how the border turns: each side to the diagonal (mitred, when not given), or the level ones to the edge",
    },
    scale: { type: "string", value: "N", default: "1", help: "pixels along the side of a square of a PNG" },
    ink: { type: "string", value: "COLOUR", help: "the colour of what is drawn in a PNG, such as #b02028" },
    threshold: {
      type: "string",
      value: "PERCENT",
      help: "how light a grey still counts as drawn; 50 when not given",
    },
    "unit-ends": { type: "string", value: "N", default: "4", help: "ends in each unit, for the recipe" },
    picks: { type: "string", value: "N", help: "picks in each row, for the recipe; as many as --unit-ends" },
    weave: {
      type: "string",
      value: "WEAVE",
      default: "broken twill",
      help: "the ground weave, for the recipe",
    },
    title: { type: "string", value: "TEXT", help: "the title of the recipe" },
    format: textOrJson("how to print what was found"),
    output: {
      type: "string",
      short: "o",
      value: "FILE",
      help: "write the recipe to this file, whole or not at all",
    },
    force: { type: "boolean", help: "replace the file if there is one" },
  },
  async run({ operands, options }, io) {
    const source = input(operands[0]!, io);
    const means = meansOf(options);
    const unitEnds = numberOption("chart", "unit-ends", options["unit-ends"], 1000)!;
    const ground = {
      title: options.title ?? titleOf(source.name),
      weave: options.weave,
      unitEnds,
      picks: numberOption("chart", "picks", options.picks, 1000) ?? unitEnds,
    };
    const units = numberOption("chart", "units", options.units, 100_000) ?? means.threading?.length;
    const scale = numberOption("chart", "scale", options.scale, 256)!;
    const threshold = numberOption("chart", "threshold", options.threshold, 99);

    const ink = { scale, ink: options.ink, threshold };
    const bytes = await source.read();
    const asRead = { ...source, read: () => Promise.resolve(bytes) };
    const isRecipe = kindOf(bytes) === "recipe" && looksLikeRecipe(bytes);
    if (!isRecipe && options.keep !== undefined) {
      throw new CliError("unwanted-option", "drawcord chart: --keep goes with a recipe", { option: "keep" });
    }
    if (!isRecipe && options.piece !== undefined) {
      throw new CliError("unwanted-option", "drawcord chart: --piece goes with a recipe", {
        option: "piece",
      });
    }
    if (isRecipe && options.border !== undefined) {
      throw new CliError("unwanted-option", "drawcord chart: --border goes with a picture", {
        option: "border",
      });
    }
    if (isRecipe) {
      const keep = options.keep === undefined ? undefined : await readChart(input(options.keep, io), ink);
      const asked = await chartOfRecipe(bytes, source.name, { keep, piece: options.piece });
      await writeAsked(asked, bytes, { means, ...options }, io);
      return 0;
    }
    const bare = await readChart(asRead, ink);
    const drawn =
      options.border === undefined
        ? bare
        : framedChart(bare, await readChart(input(options.border, io), ink), options.corner ?? "mitred");
    const wanted = units === undefined ? drawn : onUnits(drawn, units, source.name);
    const cloth = weaveChart(wanted, means);
    const recipe = chartRecipe(cloth, ground);
    const faults = faultsOf(recipe);
    if (options.output !== undefined) {
      await writeWhole(options.output, io.cwd, [recipe], { force: options.force });
    }

    if (options.picture !== undefined) {
      await writeWhole(options.picture, io.cwd, [changedPicture(cloth, wanted)], { force: options.force });
    }
    const result = {
      file: source.name,
      wanted,
      cloth,
      shaftsTaken: shaftsUsed(threadedChart(wanted)),
      quarrels: means.threading === undefined ? [] : weavable(means.threading, wanted).quarrels,
    };
    if (options.format === "json") {
      await io.stdout.write(`${toJson(chartJson(result), 2)}\n`);
      return 0;
    }
    for (const text of chartText(result, io.width)) await io.stdout.write(text);
    if (options.output === undefined) {
      await io.stdout.write("\nNo recipe was written; -o FILE writes one.\n");
    } else {
      const next = faults === 0 ? "finds nothing that would spoil the cloth" : `finds ${faults} to look at`;
      await io.stdout.write(`\n${options.output} was written; drawcord check ${next}.\n`);
    }
    return 0;
  },
});

/** The squares of a recipe by other means: told, and written where that is asked for. */
async function writeAsked(
  asked: RecipeChart,
  bytes: Uint8Array,
  options: {
    readonly means: ChartMeans;
    readonly format: "text" | "json";
    readonly output: string | undefined;
    readonly picture: string | undefined;
    readonly force: boolean;
  },
  io: Io,
): Promise<void> {
  const { means, format, output, picture, force } = options;
  const { fixed, recipe, saving, wanted } = asked;
  if (means.threading !== undefined || means.singleUnit) {
    const sentence = "drawcord chart: of a recipe --shafts, --lifts and --symmetry may be asked";
    throw new CliError("unwanted-option", sentence);
  }
  const keeps = means.symmetry === undefined || means.symmetry === "none";
  const cloth = inOrderOf(recipe, weaveChart(wanted, keeps ? { ...means, fixed } : means));
  const result = {
    file: recipe.file,
    wanted,
    cloth,
    shaftsTaken: shaftsUsed(threadedChart(wanted)),
    quarrels: [],
  };
  const text = output === undefined ? undefined : recipeBy(bytes, asked, cloth);
  if (output !== undefined) await writeWhole(output, io.cwd, [text!], { force });
  if (picture !== undefined) {
    await writeWhole(picture, io.cwd, [changedPicture(cloth, wanted)], { force });
  }
  if (format === "json") {
    await io.stdout.write(`${toJson({ ...chartJson(result), saving }, 2)}\n`);
    return;
  }
  for (const line of chartText(result, io.width)) await io.stdout.write(line);
  if (saving !== undefined) await io.stdout.write(`\n${saving}\n`);
  if (output === undefined) await io.stdout.write("\nNo recipe was written; -o FILE writes one.\n");
  else {
    const faults = faultsOf(text!);
    const next = faults === 0 ? "finds nothing that would spoil the cloth" : `finds ${faults} to look at`;
    await io.stdout.write(`\n${output} was written; drawcord check ${next}.\n`);
  }
}

function meansOf(options: {
  readonly shafts: string | undefined;
  readonly lifts: string | undefined;
  readonly symmetry: "none" | "mirror" | "point";
  readonly threading: string | undefined;
  readonly "single-unit": boolean;
}): ChartMeans {
  const shafts = numberOption("chart", "shafts", options.shafts, MOST_CHART_SHAFTS);
  const lifts = numberOption("chart", "lifts", options.lifts, 1_000_000);
  const { symmetry, threading, "single-unit": singleUnit } = options;
  const asked = shafts !== undefined || lifts !== undefined || symmetry !== "none";
  if ([threading !== undefined, singleUnit, asked].filter(Boolean).length > 1) {
    const sentence =
      "--threading and --single-unit say how the units hang; --shafts, --lifts and --symmetry go with neither, nor do the two go together";
    throw new CliError("unwanted-option", sentence);
  }
  if (symmetry === "point" && shafts === undefined) {
    throw new CliError("missing-value", "--symmetry point needs a number of shafts, --shafts N");
  }
  return {
    singleUnit,
    symmetry,
    ...(shafts !== undefined && { shafts }),
    ...(lifts !== undefined && { lifts }),
    ...(threading !== undefined && { threading: parseThreading(threading) }),
  };
}

/** The findings of the recipe that weigh as errors or warnings; throws where the recipe cannot be read at all. */
function faultsOf(recipe: string): number {
  const read = soundRecipe(recipe, "the recipe");
  const { summary } = checkRecipe(read, { causes: false });
  return summary.error + summary.warning;
}

function titleOf(name: string): string {
  const base = basename(name, extname(name)).replace(/[-_]+/g, " ");
  return base.charAt(0).toUpperCase() + base.slice(1);
}
