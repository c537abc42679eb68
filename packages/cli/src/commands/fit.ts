import { type Recipe, soundRecipe, valueIn } from "@drawcord/files";
import { parseQuantity, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import { defineCommand } from "../command.js";
import { CliError } from "../error.js";
import { changed } from "../fit/changed.js";
import { type Fit, nearestFits } from "../fit/fit.js";
import { fitLength } from "../fit/length.js";
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
  help: `Says what to change in a recipe so that it comes to a finished length or width, fits a warp, or gives a number of pieces: the repeats of a block, the repeats or the borders of the threading, the pieces, the warp. The nearest below and the nearest above are given.

With -o it writes the recipe with the nearer of the two changes, comments kept, whole or not at all.`,
  examples: [
    ["drawcord fit runner.recipe.yaml --length 45cm", "finds the repeats that make pieces of 45 cm"],
    [
      "drawcord fit runner.recipe.yaml --width '16 in' -o wide.recipe.yaml",
      "writes the recipe with the nearest width",
    ],
    ["drawcord fit runner.recipe.yaml --warp 8m", "says how many pieces a warp of 8 m gives"],
  ],
  options: {
    length: { type: "string", value: "LENGTH", help: "the finished length of a piece, such as 45cm" },
    width: { type: "string", value: "WIDTH", help: "the finished width, such as 40cm" },
    warp: { type: "string", value: "LENGTH", help: "the warp that there is, such as 8m" },
    pieces: { type: "string", value: "N", help: "the pieces that are wanted" },
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
    const { fits, wanted } = fitsFor(bytes, recipe, options);
    const { above, below } = nearestFits(fits, wanted);
    const best = nearer(wanted, below, above);
    const wholeText = changed(bytes, source.name, best.revisions).text;
    if (options.output !== undefined) {
      await writeWhole(options.output, io.cwd, [wholeText], { force: options.force });
    }
    if (options.format === "json") {
      const told = (fit: Fit | undefined) =>
        fit && {
          change: fit.what,
          comes: { value: fit.comes.value, unit: fit.comes.unit },
          revisions: fit.revisions,
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
    const line = (lead: string, fit: Fit | undefined): string =>
      fit === undefined ? "" : `${lead}  ${printQuantity(fit.comes)}: ${fit.what}\n`;
    await io.stdout.write(
      `${source.name}\n\nwanted ${printQuantity(wanted)}\n${line("below ", below)}${line("above ", above)}`,
    );
    const wrote =
      options.output === undefined
        ? "No recipe was written; -o FILE writes the nearer."
        : `${options.output} was written: ${best.what}.`;
    await io.stdout.write(`\n${wrote}\n`);
    return 0;
  },
});

interface Asked {
  readonly length: string | undefined;
  readonly width: string | undefined;
  readonly warp: string | undefined;
  readonly pieces: string | undefined;
}

/**
 * What is asked for, and the changes that come near.
 * @throws {CliError} `missing-operand` where nothing or more than one thing is asked for; `no-fit`
 */
function fitsFor(
  bytes: Uint8Array,
  recipe: Recipe,
  asked: Asked,
): { readonly fits: Fit[]; readonly wanted: Quantity } {
  const { length, pieces, warp, width } = asked;
  if ([length, width, warp, pieces].filter((one) => one !== undefined).length !== 1) {
    throw new CliError("missing-operand", "drawcord fit needs one of --length, --width, --warp and --pieces");
  }
  const size = (text: string): Quantity => parseQuantity(text, { kind: "length", positive: true });
  if (length !== undefined) {
    const wanted = size(length);
    return { wanted, fits: fitLength(bytes, recipe, wanted) };
  }
  if (width !== undefined) {
    const wanted = size(width);
    const threading = valueIn(bytes, recipe.file, ["units", "threading"]);
    const fits = typeof threading === "string" ? fitWidth(bytes, recipe, threading, wanted) : [];
    if (fits.length > 0) return { wanted, fits };
    throw new CliError(
      "no-fit",
      `${recipe.file}: its threading has no repeated group and no static borders to change`,
      {
        file: recipe.file,
      },
    );
  }
  if (warp !== undefined) {
    const wanted = size(warp);
    return { wanted, fits: fitWarp(bytes, recipe, wanted) };
  }
  const count = numberOption("fit", "pieces", pieces, 10_000)!;
  return { wanted: quantity(count, "pieces"), fits: [fitPieces(bytes, recipe, count)] };
}

function nearer(wanted: Quantity, below: Fit | undefined, above: Fit | undefined): Fit {
  if (below === undefined || above === undefined) return (below ?? above)!;
  const off = (fit: Fit): number => Math.abs(fit.comes.value - wanted.value);
  return off(above) < off(below) ? above : below;
}
