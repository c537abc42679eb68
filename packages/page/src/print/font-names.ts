import type { Script } from "../drawing/font-runs.js";
import type { Face } from "../drawing/shape.js";

/** The fonts of a printed document: the five faces, and one for each script that needs its own. */
export type FontName = Face | Exclude<Script, "latin">;

/** Every font, in the order in which they stand in a PDF. */
export const fontNames: readonly FontName[] = [
  "serif",
  "serif-bold",
  "serif-italic",
  "sans",
  "sans-bold",
  "hebrew",
  "arabic",
  "emoji",
];
