import type { Limit } from "./limit.js";

/** Its key is not `take-up`, which is the cloth's own. How far the intersections of a thread may lie from the average of its system: 15 % (Drawcord's own). */
export const takeUpLimit = {
  key: "uneven",
  name: "takeUp",
  kind: "share",
  usual: 15,
  description:
    "How far the intersections of a thread may lie from the average of its system, or of its weft.",
  examples: ["15 %"],
} as const satisfies Limit;
