/**
 * The one model behind every format. A document is a list of parts, a part is a list of blocks; HTML, SVG, PDF, PNG and
 * Markdown are renderings of it and add nothing.
 */
import type { Drawing } from "../drawing/shape.js";
import type { TypesetFormula } from "../formula/types.js";

/** A stretch of text. */
export interface Words {
  /** The letters as they stand. */
  readonly text: string;
  /** Whether it stands out, as in bold type; default false. */
  readonly strong?: boolean;
  /** Set small and below the line, as the index of a letter. */
  readonly low?: boolean;
}

/** Running text: plain, or in stretches. */
export type Text = string | readonly Words[];

/** A paragraph of running text. */
export interface Paragraph {
  /** Which block it is. */
  readonly kind: "paragraph";
  /** What it says. */
  readonly text: Text;
  /** `lead` opens a part, `note` is small, `caution` is set apart, `heading` stands over what follows it. Default: plain. */
  readonly tone?: "lead" | "note" | "caution" | "heading";
}

/** A column of a table. */
export interface Column {
  /** What its head says. */
  readonly title: string;
  /**
   * `number` is set to the right, `tick` is a box to tick, `boxes` is a box to tick around each word of its text (`·` keeps the place of one), `head`
   * names its row (so does `boxes` where there is no `head`), `swatch` is a patch of the colour that its text gives as
   * `#rrggbb`. Default `text`.
   */
  readonly kind?: "text" | "number" | "tick" | "boxes" | "head" | "swatch";
}

/** A list that may be as long as it likes; its head is repeated on every page. */
export interface Table {
  /** Which block it is. */
  readonly kind: "table";
  /** A name to find it by, unique in the document. */
  readonly id: string;
  /** What it shows. */
  readonly caption: string;
  /** Its columns, left to right. */
  readonly columns: readonly Column[];
  /** As many texts in each as there are columns; that of a `tick` column is the number of its boxes, empty for one. */
  readonly rows: readonly (readonly Text[])[];
  /** Whether short tables may stand in several columns on a page; default false. */
  readonly narrow?: boolean;
  /** Whether it is read at arm's length: 12 points on paper; default false. */
  readonly large?: boolean;
  /** Whether the first row stands at the foot and the next above it, as cloth is woven; default false. */
  readonly rising?: boolean;
  /** How many rows make a band, tinted in turn with the next, so that an eye keeps its row; default none. */
  readonly band?: number;
  /** Headings within the table, each before a row, set off by a thick rule; by row, from 0. Default none. */
  readonly heads?: readonly TableHead[];
}

/** A heading within a table. */
export interface TableHead {
  /** The row that it stands before, from 0. */
  readonly row: number;
  /** What it says. */
  readonly text: Text;
}

/** A drawing with what it shows in words. */
export interface Picture {
  /** A name to find it by, unique in the document, fit for a file's name. */
  readonly id: string;
  /** Empty where what stands before it says enough. */
  readonly caption: string;
  /** What it shows, for those who do not see it. */
  readonly alt: string;
  /** What is drawn, in mm. */
  readonly drawing: Drawing;
}

/** Pictures that stand side by side where they fit. */
export interface Pictures {
  /** Which block it is. */
  readonly kind: "pictures";
  /** The pictures, left to right. */
  readonly pictures: readonly Picture[];
}

/** A number worked out: formula, formula with its numbers, result, and where the formula is from. */
export interface WorkingBlock {
  /** Which block it is. */
  readonly kind: "working";
  /** A name to find it by, unique in the document. */
  readonly id: string;
  /** What is worked out. */
  readonly title: string;
  /** The formula with its letters. */
  readonly formula: TypesetFormula;
  /** The formula with its numbers. */
  readonly substitution: TypesetFormula;
  /** With its unit, as printed elsewhere on the document. */
  readonly result: string;
  /** What the letters stand for, one text a letter; each with its value. */
  readonly symbols: readonly Text[];
  /** Where the formula is from. */
  readonly source: string;
}

/** What a part is made of. */
export type Block = Paragraph | Table | Pictures | WorkingBlock;

/** One subject of a document, usable alone. */
export interface Part {
  /** A name to find it by, unique in the document, fit for a file's name. */
  readonly name: string;
  /** What it is called. */
  readonly title: string;
  /** What it holds, in its order. */
  readonly blocks: readonly Block[];
}

/** Several documents bound as one file, each from a page of its own on; its names are unlike those of the others. */
export type Bound = readonly [Document, ...Document[]];

/** Parts under a title, whatever they are printed as. */
export interface Document {
  /** What it is called. */
  readonly title: string;
  /** One line under the title. */
  readonly subtitle: string;
  /** Its parts, in their order. */
  readonly parts: readonly Part[];
}
