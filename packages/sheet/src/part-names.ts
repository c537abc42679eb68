import type { Document, Part } from "@drawcord/page";

/** What a weaver needs, in the order in which she needs it. */
export const shortParts = [
  "cloth",
  "project",
  "warping",
  "threading",
  "ground",
  "chart",
  "lifts",
  "cautions",
] as const;

/** All parts that a sheet may have, in their order; each is usable alone. Those that come last are there when asked for. */
export const partNames = [
  ...shortParts,
  "corner",
  "sections",
  "sticks",
  "pick-up",
  "working",
  "findings",
  "glossary",
] as const;

/** What a part is called. */
export type PartName = (typeof partNames)[number];

/** One subject of a sheet. */
export interface SheetPart extends Part {
  /** What it tells of. */
  readonly name: PartName;
}

/** A recipe as a document to weave from. */
export interface Sheet extends Document {
  /** Its subjects in the order in which they are printed. */
  readonly parts: readonly SheetPart[];
}
