import { listed } from "@drawcord/base";
import type { Block } from "@drawcord/page";
import { type Plan, type Quantity, WASHING_CAUTION } from "@drawcord/yarn";
import type { SheetPart } from "../part-names.js";
import { checkedText } from "./checked.js";
import type { Context } from "./context.js";

/** What is left to do when the cloth is off the loom, what to look out for, and whether all of it was checked. */
export function cautionsPart(context: Context, all: readonly Context[]): SheetPart {
  const { recipe, plan, print } = context;
  const { project } = recipe;
  const finished = sizesOf(plan);
  const steps = [
    "Look the cloth over on the loom, and mend what floats; let the tension off, and then cut it off.",
    ...(project.hems === undefined ? [] : [`Hems: ${print(project.hems)} a piece, both ends together.`]),
    ...(project.fringe === undefined
      ? []
      : [`Fringes: ${print(project.fringe)} a piece, both ends together.`]),
    ...finished.map(({ name, sides }) => {
      const what = all.length === 1 ? "A piece" : `A piece of the ${name}`;
      return `${what} measures ${sides.map(print).join(" by ")} when it is finished.`;
    }),
  ];
  const caution = (text: string): Block => ({ kind: "paragraph", tone: "caution", text });
  return {
    name: "cautions",
    title: "Finishing, and what to look out for",
    blocks: [
      { kind: "paragraph", tone: "lead", text: steps.join(" ") },
      caution(washing(context)),
      { kind: "paragraph", text: checkedText(context.report) },
    ],
  };
}

/** The finished sizes of the pieces, where both sides are known; pieces of one size are told together. */
function sizesOf({ woven, finishedWidth }: Plan) {
  const sizes = new Map<number, { names: string[]; sides: Quantity[] }>();
  for (const { name, finishedLength } of woven) {
    if (finishedWidth === undefined || finishedLength === undefined) continue;
    const { value } = finishedLength;
    const known = sizes.get(value);
    if (known === undefined) sizes.set(value, { names: [name], sides: [finishedWidth, finishedLength] });
    else known.names.push(name);
  }
  return [...sizes.values()].map(({ names, sides }) => ({ name: listed(names), sides }));
}

function washing({ recipe }: Context): string {
  if (recipe.cloth.shrinkage !== undefined) {
    return `Shrinkage differs from yarn to yarn and from wash to wash: weave a sample, wash it as the cloth will be washed, and measure before you cut. ${WASHING_CAUTION}`;
  }
  return `The recipe says nothing of shrinkage, so finished sizes are those of the loom until a sample has been washed and measured. ${WASHING_CAUTION}`;
}
