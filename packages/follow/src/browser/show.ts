/** Puts a place on the page. */

import { heavyWords } from "../place/heavy.js";
import { type Turn, turnsOf, type WarpPlace } from "../place/place.js";
import { type PickStep, stepAt } from "../place/step.js";
import { handleRuns, placeInWords } from "../place/words.js";
import type { FollowPlan } from "../plan/types.js";
import { byId, made, say } from "./dom.js";
import { picksOf, treadlesPicture } from "./feet.js";
import { fellPicture } from "./fell.js";
import { handlesPicture } from "./handles.js";
import type { Settings } from "./settings.js";

/** Shows a place: the pick to weave, or the end of a piece. */
export function show(plan: FollowPlan, place: WarpPlace, settings: Settings): void {
  const turns = turnsOf(plan);
  const turn = turns[place.turn]!;
  const step = stepAt(plan, place);
  document.body.dataset["doing"] = step === undefined ? "done" : step.out ? "out" : "weave";
  say("piece", pieceWords(turns, place.turn));
  showFar(plan, turn, place, settings);
  if (step === undefined) showEnd(turn, place.turn === turns.length - 1);
  else showStep(plan, turn, step, settings);
  say("next", nextWords(plan, place));
  say("said", placeInWords(plan, place));
  byId("fell").replaceChildren(fellPicture(plan, turn.piece, step?.row ?? turn.piece.rows.length - 1));
}

/** Which piece is woven: its name, and which of how many. */
export function pieceWords(turns: readonly Turn[], at: number): string {
  const { piece, time } = turns[at]!;
  const which = turns.length === 1 ? "" : `piece ${at + 1} of ${turns.length}`;
  const named =
    piece.name === "" ? "" : piece.count === 1 ? piece.name : `${piece.name} ${time} of ${piece.count}`;
  return [named, which].filter((words) => words !== "").join(", ");
}

function showStep(plan: FollowPlan, { piece }: Turn, step: PickStep, settings: Settings): void {
  const { block, row } = step;
  say("row-word", step.out ? "Take out row" : "Row");
  say("row", `${row + 1}`);
  say("row-of", `of ${piece.rows.length}`);
  say("block", block === undefined ? "" : blockWords(block, row - block.start));
  showMoves(step);
  byId("handles").replaceChildren(
    ...(plan.handles === 0 ? [] : [handlesPicture(step, plan.handles, settings.first)]),
  );
  say("heavy", heavyWords(plan, step.lift));
  say("treadle", step.treadle === 0 ? "No treadle" : `Treadle ${step.treadle}`);
  showWeft(plan, step);
  byId("treadles").replaceChildren(
    ...(plan.treadles.length === 0 ? [] : [treadlesPicture(plan, step.treadle)]),
  );
  const picks = byId("picks");
  picks.setAttribute("aria-label", `Picks of the row, pick ${step.pickOfRow + 1} of ${step.picksOfRow} now`);
  picks.replaceChildren(...picksOf(plan, piece, step));
}

function blockWords(
  { name, rows, time, times }: { name: string; rows: number; time: number; times: number },
  row: number,
): string {
  const repeat = times === 1 ? "" : `, ${time} of ${times}`;
  return `${name}${repeat}, its row ${row + 1} of ${rows}`;
}

/** What the hands do: draw and let go where a row begins, hold at its other picks. */
function showMoves({ draw, letGo, lift, out, pickOfRow, picksOfRow }: PickStep): void {
  const begins = out ? pickOfRow === picksOfRow - 1 : pickOfRow === 0;
  const moves = begins && draw.length + letGo.length > 0;
  const lines: readonly (readonly [name: string, handles: readonly number[], kind: string])[] = moves
    ? [
        ["Draw", draw, "draw"],
        ["Let go", letGo, "let-go"],
      ]
    : [["Hold", lift.handles, "hold"]];
  byId("moves").replaceChildren(
    ...lines.map(([name, handles, kind]) => {
      const runs = handleRuns(handles).flatMap((run, i) => [
        ...(i === 0 ? [] : [document.createTextNode(" ")]),
        made("span", run, "run"),
      ]);
      const nothing = kind === "hold" ? "none" : "–";
      return made("div", [made("dt", name), made("dd", runs.length === 0 ? nothing : runs)], kind);
    }),
  );
}

function showWeft(plan: FollowPlan, { from, out, weft }: PickStep): void {
  const { colour, letter, name } = plan.wefts[weft]!;
  const arrow = (from === "left") === !out ? "→" : "←";
  const swatch = made("span", letter, "swatch");
  swatch.setAttribute("aria-hidden", "true");
  if (colour !== undefined) swatch.style.setProperty("--thread", colour);
  const way = made("span", arrow, "way");
  way.setAttribute("aria-hidden", "true");
  byId("weft").replaceChildren(
    swatch,
    document.createTextNode(` ${name} ${out ? "out to" : "from"} the ${from} `),
    way,
  );
}

/** The end of a piece. */
function showEnd({ piece }: Turn, last: boolean): void {
  say("row-word", last ? "The last row is woven" : "The piece is woven");
  say("row", "");
  say("row-of", `${piece.rows.length} rows`);
  say("block", "");
  say("heavy", "");
  say("treadle", "Let go all handles");
  for (const id of ["moves", "handles", "weft", "treadles", "picks"]) byId(id).replaceChildren();
}

/** What comes after the row that is woven. */
function nextWords(plan: FollowPlan, place: WarpPlace): string {
  const turns = turnsOf(plan);
  const { piece } = turns[place.turn]!;
  const step = stepAt(plan, place);
  if (step === undefined) {
    return place.turn + 1 < turns.length
      ? `Then ${pieceWords(turns, place.turn + 1)}`
      : "Nothing comes after it.";
  }
  if (step.out)
    return `Until row ${stepAt(plan, { ...place, woven: (place.until ?? 0) + 1 })!.row + 1} is out`;
  const first = step.pickOfPiece - step.pickOfRow + step.picksOfRow;
  const next = stepAt(plan, { turn: place.turn, woven: first });
  if (next === undefined) return `Row ${step.row + 1} is the last of the piece`;
  const begins =
    next.block !== undefined && next.block.start === next.row ? ` (${next.block.name} begins)` : "";
  const moves = [
    ...(next.draw.length > 0 ? [`draw ${handleRuns(next.draw).join(" ")}`] : []),
    ...(next.letGo.length > 0 ? [`let go ${handleRuns(next.letGo).join(" ")}`] : []),
  ];
  const then = moves.length === 0 ? "the same handles" : moves.join(", ");
  return `Next, row ${next.row + 1} of ${piece.rows.length}${begins}: ${then}`;
}

function showFar(plan: FollowPlan, turn: Turn, { woven }: WarpPlace, { lengths }: Settings): void {
  const { picks, piece } = turn;
  const progress = byId<HTMLProgressElement>("far");
  progress.max = picks;
  progress.value = woven;
  let rows = 0;
  for (let sum = 0; rows < piece.picks.length && sum + piece.picks[rows]! <= woven; rows++) {
    sum += piece.picks[rows]!;
  }
  say(
    "far-text",
    [
      `${rows} of ${piece.rows.length} rows`,
      `${woven} of ${picks} picks`,
      ...lengthWords(plan, woven, picks, lengths),
      `${Math.floor((100 * woven) / picks)} %`,
    ].join(" · "),
  );
}

/** How long the cloth is by now, under tension on the loom. */
function lengthWords(
  { picksPerCm }: FollowPlan,
  woven: number,
  picks: number,
  lengths: "cm" | "in",
): readonly string[] {
  if (picksPerCm === undefined) return [];
  const long = (count: number) => (count / picksPerCm / (lengths === "in" ? 2.54 : 1)).toFixed(1);
  return [`${long(woven)} of ${long(picks)} ${lengths}`];
}
