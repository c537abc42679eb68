import type { Limit } from "./limit.js";

/** How far a band's share of warp on the face may lie from the whole cloth's: 30 percentage points (Drawcord's own). */
export const faceShareLimit = {
  key: "face-share",
  name: "faceShare",
  kind: "share",
  usual: 30,
  description:
    "How far the share of warp on the face of a band may lie from the whole cloth's, in percentage points.",
  examples: ["30 %"],
} as const satisfies Limit;
