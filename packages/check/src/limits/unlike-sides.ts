import type { Limit } from "./limit.js";

/** How many times as long as on the other side of the cloth the longest float may be: twice (Drawcord's own). */
export const unlikeSidesLimit = {
  key: "unlike-sides",
  name: "unlikeSides",
  kind: "times",
  usual: 2,
  description:
    "How many times as long as on the other side of the cloth the longest float may be; usually 2.",
  examples: [4],
} as const satisfies Limit;
