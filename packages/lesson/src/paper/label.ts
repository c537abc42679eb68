import type { Recipe } from "@drawcord/files";
import { type Document, type Drawing, palette, type Shape } from "@drawcord/page";
import { cuttingFrame } from "./cutting-frame.js";

/** What the weaver states on the label; what she leaves out is a line to write on. */
export interface LabelOptions {
  /** Default: the fibres of the recipe's yarns. */
  readonly fibre?: string;
  /** The width as measured, with its unit. */
  readonly width?: string;
  /** The length as measured, with its unit. */
  readonly length?: string;
  /** How the piece is to be washed and dried, as a sample of it was. */
  readonly care?: string;
  /** Who wove it. */
  readonly weaver?: string;
}

const WIDE = 80;
const HIGH = 52;

/**
 * Labels for the finished piece, six on a page: name, fibre, width, length and care as the weaver states them. Nothing is
 * worked out: a label says what was measured and washed.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param options what is stated
 * @example pieceLabel(recipe, { care: "wash at 40 °C" }).parts[0].name // "label"
 */
export function pieceLabel({ title, yarns }: Recipe, options: LabelOptions = {}): Document {
  const named = title ?? "A cloth without a name";
  const fibres = [...new Set(yarns.flatMap(({ fibre }) => (fibre === undefined ? [] : [fibre])))];
  const { care, fibre = fibres.join(", "), length, weaver, width } = options;
  const stated = [
    ["fibre", fibre],
    ["width", width],
    ["length", length],
    ["care", care],
    ["woven by", weaver],
  ] as const;
  const said = stated.map(([what, text]) => `${what}: ${text || "to be written"}`).join("; ");
  return {
    title: `${named}: label`,
    subtitle: "cut along the frame; state what you measured, and what you washed a sample with",
    parts: [
      {
        name: "label",
        title: "For the finished piece",
        blocks: [
          {
            kind: "pictures",
            pictures: Array.from({ length: 6 }, (_, i) => ({
              id: `label-${i + 1}`,
              caption: "",
              alt: `A label. ${named}. ${said}.`,
              drawing: labelDrawing(named, stated),
            })),
          },
        ],
      },
    ],
  };
}

function labelDrawing(title: string, stated: readonly (readonly [string, string | undefined])[]): Drawing {
  const lines = stated.flatMap(([what, text], i): Shape[] => {
    const y = 19 + i * 7;
    const filled: Shape =
      text === undefined || text === ""
        ? { kind: "path", d: `M24 ${y + 0.6}h${WIDE - 29}`, stroke: palette.rule, width: 0.2 }
        : { kind: "text", x: 24, y, text: shortened(text, 34), size: 3.2, face: "serif", fill: palette.ink };
    return [{ kind: "text", x: 5, y, text: what, size: 3, face: "sans", fill: palette.muted }, filled];
  });
  return {
    width: WIDE,
    height: HIGH,
    shapes: [
      cuttingFrame(WIDE, HIGH, { stroke: palette.rule, strokeWidth: 0.2 }),
      {
        kind: "text",
        x: 5,
        y: 9,
        text: shortened(title, 34),
        size: 4.2,
        face: "serif-bold",
        fill: palette.ink,
      },
      ...lines,
    ],
  };
}

function shortened(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}
