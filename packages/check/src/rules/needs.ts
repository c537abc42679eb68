/** What rules need of a cloth before they can look. */
import type { Calculated, Cloth, Drafted, LaidOut } from "../cloth.js";

/** Why a rule of units and lifts does not look at a cloth that has none. */
const NO_PLAN = "a plain draft has no units and no lift plan";

/** Why a rule without a usual limit does not look before the weaver has set hers. */
export const NO_LIMIT = "no limit is set";

/** A cloth, whatever is known of it. */
export function anyCloth(cloth: Cloth): Cloth {
  return cloth;
}

/** A cloth whose units and rows are known. */
export function planned(cloth: Cloth): LaidOut | string {
  return isPlanned(cloth) ? cloth : NO_PLAN;
}

function isPlanned(cloth: Cloth): cloth is LaidOut {
  return cloth.layout !== undefined && cloth.figure !== undefined;
}

/** A cloth that a plain draft is the plan of. */
export function drafted(cloth: Cloth): Drafted | string {
  return isDrafted(cloth) ? cloth : "there is no plain draft";
}

function isDrafted(cloth: Cloth): cloth is Drafted {
  return cloth.shaftDraft !== undefined;
}

/** A cloth whose project can be worked out. */
export function calculated(cloth: Cloth): Calculated | string {
  const on = planned(cloth);
  if (typeof on === "string") return on;
  const numbers = cloth.numbers?.();
  if (numbers === undefined) return "nothing is said of the project";
  return "code" in numbers ? "the numbers of the project cannot be" : { ...on, ...numbers };
}
