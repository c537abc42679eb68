import type { Limit } from "./limit.js";

/** How close threads may lie, by the closest sett of their yarn in the ground weave: 100 % (Drawcord's own). */
export const closeSettLimit = {
  key: "close-sett",
  name: "closeSett",
  kind: "percent",
  usual: 100,
  description:
    "How close the ends or picks may lie, as a share of the closest sett of their yarn in the ground weave; usually 100 %.",
  examples: ["110 %"],
} as const satisfies Limit;
