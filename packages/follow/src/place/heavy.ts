/** Lifts that weigh on the loom and on the back. */
import type { FollowLift, FollowPlan } from "../plan/types.js";

/** Lingos of so many grams in one lift are heavy. Drawcord's own. */
const HEAVY_GRAMS = 5000;

/** Where the weight of a lingo is not known: so many units, and so large a share of them, are heavy. Drawcord's own. */
const HEAVY_UNITS = 60;
const HEAVY_SHARE = 0.6;

/**
 * A caution where a lift is heavy; nothing where it is not.
 * @example heavyWords(plan, { handles: [1], units: 3, grams: 60 }) // ""
 */
export function heavyWords({ threading }: FollowPlan, { grams, units }: FollowLift): string {
  const heavy =
    grams === undefined
      ? units >= HEAVY_UNITS && units >= HEAVY_SHARE * threading.length
      : grams >= HEAVY_GRAMS;
  if (!heavy) return "";
  const weight =
    grams === undefined ? "" : `, ${(grams / 1000).toFixed(1)} kg of lingos and more in cords and leashes`;
  return `A heavy lift: ${units} units${weight}. Draw it in steps, with a straight back, and not past what the maker of the loom allows.`;
}
