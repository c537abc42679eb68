import type { Limit } from "./limit.js";

/** Up to how many squares a thin area that stands alone is reported: 3 (Drawcord's own). */
export const thinAreaLimit = {
  key: "thin-area",
  name: "thinArea",
  kind: "count",
  usual: 3,
  description:
    "Up to how many squares an area that stands alone, one unit wide or one row high, is reported; usually 3.",
  examples: [1],
} as const satisfies Limit;
