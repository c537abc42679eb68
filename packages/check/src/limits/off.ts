import type { Limit } from "./limit.js";

/** How far two numbers that say the same may lie apart: 3 % (Drawcord's own). */
export const off = {
  key: "off",
  name: "off",
  kind: "share",
  usual: 3,
  description:
    "How far two numbers of the project that say the same, such as the length of a piece and its rows, may lie apart; usually 3 %.",
  examples: ["3 %"],
} as const satisfies Limit;
