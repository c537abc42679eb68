/** Lifts that weigh on the loom and on the back. */
import { heavyLift } from "@drawcord/units";
import type { FollowLift, FollowPlan } from "../plan/types.js";

/** Where the weight of a lingo is not known: so many units, and so large a share of them, are heavy. Drawcord's own. */
const HEAVY_UNITS = 60;
const HEAVY_SHARE = 0.6;

/**
 * A caution where a lift is heavy; nothing where it is not.
 * @example heavyWords(plan, { handles: [1], units: 3, grams: 60 }) // ""
 */
export function heavyWords({ threading }: FollowPlan, { grams, units }: FollowLift): string {
  const light = grams === undefined && (units < HEAVY_UNITS || units < HEAVY_SHARE * threading.length);
  const words = light ? "" : heavyLift(grams);
  return words === "" ? "" : `A heavy lift, ${units} units at once. ${words}`;
}
