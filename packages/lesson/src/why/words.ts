import { printShafts } from "@drawcord/units";
import type { Crossing } from "./why.js";

/**
 * How a crossing comes about, a sentence a step, as a teacher says it at the loom.
 * @param crossing everything that decides it, as `whyCrossing` finds it
 * @example whyInWords(whyCrossing(draft, 5, 1)).at(-1) // "So end 5 lies over pick 1: the warp shows on the face."
 */
export function whyInWords(crossing: Crossing): readonly string[] {
  const { end, pick, pickOfRow, raised, row, shaft, step } = crossing;
  const side = raised ? "over" : "under";
  const shows = raised ? "the warp shows" : "the weft shows";
  return [
    `End ${end} is threaded on ground shaft ${shaft}. ${unitWords(crossing)}`,
    `Pick ${pick} is pick ${pickOfRow} of row ${row}, and step ${step} of the treadling: its treadle ${treadleWords(crossing)}.`,
    ...causeWords(crossing),
    `So end ${end} lies ${side} pick ${pick}: ${shows} on the face.`,
  ];
}

function unitWords({ hangsOn, unit }: Crossing): string {
  if (unit === undefined) return "It belongs to no unit, for it is an end of the selvedge.";
  if (hangsOn.length === 0) return `It is in unit ${unit}, which hangs on no pattern shaft: a static unit.`;
  return `It is in unit ${unit}, which hangs on pattern ${shafts(hangsOn)}.`;
}

function treadleWords({ raise, sink }: Crossing): string {
  const moves = [
    ...(raise.length > 0 ? [`raises ${shafts(raise)}`] : []),
    ...(sink.length > 0 ? [`sinks ${shafts(sink)}`] : []),
  ];
  return moves.length === 0 ? "moves no shaft" : moves.join(" and ");
}

function causeWords(crossing: Crossing): readonly string[] {
  const { cause, draws, drawn, row, shaft, unit } = crossing;
  if (cause === "raised")
    return [`Shaft ${shaft} is among those raised, so the pattern harness changes nothing here.`];
  if (cause === "sunk") {
    const although = drawn ? ", although the row draws the unit" : "";
    return [`Shaft ${shaft} is among those sunk: the long eye holds the end down${although}.`];
  }
  const row_ = draws.length === 0 ? `Row ${row} draws nothing` : `Row ${row} draws pattern ${shafts(draws)}`;
  const leaves = `Shaft ${shaft} is neither raised nor sunk: the long eye leaves the end where the pattern harness puts it.`;
  if (unit === undefined) return [leaves, "No unit carries it, so it stays down."];
  const drawsIt =
    cause === "drawn"
      ? "the unit is drawn, and its ends go up"
      : "the unit is not drawn, and its ends stay down";
  return [leaves, `${row_}: ${drawsIt}.`];
}

function shafts(set: readonly number[]): string {
  return `${set.length === 1 ? "shaft" : "shafts"} ${printShafts(set)}`;
}
