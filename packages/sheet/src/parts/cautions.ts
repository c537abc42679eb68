import type { Block } from "@drawcord/page";
import { liftWork, WEIGHT_CAUTION } from "@drawcord/units";
import { toMetric, writeQuantity } from "@drawcord/yarn";
import type { SheetPart } from "../part-names.js";
import type { Context } from "./context.js";
import { counted } from "./number.js";

/** From this weight on a lift is worth a word, in grams. */
const HEAVY = 1000;

/** What a weaver should be warned of before she begins; a part without blocks where nothing is due. */
export function cautionsPart(context: Context): SheetPart {
  const texts = [...faults(context), ...weights(context), ...washing(context)];
  return {
    name: "cautions",
    title: "Before you begin",
    blocks: texts.map((text): Block => ({ kind: "paragraph", tone: "caution", text })),
  };
}

function faults({ report }: Context): string[] {
  const { error } = report.summary;
  if (error === 0) return [];
  return [
    `The checker found ${counted(error, "error")}. Do not wind the warp until ${error === 1 ? "it is" : "they are"} mended.`,
  ];
}

/** The heaviest lift, where it is heavy or its weight is not known. */
function weights({ recipe, woven }: Context): string[] {
  const { lingoWeight } = recipe.loom;
  const grams = lingoWeight === undefined ? undefined : toMetric(lingoWeight).value;
  const { heaviest } = liftWork(woven.draft, grams === undefined ? {} : { lingoGrams: grams });
  if (heaviest.units === 0 || (heaviest.grams !== undefined && heaviest.grams < HEAVY)) return [];
  const row = `The heaviest lift is row ${heaviest.row + 1}: ${counted(heaviest.units, "unit")} at once`;
  const weight =
    heaviest.grams === undefined
      ? ", each with its lingo; the recipe does not say what a lingo weighs"
      : `, ${writeQuantity({ value: heaviest.grams / 1000, unit: "kg", kind: "mass" }, { decimals: 1 })} of lingos`;
  return [`${row}${weight}. ${WEIGHT_CAUTION}`];
}

function washing({ recipe }: Context): string[] {
  if (recipe.cloth.shrinkage !== undefined) {
    return [
      "Shrinkage differs from yarn to yarn and from wash to wash: weave a sample, wash it as the cloth will be washed, and measure before you cut.",
    ];
  }
  return [
    "The recipe says nothing of shrinkage, so finished sizes are those of the loom until a sample has been washed and measured.",
  ];
}
