import { parseQuantity, parseReed, parseSley } from "@drawcord/yarn";
import { cleanTwill } from "../rules/examples.js";
import type { ProjectFacts } from "./project.js";
import type { ExampleYarn, Said } from "./said.js";

/**
 * What an example says of its project, read; what is left out follows from the cloth.
 * @param said numbers and yarns as they are written
 * @example exampleFacts({ pieces: 3, length: "10 cm" }).pieces // 3
 */
export function exampleFacts({
  drawIn,
  pieces,
  reed,
  shrinkage,
  sley,
  takeUp,
  warp,
  wefts,
  ...quantities
}: Said): ProjectFacts {
  const read = Object.entries(quantities).map(([name, text]) => [name, parseQuantity(text)]);
  return {
    ends: 0,
    picks: 0,
    ground: { rows: 4, columns: 4, get: (pick, end) => cleanTwill.steps[pick]!.raise.includes(end + 1) },
    ...Object.fromEntries(read),
    ...(drawIn !== undefined && { drawIn: parseQuantity(drawIn) }),
    ...(takeUp !== undefined && { takeUp: parseQuantity(takeUp) }),
    ...(shrinkage !== undefined && {
      shrinkage: { width: parseQuantity(shrinkage), length: parseQuantity(shrinkage) },
    }),
    ...(reed !== undefined && { reed: parseReed(reed) }),
    ...(sley !== undefined && { sley: parseSley(sley) }),
    ...(pieces !== undefined && { pieces }),
    ...(warp !== undefined && { warp: yarnOf(warp) }),
    ...(wefts !== undefined && {
      wefts: wefts.map((weft) => ({ ...yarnOf(weft), name: weft.name, picks: 0 })),
    }),
  };
}

function yarnOf({ fibre, stock, yarn }: ExampleYarn) {
  return {
    yarn,
    ...(fibre !== undefined && { fibre }),
    ...(stock !== undefined && { stock: parseQuantity(stock) }),
  };
}
