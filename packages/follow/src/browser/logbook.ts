/** The log as a table, and the slips that are marked. */
import type { Kept } from "../place/kept.js";
import { rowOf, turnsOf } from "../place/place.js";
import type { FollowPlan } from "../plan/types.js";
import { byId, made, say } from "./dom.js";
import { pieceWords } from "./show.js";

/** Fills the window of the log. */
export function showLog(plan: FollowPlan, kept: Kept): void {
  const turns = turnsOf(plan);
  say("log-title", `${plan.title}: who wove what`);
  say("log-where", "The log is kept on this device alone. Nothing of it is sent anywhere.");
  const rows = kept.log.map(({ began, did, ended, from, to, turn, weaver }) =>
    made("tr", [
      made("td", `${timeWords(began)} to ${hourWords(ended)}`),
      made("td", weaver === "" ? "no name" : weaver),
      made("td", [did, pieceWords(turns, turn), rowsWords(plan, turn, from, to)].filter(Boolean).join(", ")),
      made("td", `${Math.abs(to - from)}`, "number"),
    ]),
  );
  byId("log-rows").replaceChildren(
    ...(rows.length === 0 ? [made("tr", [wide("nothing is woven yet")])] : rows),
  );
  byId("log-slips").replaceChildren(...slipItems(plan, kept));
}

/** The marked slips, an item each. */
export function slipItems(plan: FollowPlan, { marks }: Kept): readonly HTMLElement[] {
  if (marks.length === 0) return [made("li", "none")];
  return marks.map(({ at, note, pick, turn, weaver }) => {
    const named = [pieceWords(turnsOf(plan), turn), pickWords(plan, turn, pick)].filter(Boolean).join(", ");
    const by = weaver === "" ? "" : `, ${weaver}`;
    return made("li", `${named}: ${note === "" ? "to be looked at" : note} (${timeWords(at)}${by})`);
  });
}

/** `row 12, pick 3 of it`, for a pick of a piece. */
export function pickWords(plan: FollowPlan, turn: number, pick: number): string {
  const { row, pick: of } = rowOf(turnsOf(plan)[turn]!.piece, pick);
  return `row ${row + 1}, pick ${of + 1} of it`;
}

function rowsWords(plan: FollowPlan, turn: number, from: number, to: number): string {
  const { piece } = turnsOf(plan)[turn]!;
  const first = rowOf(piece, Math.min(from, to)).row + 1;
  const last = rowOf(piece, Math.max(from, to) - 1).row + 1;
  return first === last ? `row ${first}` : `rows ${first} to ${last}`;
}

function wide(text: string): HTMLTableCellElement {
  const cell = made("td", text);
  cell.colSpan = 4;
  return cell;
}

function timeWords(time: number): string {
  return new Date(time).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });
}

function hourWords(time: number): string {
  return new Date(time).toLocaleTimeString("en-GB", { timeStyle: "short" });
}
