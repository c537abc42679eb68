/** A square of the figure that stands alone, or a hole in it, where the figure has no other: seen by eye, so only noted. */
import type { ShaftSet } from "@drawcord/ground";
import type { Change, UnitDraft } from "@drawcord/units";
import type { Suspect } from "./suspect.js";
import type { Written } from "./written.js";

/** Squares across and along, fewer of which are no picture. */
const LEAST_SIDE = 6;

interface Stray {
  readonly row: number;
  readonly shaft: number;
  readonly drawn: boolean;
}

/**
 * The one square that is unlike all eight about it, where the plan has no other of its kind.
 * @param draft the draft
 * @param written for every line that was written the rows (from 0) that it weaves
 */
export function straySuspects({ lifts }: UnitDraft, written: Written): Suspect[] {
  const highest = lifts.reduce((most, lift) => Math.max(most, lift.at(-1) ?? 0), 0);
  if (highest < LEAST_SIDE || written.length < LEAST_SIDE) return [];
  const strays = written.flatMap(([row = 0]) => straysIn(lifts, row, highest));
  return [true, false].flatMap((drawn): Suspect[] => {
    const [stray, ...others] = strays.filter((one) => one.drawn === drawn);
    return stray === undefined || others.length > 0 ? [] : [suspectOf(stray, written)];
  });
}

/** The squares of a row, inside the figure, that are unlike all about them. */
function straysIn(lifts: readonly ShaftSet[], row: number, highest: number): Stray[] {
  const [before, here, after] = [lifts[row - 1], lifts[row]!, lifts[row + 1]];
  if (before === undefined || after === undefined) return [];
  const found: Stray[] = [];
  for (let shaft = 2; shaft < highest; shaft++) {
    const drawn = here.includes(shaft);
    const about = [shaft - 1, shaft, shaft + 1];
    const alone =
      [before, after].every((beside) => about.every((one) => beside.includes(one) !== drawn)) &&
      here.includes(shaft - 1) !== drawn &&
      here.includes(shaft + 1) !== drawn;
    if (alone) found.push({ row, shaft, drawn });
  }
  return found;
}

function suspectOf({ drawn, row, shaft }: Stray, written: Written): Suspect {
  const rows = written.find(([first]) => first === row) ?? [row];
  return {
    changes: rows.map((one): Change => ({ change: drawn ? "leave" : "draw", row: one + 1, shafts: [shaft] })),
    slip: { slip: "stray", row: row + 1, shaft, drawn },
    reason: { reason: "stands-alone" },
    gain: 0,
    sure: false,
    onlyNoted: true,
    rivals: [],
  };
}
