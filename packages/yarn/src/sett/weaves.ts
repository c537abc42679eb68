import type { Interlacing } from "./interlacing.js";

/** R and I of the weaves that a sett is asked for most; any other weave is counted from its drawdown. */
export const usualWeaves: Readonly<Record<string, Interlacing>> = {
  plain: { threads: 2, intersections: 2 },
  "2/1 twill": { threads: 3, intersections: 2 },
  "2/2 twill": { threads: 4, intersections: 2 },
  "1/3 twill": { threads: 4, intersections: 2 },
  "5-end satin": { threads: 5, intersections: 2 },
  "8-end satin": { threads: 8, intersections: 2 },
};
