/**
 * A drawing is plain data: shapes in millimetres, x to the right and y downwards, later shapes over earlier ones. Every
 * format is a rendering of these few kinds.
 */

/** The five cuts of type a document is set in. */
export type Face = "serif" | "serif-bold" | "serif-italic" | "sans" | "sans-bold";

/** Where the cells of a path lie: the path counts in cells, and each cell is `sx` by `sy` mm from `x`, `y` on. */
export interface CellFrame {
  readonly x: number;
  readonly y: number;
  readonly sx: number;
  readonly sy: number;
}

/** Lines and areas of any form: cells of a chart, threads, rules. */
export interface PathShape {
  readonly kind: "path";
  /** Path data of SVG: `M`, `L`, `C`, `h`, `v`, `m`, `l`, `a` and `z` only. */
  readonly d: string;
  readonly fill?: string;
  readonly stroke?: string;
  /** Stroke width in mm; default 0.1. */
  readonly width?: number;
  readonly dash?: readonly number[];
  /** Default: the path is in mm as it stands. A path with a frame has no stroke. */
  readonly frame?: CellFrame;
  /** What the path stands for, so that it can be read back out of a picture: `raised`, `drawn`, `weft`. */
  readonly role?: string;
}

/** A rectangle, its sides along x and y. */
export interface RectShape {
  readonly kind: "rect";
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill?: string;
  readonly stroke?: string;
  readonly strokeWidth?: number;
  readonly dash?: readonly number[];
}

/** One line of text in one cut of type. */
export interface TextShape {
  readonly kind: "text";
  /** Where the text starts, ends or has its middle, and its baseline. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Size of the type in mm. */
  readonly size: number;
  readonly face: Face;
  readonly fill: string;
  /** Default `start`. */
  readonly anchor?: "start" | "middle" | "end";
  /** Whether it is a line of a paragraph that runs from right to left; default: by its own first letter. */
  readonly rtl?: boolean;
}

/** What a group is to those who have a PDF read to them, by the structure types of ISO 32000-1, 14.8.4. */
export type Tag =
  | { readonly role: "H1" | "H2" | "H3" | "P" | "Caption" | "Artifact" }
  | { readonly role: "TD" /** What a cell without text shows. */; readonly alt?: string }
  | { readonly role: "TH"; readonly scope: "Row" | "Column" }
  | { readonly role: "Figure" | "Formula"; readonly alt: string }
  | {
      readonly role: "Table" | "TR" /** Groups of one name, one after the other, are one. */;
      readonly id: string;
    };

/** Shapes placed together. */
export interface GroupShape {
  readonly kind: "group";
  readonly x: number;
  readonly y: number;
  /** Default 1. */
  readonly scale?: number;
  /** Default: what its groups are; lines and areas outside all tags are decoration. */
  readonly tag?: Tag;
  readonly shapes: readonly Shape[];
}

/** All that a drawing is made of. */
export type Shape = PathShape | RectShape | TextShape | GroupShape;

/** Shapes on a document of their own, its size in mm. */
export interface Drawing {
  /** Width, in px. */
  readonly width: number;
  /** Height, in px. */
  readonly height: number;
  readonly shapes: readonly Shape[];
}
