import type { Limit } from "./limit.js";

/** The longest float allowed: 6 mm (common practice). */
export const floatLimit = {
  key: "float",
  name: "float",
  kind: "size",
  things: "threads",
  apart: { warp: "warpFloat", weft: "weftFloat" },
  byWeft: "floatOfWeft",
  usual: { mm: 6 },
  description:
    "The longest float allowed, in threads or as a length at the cloth's sett: for all, or apart for `warp`, `weft` and any weft, or yarn of the picks, by its name.",
  examples: ["6 mm", 9, { warp: 7, weft: "6 mm", pattern: 11 }],
} as const satisfies Limit;
