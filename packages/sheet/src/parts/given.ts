import type { Block } from "@drawcord/page";
import type { Quantity } from "@drawcord/yarn";
import type { Context } from "./context.js";
import { spacedNumber } from "./number.js";
import { pairs } from "./pairs.js";

/** What the recipe states of its cloth and its project. */
export function given({ recipe, print }: Context): Block {
  const { cloth, project } = recipe;
  const rows: [string, string][] = [];
  const add = (what: string, quantity: Quantity | undefined) => {
    if (quantity !== undefined) rows.push([what, print(quantity)]);
  };
  add("Sett in the reed", cloth.sett);
  add("Picks", cloth.picks);
  add("Draw-in, on the width in the reed", cloth.drawIn);
  add("Take-up, on the length of the cloth", cloth.takeUp);
  add("Shrinkage in width", cloth.shrinkage?.width);
  add("Shrinkage in length", cloth.shrinkage?.length);
  if (project.pieces !== undefined) rows.push(["Pieces wanted", spacedNumber(project.pieces)]);
  add("Finished length of a piece", project.length);
  add("Finished width wanted", project.width);
  add("Hems of a piece, both ends together", project.hems);
  add("Fringes of a piece, both ends together", project.fringe);
  add("Gaps between pieces", project.gaps);
  add("Warp for samples", project.sampling);
  add("Loom waste", project.waste);
  add("Yarn spared for mistakes", project.spare);
  if (rows.length > 0) return pairs("given", "What the recipe gives", rows);
  return {
    kind: "paragraph",
    tone: "note",
    text: "The recipe gives no sett, no yarn sizes and no lengths; what follows from them is left out.",
  };
}
