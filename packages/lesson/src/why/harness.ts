/** The way of one end through both harnesses, seen from the side of the loom. */
import { type Drawing, palette, type Shape } from "@drawcord/page";
import type { CrossingCause } from "./cause.js";

/** Heights in mm: of an end at rest, drawn or raised, and sunk; less is higher. */
const REST = 17;
const HIGH = 10;
const LOW = 22;

/** Places along the end in mm: the mail of its leash, the long eye of its heddle, the pick, and the cloth. */
const MAIL = 22;
const EYE = 44;
const PICK = 60;
const FELL = 74;

/** The height of the long eye on its shaft: it leaves an end where the pattern harness puts it, unless the shaft moves. */
const EYE_HIGH = 9;

/** What decides the height of one end. */
export interface Heights {
  readonly cause: CrossingCause;
  /** Whether the pattern harness draws its unit, which shows behind a treadle that has the last word. */
  readonly drawn: boolean;
  readonly shaft: number;
  readonly unit?: number;
}

/**
 * One end from the back of the loom to the cloth: the mail that the pattern harness draws or leaves, the long eye that the
 * treadle raises, sinks or leaves, and the pick that passes above or below.
 * @example harnessDrawing({ cause: "sunk", drawn: true, shaft: 2, unit: 1 }).width // 80
 */
export function harnessDrawing({ cause, drawn, shaft, unit }: Heights): Drawing {
  const mail = drawn ? HIGH : REST;
  const eye = { raised: HIGH, sunk: LOW, drawn: HIGH, left: REST }[cause];
  const over = cause === "raised" || cause === "drawn";
  const slot = {
    raised: HIGH - EYE_HIGH + 0.8,
    sunk: LOW - 0.8,
    drawn: REST - EYE_HIGH + 1,
    left: REST - EYE_HIGH + 1,
  }[cause];
  const moves = { raised: "is raised", sunk: "is sunk", drawn: "stays", left: "stays" }[cause];
  const carried = unit === undefined ? "no unit" : `unit ${unit}`;
  const shows = unit === undefined ? "carries it" : drawn ? "is drawn" : "is not drawn";
  return {
    width: 80,
    height: 40,
    shapes: [
      upright(MAIL, 2, mail - 1.6),
      upright(MAIL, mail + 1.6, 29),
      ring(MAIL, mail),
      upright(EYE, 0, slot),
      upright(EYE, slot + EYE_HIGH, 34),
      {
        kind: "rect",
        x: EYE - 1.4,
        y: slot,
        width: 2.8,
        height: EYE_HIGH,
        stroke: palette.ink,
        strokeWidth: 0.4,
      },
      {
        kind: "path",
        d: `M1 ${REST}L${MAIL} ${mail}L${EYE} ${eye}L${FELL} ${REST}L79 ${REST}`,
        stroke: palette.accent,
        width: 1,
      },
      { kind: "path", d: `M${FELL} ${REST - 3}v6`, stroke: palette.ink, width: 0.8 },
      dot(PICK, { raised: 16.4, drawn: 16.4, sunk: 16.8, left: 14.4 }[cause]),
      ...label(MAIL, 33, [carried, shows]),
      ...label(EYE, 38, [`shaft ${shaft} ${moves}`]),
      ...label(PICK + 4, 33, [over ? "end over pick" : "end under pick"]),
    ],
  };
}

function upright(x: number, from: number, to: number): Shape {
  return { kind: "path", d: `M${x} ${from}L${x} ${to}`, stroke: palette.muted, width: 0.35 };
}

function ring(x: number, y: number): Shape {
  return {
    kind: "path",
    d: `M${x - 1.6} ${y}a1.6 1.6 0 1 0 3.2 0a1.6 1.6 0 1 0 -3.2 0z`,
    stroke: palette.ink,
    width: 0.4,
  };
}

function dot(x: number, y: number): Shape {
  return {
    kind: "path",
    d: `M${x - 1.3} ${y}a1.3 1.3 0 1 0 2.6 0a1.3 1.3 0 1 0 -2.6 0z`,
    fill: palette.note,
  };
}

function label(x: number, y: number, lines: readonly string[]): Shape[] {
  return lines.map((text, i) => ({
    kind: "text",
    x,
    y: y + i * 3.6,
    text,
    size: 3,
    face: "sans",
    fill: palette.ink,
    anchor: "middle",
  }));
}
