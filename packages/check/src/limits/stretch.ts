import type { Limit } from "./limit.js";

/** How long a unit may stay drawn, or undrawn: no usual one. */
export const stretchLimit = {
  key: "stretch",
  name: "stretch",
  kind: "size",
  things: "picks",
  description: "How long a unit may stay drawn, or undrawn: in picks or as a length.",
  examples: [200, "20 cm"],
} as const satisfies Limit;
