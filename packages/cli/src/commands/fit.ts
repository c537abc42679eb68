import { type Recipe, soundRecipe } from "@drawcord/files";
import { parseQuantity, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { type Fit, nearestFits } from "../fit/fit.js";
import { fitLength } from "../fit/length.js";
import { type FittedRecipe, fitted } from "../fit/passes.js";
import { pieceToFit } from "../fit/piece.js";
import { fitPieces, fitWarp } from "../fit/warp.js";
import { fitWidth } from "../fit/width.js";
import { input } from "../inputs.js";
import { numberOption } from "../number-option.js";
import { onlyRecipes } from "../only-recipes.js";
import { toJson } from "../printable.js";
import { textOrJson } from "../shared-options.js";
import { writeWhole } from "../write-whole.js";

export const command = defineCommand({
  operands: "FILE",
  help: `Says what to change in a recipe so that it comes to a finished length or width, fits a warp, or gives a number of pieces: the repeats of a block, the repeats or the borders of the threading, the pieces, the warp. The nearest below and the nearest above are given, and what the checker would then find that it does not find now.

With -o it writes the recipe with the nearer of the two that passes, comments kept, whole or not at all. A number under "stated" that was right is stated anew, and of an order of colours over the ends the widest stripe takes the ends.`,
  examples: [
    ["drawcord fit runner.recipe.yaml --length 45cm", "finds the repeats that make pieces of 45 cm"],
    [
      "drawcord fit runner.recipe.yaml --width '16 in' -o wide.recipe.yaml",
      "writes the recipe with the nearest width",
    ],
    [
      "drawcord fit seasons.recipe.yaml --piece acorns --length 40cm",
      "finds the length that whole acorns fill, of one of the pieces on a warp",
    ],
    ["drawcord fit runner.recipe.yaml --warp 8m", "says how many pieces a warp of 8 m gives"],
  ],
  options: {
    length: { type: "string", value: "LENGTH", help: "the finished length of a piece, such as 45cm" },
    width: { type: "string", value: "WIDTH", help: "the finished width, such as 40cm" },
    warp: { type: "string", value: "LENGTH", help: "the warp that there is, such as 8m" },
    pieces: { type: "string", value: "N", help: "the pieces that are wanted" },
    piece: {
      type: "string",
      value: "NAME",
      help: "of several pieces on the warp the one that is fitted, by its name; a width is of all",
    },
    format: textOrJson("how to print what was found"),
    output: {
      type: "string",
      short: "o",
      value: "FILE",
      help: "write the changed recipe to this file, whole or not at all",
    },
    force: { type: "boolean", help: "replace the file if there is one" },
  },
  async run({ operands, options }, io) {
    const source = input(operands[0]!, io);
    const bytes = await source.read();
    onlyRecipes(bytes, source.name, "only recipes can be fitted");
    const recipe = soundRecipe(bytes, source.name);
    const { fits, wanted } = await fitsFor(bytes, recipe, options);
    const nearest = nearestFits(fits, wanted);
    const [below, above] = [nearest.below, nearest.above].map((fit) => fit && fitted(bytes, recipe, fit));
    const best = nearer(wanted, below, above);
    if (options.output !== undefined) {
      if (best === undefined) throw noneAgrees(source.name, [below, above]);
      await writeWhole(options.output, io.cwd, [best.text], { force: options.force });
    }
    if (options.format === "json") {
      const told = (fit: FittedRecipe | undefined) =>
        fit && {
          change: fit.what,
          comes: { value: fit.comes.value, unit: fit.comes.unit },
          revisions: fit.revisions,
          finds: fit.finds,
        };
      const whole = {
        file: source.name,
        wanted: { value: wanted.value, unit: wanted.unit },
        below: told(below),
        above: told(above),
      };
      await io.stdout.write(`${toJson(whole, 2)}\n`);
      return 0;
    }
    await io.stdout.write(
      `${source.name}\n\nwanted ${printQuantity(wanted)}\n${line("below ", below)}${line("above ", above)}`,
    );
    const wrote =
      options.output === undefined
        ? "No recipe was written; -o FILE writes the nearer."
        : `${options.output} was written: ${best!.what}.`;
    await io.stdout.write(`\n${wrote}\n`);
    return 0;
  },
});

/** A fit as a line, and what the checker would then find under it. */
function line(lead: string, fit: FittedRecipe | undefined): string {
  if (fit === undefined) return "";
  const then = fit.finds.map((message) => `        but then ${message}\n`).join("");
  return `${lead}  ${printQuantity(fit.comes)}: ${fit.what}\n${then}`;
}

function noneAgrees(file: string, fits: readonly (FittedRecipe | undefined)[]): CliError {
  const why = fits.flatMap((fit) => fit?.finds[0] ?? [])[0]!;
  return new CliError("no-fit", `${file}: nothing was written, for the nearest does not pass: ${why}`, {
    file,
  });
}

interface Asked {
  readonly length: string | undefined;
  readonly width: string | undefined;
  readonly warp: string | undefined;
  readonly pieces: string | undefined;
  readonly piece: string | undefined;
}

/**
 * What is asked for, and the changes that come near.
 * @throws {CliError} `missing-operand` where nothing or more than one thing is asked for; `unknown-piece`; `no-fit`
 */
async function fitsFor(
  bytes: Uint8Array,
  recipe: Recipe,
  asked: Asked,
): Promise<{ readonly fits: readonly Fit[]; readonly wanted: Quantity }> {
  const { length, pieces, warp, width } = asked;
  if ([length, width, warp, pieces].filter((one) => one !== undefined).length !== 1) {
    throw new CliError("missing-operand", "drawcord fit needs one of --length, --width, --warp and --pieces");
  }
  const size = (text: string): Quantity => parseQuantity(text, { kind: "length", positive: true });
  if (width !== undefined) {
    if (asked.piece !== undefined) {
      const sentence = "drawcord fit: --piece goes without --width, which all pieces on a warp share";
      throw new CliError("unwanted-option", sentence, { option: "piece" });
    }
    const wanted = size(width);
    return { wanted, fits: fitWidth(bytes, recipe, wanted) };
  }
  const piece = await pieceToFit(recipe, asked.piece);
  if (length !== undefined) {
    const wanted = size(length);
    return { wanted, fits: fitLength(bytes, recipe, piece, wanted) };
  }
  if (warp !== undefined) {
    const wanted = size(warp);
    return { wanted, fits: fitWarp(bytes, recipe, piece, wanted) };
  }
  const count = numberOption("fit", "pieces", pieces, 10_000)!;
  return { wanted: quantity(count, "pieces"), fits: [fitPieces(bytes, recipe, piece, count)] };
}

/** The nearer of those that pass. */
function nearer(wanted: Quantity, ...fits: readonly (FittedRecipe | undefined)[]): FittedRecipe | undefined {
  const off = (fit: Fit): number => Math.abs(fit.comes.value - wanted.value);
  return fits
    .flatMap((fit) => (fit === undefined || fit.finds.length > 0 ? [] : [fit]))
    .reduce<FittedRecipe | undefined>(
      (best, fit) => (best === undefined || off(fit) < off(best) ? fit : best),
      undefined,
    );
}
