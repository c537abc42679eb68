/**
 * A drawing is plain data: shapes in millimetres, x to the right and y downwards, later shapes over earlier ones. Every
 * format is a rendering of these few kinds.
 */

/** The five cuts of type a document is set in. */
export type Face = "serif" | "serif-bold" | "serif-italic" | "sans" | "sans-bold";

/** Where the cells of a path lie: the path counts in cells, and each cell is `sx` by `sy` mm from `x`, `y` on. */
export interface CellFrame {
  /** The left edge of the first cell, in mm. */
  readonly x: number;
  /** The top edge of the first cell, in mm. */
  readonly y: number;
  /** The width of a cell, in mm. */
  readonly sx: number;
  /** The height of a cell, in mm. */
  readonly sy: number;
}

/** Lines and areas of any form: cells of a chart, threads, rules. */
export interface PathShape {
  /** Which shape it is. */
  readonly kind: "path";
  /** Path data of SVG: `M`, `L`, `C`, `h`, `v`, `m`, `l`, `a` and `z` only. */
  readonly d: string;
  /** The colour inside, as `#rrggbb`; default none. */
  readonly fill?: string;
  /** The colour of the line, as `#rrggbb`; default none. */
  readonly stroke?: string;
  /** Stroke width in mm; default 0.1. */
  readonly width?: number;
  /** Lengths of strokes and gaps in mm, in turn; default one stroke. */
  readonly dash?: readonly number[];
  /** Default: the path is in mm as it stands. A path with a frame has no stroke. */
  readonly frame?: CellFrame;
  /** What the path stands for, so that it can be read back out of a picture: `raised`, `drawn`, `weft`. */
  readonly role?: string;
}

/** A rectangle, its sides along x and y. */
export interface RectShape {
  /** Which shape it is. */
  readonly kind: "rect";
  /** Its left edge, in mm. */
  readonly x: number;
  /** Its top edge, in mm. */
  readonly y: number;
  /** Its width, in mm. */
  readonly width: number;
  /** Its height, in mm. */
  readonly height: number;
  /** The colour inside, as `#rrggbb`; default none. */
  readonly fill?: string;
  /** The colour of the line, as `#rrggbb`; default none. */
  readonly stroke?: string;
  /** Stroke width in mm; default 0.1. */
  readonly strokeWidth?: number;
  /** Lengths of strokes and gaps in mm, in turn; default one stroke. */
  readonly dash?: readonly number[];
}

/** One line of text in one cut of type. */
export interface TextShape {
  /** Which shape it is. */
  readonly kind: "text";
  /** Where the text starts, ends or has its middle, and its baseline. */
  readonly x: number;
  /** Its baseline, in mm from the top. */
  readonly y: number;
  /** The line, without line ends. */
  readonly text: string;
  /** Size of the type in mm. */
  readonly size: number;
  /** The cut of type. */
  readonly face: Face;
  /** The colour, as `#rrggbb`. */
  readonly fill: string;
  /** Default `start`. */
  readonly anchor?: "start" | "middle" | "end";
  /** Whether it is a line of a paragraph that runs from right to left; default: by its own first letter. */
  readonly rtl?: boolean;
}

/** What a group is to those who have a PDF read to them, by the structure types of ISO 32000-1, 14.8.4. */
export type Tag =
  | {
      /** Which structure it is. */
      readonly role: "H1" | "H2" | "H3" | "P" | "Caption" | "Artifact";
    }
  | {
      /** Which structure it is. */
      readonly role: "TD" /** What a cell without text shows. */;
      /** What a cell without text shows. */
      readonly alt?: string;
    }
  | {
      /** Which structure it is. */
      readonly role: "TH";
      /** What it is the head of. */
      readonly scope: "Row" | "Column";
    }
  | {
      /** Which structure it is. */
      readonly role: "Figure" | "Formula";
      /** What it shows, for those who do not see it. */
      readonly alt: string;
    }
  | {
      /** Which structure it is. */
      readonly role: "Table" | "TR" /** Groups of one name, one after the other, are one. */;
      /** Groups of one name, one after the other, are one. */
      readonly id: string;
    };

/** Shapes placed together. */
export interface GroupShape {
  /** Which shape it is. */
  readonly kind: "group";
  /** By how much it is moved to the right, in mm. */
  readonly x: number;
  /** By how much it is moved down, in mm. */
  readonly y: number;
  /** Default 1. */
  readonly scale?: number;
  /** Default: what its groups are; lines and areas outside all tags are decoration. */
  readonly tag?: Tag;
  /** What it is of; those that come later lie on top. */
  readonly shapes: readonly Shape[];
}

/** All that a drawing is made of. */
export type Shape = PathShape | RectShape | TextShape | GroupShape;

/** Shapes on a document of their own, its size in mm. */
export interface Drawing {
  /** Width, in mm. */
  readonly width: number;
  /** Height, in mm. */
  readonly height: number;
  /** What it is of; those that come later lie on top. */
  readonly shapes: readonly Shape[];
}
