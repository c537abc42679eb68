import type { UnitDraft } from "@drawcord/units";
import { readQuantity, readReed, readSley } from "@drawcord/yarn";
import type { ProjectFacts } from "../options.js";
import { cleanTwill } from "../rules/examples.js";

/** Ten units of four ends, ten rows of four picks, for examples of numbers. */
export const tenByTen: UnitDraft = {
  ground: cleanTwill,
  unitEnds: 4,
  threading: [[1], [], [1], [], [1], [], [1], [], [1], []],
  lifts: [[1], [], [1], [], [1], [], [1], [], [1], []],
  picksPerRow: 4,
};

/** What is said of its project: what is left out follows from the cloth. */
export function facts(parts: Readonly<Partial<Record<TextFact, string>>> = {}): ProjectFacts {
  const { drawIn, reed, shrinkage, sley, takeUp, ...quantities } = parts;
  const read = Object.entries(quantities).map(([name, text]) => [name, readQuantity(text)]);
  const share = (text: string | undefined) => (text === undefined ? undefined : readQuantity(text));
  const losses = { drawIn: share(drawIn), takeUp: share(takeUp) };
  return {
    ends: 0,
    picks: 0,
    ground: { rows: 4, columns: 4, get: (pick, end) => cleanTwill.steps[pick]!.raise.includes(end + 1) },
    ...Object.fromEntries(read),
    ...Object.fromEntries(Object.entries(losses).filter(([, value]) => value !== undefined)),
    ...(shrinkage !== undefined && {
      shrinkage: { width: readQuantity(shrinkage), length: readQuantity(shrinkage) },
    }),
    ...(reed !== undefined && { reed: readReed(reed) }),
    ...(sley !== undefined && { sley: readSley(sley) }),
  };
}

type TextFact =
  | ("sett" | "pickSett" | "drawIn" | "takeUp" | "shrinkage" | "reed" | "sley" | "lingoWeight")
  | ("width" | "length" | "hems" | "fringe" | "gaps" | "sampling" | "waste" | "warpLength");
