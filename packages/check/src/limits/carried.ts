import type { Limit } from "./limit.js";

/** How far a weft that rests may be carried along the selvedge: 25 mm (Drawcord's own). */
export const carriedLimit = {
  key: "carried",
  name: "carried",
  kind: "size",
  things: "picks",
  usual: { mm: 25 },
  description:
    "How far a weft that rests is carried along the selvedge, in picks or as a length: what rests longer is cut off and begun anew; usually 25 mm.",
  examples: [16, "3 cm"],
} as const satisfies Limit;
