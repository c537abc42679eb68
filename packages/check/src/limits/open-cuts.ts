import type { Limit } from "./limit.js";

/** How much of a border of the figure may be open: nothing of it (common practice). */
export const openCutsLimit = {
  key: "open-cuts",
  name: "openCuts",
  kind: "share",
  usual: 0,
  description: "Share of the threads along a border of the figure that may slip, because they do not cut.",
  examples: ["2 %"],
} as const satisfies Limit;
