import type { Document, Part } from "@drawcord/page";

/** The parts of a sheet in their order; each is usable alone. */
export const partNames = [
  "cloth",
  "cautions",
  "chart",
  "lifts",
  "threading",
  "ground",
  "corner",
  "project",
  "working",
  "findings",
] as const;

/** What a part is called. */
export type PartName = (typeof partNames)[number];

/** One subject of a sheet. */
export interface SheetPart extends Part {
  readonly name: PartName;
}

/** A recipe as a document to weave from. */
export interface Sheet extends Document {
  readonly parts: readonly SheetPart[];
}
