import { type Document, type Drawing, palette, type Shape } from "@drawcord/page";
import { cuttingFrame } from "./cutting-frame.js";

/** The stretch that is wrapped, in mm. */
const WRAPPED = 50;
const WIDE = 120;
const HIGH = 70;

/**
 * A card to wrap a yarn about: notches 5 cm apart, lines for what is counted, and how a sett is worked out from it (J. T.
 * Taylor, *Cotton Weaving and Designing*, 6th ed. 1909, p. 338).
 * @param yarn what stands on the card: name, count and fibre as they are written
 * @example wrapCard("warp, Nm 22/2 cottolin").title // "Wrap card"
 */
export function wrapCard(yarn: string): Document {
  return {
    title: "Wrap card",
    subtitle: yarn,
    parts: [
      {
        name: "wrap-card",
        title: "Cut it out and wrap",
        blocks: [
          {
            kind: "paragraph",
            tone: "lead",
            text: "Cut the card out along its frame, and cut the two notches. Wrap the yarn from notch to notch, turn beside turn, without pressing and without a gap, and count the turns.",
          },
          {
            kind: "pictures",
            pictures: [
              {
                id: "wrap-card-card",
                caption: "Printed at its full size the notches are 5 cm apart: measure them first",
                alt: "A card with two notches 5 cm apart along its upper edge and lines to write on.",
                drawing: card(yarn),
              },
            ],
          },
          {
            kind: "table",
            id: "wrap-card-setts",
            caption: "From wraps to setts; take 75 to 85 % of the closest for cloth that drapes",
            columns: [{ title: "Weave", kind: "head" }, { title: "Closest sett" }, { title: "Yours" }],
            rows: [
              ["plain weave", "wraps in a cm × 2 ÷ (2 + 2)", "______________"],
              ["2/2 twill, broken twill", "wraps in a cm × 4 ÷ (4 + 2)", "______________"],
              ["satin of 5 ends", "wraps in a cm × 5 ÷ (5 + 2)", "______________"],
              ["satin of 8 ends", "wraps in a cm × 8 ÷ (8 + 2)", "______________"],
            ],
          },
        ],
      },
    ],
  };
}

function card(yarn: string): Drawing {
  const left = (WIDE - WRAPPED) / 2;
  const notch = (x: number): Shape => ({
    kind: "path",
    d: `M${x} 0v6`,
    stroke: palette.ink,
    width: 0.6,
  });
  const line = (y: number, label: string): Shape[] => [
    { kind: "text", x: 6, y, text: label, size: 3.4, face: "sans", fill: palette.ink },
    { kind: "path", d: `M48 ${y + 0.8}h${WIDE - 54}`, stroke: palette.rule, width: 0.2 },
  ];
  return {
    width: WIDE,
    height: HIGH,
    shapes: [
      cuttingFrame(WIDE, HIGH, { stroke: palette.ink, strokeWidth: 0.3 }),
      notch(left),
      notch(left + WRAPPED),
      { kind: "path", d: `M${left} 9h${WRAPPED}`, stroke: palette.muted, width: 0.2 },
      {
        kind: "text",
        x: WIDE / 2,
        y: 13,
        text: "5 cm",
        size: 3,
        face: "sans",
        fill: palette.ink,
        anchor: "middle",
      },
      { kind: "text", x: 6, y: 25, text: yarn, size: 4, face: "sans-bold", fill: palette.ink },
      ...line(37, "turns in 5 cm"),
      ...line(47, "wraps in a cm = turns ÷ 5"),
      ...line(57, "maker, lot, date"),
    ],
  };
}
