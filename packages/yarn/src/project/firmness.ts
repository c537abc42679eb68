import { fibres } from "../count/fibres.js";
import { calculate } from "../formula/calculate.js";
import type { Quantity } from "../quantity/units.js";
import { type Interlacing, interlacing } from "../sett/interlacing.js";
import { firmnessInWords, settByRoot, shareOfClosest } from "../sett/sett.js";
import type { PlanFirmness, Project, ProjectYarn } from "./types.js";

/** The weft of the ground, which a recipe names so where its ground does not name it. */
const GROUND_WEFT = "weft";

/** How firm the setts are for the yarns in the ground weave; undefined where the warp or its sett is not known. */
export function planFirmness(
  { ground, pickSett, warp, wefts = [] }: Project,
  sett: Quantity | undefined,
): PlanFirmness | undefined {
  if (ground === undefined || warp?.yarn === undefined || sett === undefined) return undefined;
  const weave = interlacing(ground);
  const ends = firmnessOf(warp, sett, weave.warp);
  const groundWeft =
    wefts.find(({ name }) => name === GROUND_WEFT) ?? (wefts.length === 1 ? wefts[0] : undefined);
  // The picks of a cloth with a pattern weft are those of both wefts.
  if (pickSett === undefined || groundWeft?.yarn === undefined || wefts.length !== 1) {
    return { ...ends, words: firmnessInWords(ends.share) };
  }
  const weft = firmnessOf(groundWeft, pickSett, weave.weft);
  const together = calculate("share-of-both-setts", { p_1: ends.share, p_2: weft.share });
  return { ...ends, weft, together, words: firmnessInWords(together) };
}

function firmnessOf({ fibre, yarn }: ProjectYarn, sett: Quantity, weave: Interlacing) {
  const known = fibre !== undefined && Object.hasOwn(fibres, fibre) ? { fibre } : {};
  const closest = settByRoot(yarn!, weave, known);
  return { closest, share: shareOfClosest(sett, closest) };
}
