import { palette } from "../drawing/palette.js";
import type { Type } from "./wrap.js";

/** Millimetres of a point, the printer's inch divided by 72. */
const PT = 25.4 / 72;

const serif = { face: "serif", strong: "serif-bold" } as const;
const sans = { face: "sans", strong: "sans-bold" } as const;

/** The kinds of text of a printed document. */
export const type = {
  title: { size: 22 * PT, lead: 27 * PT, face: "serif-bold", strong: "serif-bold" },
  subtitle: { size: 11 * PT, lead: 15 * PT, ...serif, fill: palette.muted },
  part: { size: 15 * PT, lead: 19 * PT, face: "serif-bold", strong: "serif-bold" },
  item: { size: 11 * PT, lead: 14 * PT, face: "serif-bold", strong: "serif-bold" },
  body: { size: 10.5 * PT, lead: 15 * PT, ...serif },
  note: { size: 9 * PT, lead: 12.5 * PT, ...serif, fill: palette.muted },
  caption: { size: 8.5 * PT, lead: 11.5 * PT, ...sans, fill: palette.muted },
  cell: { size: 9 * PT, lead: 12 * PT, ...sans },
  largeCell: { size: 12 * PT, lead: 15.5 * PT, ...sans },
  heading: { size: 9 * PT, lead: 12 * PT, ...sans },
  largeHeading: { size: 12 * PT, lead: 15 * PT, ...sans },
  head: { size: 8.5 * PT, lead: 11 * PT, face: "sans-bold", strong: "sans-bold", fill: palette.muted },
  running: { size: 8 * PT, lead: 10 * PT, ...sans, fill: palette.muted },
} as const satisfies Readonly<Record<string, Type>>;
