/** A pick in words, as they are read aloud and as a screen reader has them. */
import type { ShaftSet } from "@drawcord/ground";
import { printShafts } from "@drawcord/units";
import type { FollowPlan } from "../plan/types.js";
import { turnsOf, type WarpPlace } from "./place.js";
import { type PickStep, stepAt } from "./step.js";

/**
 * Handles with each run of neighbours apart: `["3", "34–37"]`.
 * @example handleRuns([3, 34, 35, 36]) // ["3", "34–36"]
 */
export function handleRuns(handles: ShaftSet): readonly string[] {
  return handles.length === 0 ? [] : printShafts(handles).replaceAll("-", "–").split(" ");
}

/**
 * What is to be done at a place, as sentences.
 * @param plan the plan that is woven
 * @param place where the weaver is
 * @example placeInWords(plan, { turn: 0, woven: 0 }) // "Row 1. Draw 1, 3. Treadle 1, from the left."
 */
export function placeInWords(plan: FollowPlan, place: WarpPlace): string {
  const step = stepAt(plan, place);
  if (step === undefined) {
    const last = place.turn === turnsOf(plan).length - 1;
    return last ? "The last pick is woven." : "This piece is woven. Let go all handles.";
  }
  const begins = step.out ? step.pickOfRow === step.picksOfRow - 1 : step.pickOfRow === 0;
  return [
    ...(begins ? [`${step.out ? "Take out row" : "Row"} ${step.row + 1}.`] : []),
    ...handleWords(step, begins),
    `${treadleWords(step)}, ${weftWords(plan, step)}${step.out ? "to" : "from"} the ${step.from}.`,
  ].join(" ");
}

function handleWords({ draw, letGo, lift }: PickStep, begins: boolean): readonly string[] {
  if (!begins) return [];
  const said = (handles: ShaftSet) => handleRuns(handles).join(", ").replaceAll("–", " to ");
  if (draw.length + letGo.length === 0) {
    return [lift.handles.length === 0 ? "Draw nothing." : "Hold as before."];
  }
  return [
    ...(draw.length > 0 ? [`Draw ${said(draw)}.`] : []),
    ...(letGo.length > 0 ? [`Let go ${lift.handles.length === 0 ? "all" : said(letGo)}.`] : []),
  ];
}

function treadleWords({ treadle }: PickStep): string {
  return treadle === 0 ? "No treadle" : `Treadle ${treadle}`;
}

function weftWords({ wefts }: FollowPlan, { weft }: PickStep): string {
  return wefts.length === 1 ? "" : `${wefts[weft]!.name}, `;
}
