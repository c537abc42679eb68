import type { Limit } from "./limit.js";

/** How open threads may lie, by the closest sett of their yarn in the ground weave: 50 % (Drawcord's own). */
export const openSettLimit = {
  key: "open-sett",
  name: "openSett",
  kind: "percent",
  usual: 50,
  description:
    "How open the ends or picks may lie, as a share of the closest sett of their yarn in the ground weave; usually 50 %, for a veil less.",
  examples: ["30 %"],
} as const satisfies Limit;
