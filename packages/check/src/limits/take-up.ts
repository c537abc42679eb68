import type { Limit } from "./limit.js";

/** How far the intersections of a thread may lie from the average of its system: 15 % (Drawcord's own). */
export const takeUpLimit = {
  key: "take-up",
  name: "takeUp",
  kind: "share",
  usual: 15,
  description:
    "How far the intersections of a thread may lie from the average of its system, or of its weft.",
  examples: ["15 %"],
} as const satisfies Limit;
