import type { Limit } from "./limit.js";

/** How large an area of one drawn state may be: no usual one. */
export const areaLimit = {
  key: "area",
  name: "area",
  kind: "size",
  things: "squares",
  apart: { drawn: "drawnArea", undrawn: "undrawnArea" },
  description:
    "How large an area of one drawn state may be, in squares (units x rows) or by its longer side: for all, or apart for `drawn` and `undrawn`.",
  examples: [400, "12 cm", { drawn: "12 cm", undrawn: 900 }],
} as const satisfies Limit;
