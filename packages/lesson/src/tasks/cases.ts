/** How squares of a piece of cloth come about, one for each of the four cases, as a teacher draws them on the board. */
import { listed } from "@drawcord/base";
import type { Block, Picture } from "@drawcord/page";
import { type CrossingCause, causeOf } from "../why/cause.js";
import { harnessDrawing } from "../why/harness.js";
import type { FigureCorner } from "./corner.js";

const causes: readonly CrossingCause[] = ["raised", "sunk", "drawn", "left"];

/** A crossing of a piece, and what decides it. */
interface CaseOf {
  readonly cause: CrossingCause;
  /** End and pick of the piece, from 1. */
  readonly end: number;
  readonly pick: number;
  readonly shaft: number;
  readonly unit: number;
  readonly row: number;
  readonly drawn: boolean;
}

/** The first crossing of each case that a piece has, picks from the bottom, ends from the left. */
function casesOf({ drawn, rows, shafts, treadles, units }: FigureCorner): readonly CaseOf[] {
  const all = rows.flatMap((row, pick) =>
    shafts.map((shaft, end): CaseOf => {
      const unit = units[end]!;
      const isDrawn = drawn.find((one) => one.row === row)!.units.includes(unit);
      const { raise, sink } = treadles[pick]!;
      const cause = causeOf(raise.includes(shaft), sink.includes(shaft), isDrawn);
      return { cause, end: end + 1, pick: pick + 1, shaft, unit, row, drawn: isDrawn };
    }),
  );
  return causes.flatMap((cause) => all.find((one) => one.cause === cause) ?? []);
}

/** The cases with their pictures. */
export function casesOnBoard(corner: FigureCorner): readonly Block[] {
  const pictures = casesOf(corner).map((one): Picture => {
    const { cause, drawn, shaft, unit } = one;
    return {
      id: `case-${cause}`,
      caption: sayCase(corner, one),
      alt: `An end that is ${cause}, from the back of the loom to the cloth.`,
      drawing: harnessDrawing({ cause, drawn, shaft, unit }),
    };
  });
  return [
    { kind: "paragraph", tone: "heading", text: "How a square comes about" },
    {
      kind: "paragraph",
      text: "Ask three things of each square, in this order. Does the treadle raise the shaft of the end? Then the square is filled. Does it sink the shaft? Then it is empty. If neither: does the row draw the unit? Then it is filled, and else empty.",
    },
    { kind: "pictures", pictures },
  ];
}

function sayCase({ treadles }: FigureCorner, { cause, end, pick, row, shaft, unit }: CaseOf): string {
  const { raise, sink } = treadles[pick - 1]!;
  const at = `End ${end} of the piece, pick ${pick}:`;
  if (cause === "raised") return `${at} its shaft ${shaft} is raised. Filled.`;
  if (cause === "sunk") return `${at} its shaft ${shaft} is sunk. Empty.`;
  const moved = [...raise, ...sink].sort((a, b) => a - b);
  const alone =
    moved.length === 0 ? "the treadle moves no shaft" : `the treadle moves ${listed(moved.map(String))} only`;
  const told =
    cause === "drawn"
      ? `row ${row} draws unit ${unit}. Filled.`
      : `row ${row} does not draw unit ${unit}. Empty.`;
  return `${at} shaft ${shaft}, ${alone}; ${told}`;
}
