import { fibres } from "../count/fibres.js";
import type { Quantity } from "../quantity/units.js";
import { interlacing } from "../sett/interlacing.js";
import { inWords, settByRoot, shareOfClosest } from "../sett/sett.js";
import type { PlanFirmness, Project } from "./types.js";

/** How firm a sett is for the warp yarn in the ground weave; undefined where one of them is not known. */
export function planFirmness(
  { ground, warp }: Project,
  sett: Quantity | undefined,
): PlanFirmness | undefined {
  if (ground === undefined || warp?.yarn === undefined || sett === undefined) return undefined;
  const { fibre } = warp;
  const known = fibre !== undefined && Object.hasOwn(fibres, fibre) ? { fibre } : {};
  const closest = settByRoot(warp.yarn, interlacing(ground).warp, known);
  const share = shareOfClosest(sett, closest);
  return { closest, share, words: inWords(share) };
}
