/** The windows over the page: where to go, what is wrong, who weaves. Each gives back what was chosen. */
import type { Kept } from "../place/kept.js";
import { firstPickOf, rowOf, turnsOf, type WarpPlace } from "../place/place.js";
import type { FollowPlan } from "../plan/types.js";
import { byId, made, say } from "./dom.js";
import { pickWords, slipItems } from "./logbook.js";
import { pieceWords } from "./show.js";

/** Opens a window, and calls back with the value of the button that closes it. */
function open(id: string, closed: (value: string) => void): void {
  const dialog = byId<HTMLDialogElement>(id);
  dialog.querySelector("form")!.onsubmit = ({ submitter }) => {
    if (submitter instanceof HTMLButtonElement) closed(submitter.value);
  };
  // A window that closes gives the focus back. Not to the button that opened it, which a pedal's space would press again.
  byId("stage").focus({ preventScroll: true });
  dialog.showModal();
}

/** The window that goes elsewhere: a piece, a block of it, a row, a pick. */
export function askWhere(plan: FollowPlan, place: WarpPlace, go: (place: WarpPlace) => void): void {
  const turns = turnsOf(plan);
  const turn = byId<HTMLSelectElement>("go-turn");
  const block = byId<HTMLSelectElement>("go-block");
  const row = byId<HTMLInputElement>("go-row");
  const pick = byId<HTMLInputElement>("go-pick");
  turn.replaceChildren(...turns.map((_, i) => optionOf(`${i}`, pieceWords(turns, i) || plan.title)));
  turn.value = `${place.turn}`;
  const pieceNow = () => turns[Number(turn.value)]!.piece;
  const limitPick = () => {
    pick.max = `${pieceNow().picks[Number(row.value) - 1] ?? 1}`;
  };
  const fill = (at: { readonly row: number; readonly pick: number }) => {
    const { blocks, rows } = pieceNow();
    block.replaceChildren(
      ...blocks.map(({ name, start, time, times }) =>
        optionOf(`${start}`, `${name}${times === 1 ? "" : ` ${time} of ${times}`}, from row ${start + 1}`),
      ),
    );
    block.closest("label")!.hidden = blocks.length === 0;
    block.value = `${blocks.findLast(({ start }) => start <= at.row)?.start ?? ""}`;
    row.max = `${rows.length}`;
    row.value = `${Math.min(at.row, rows.length - 1) + 1}`;
    limitPick();
    pick.value = `${at.pick + 1}`;
  };
  turn.onchange = () => fill({ row: 0, pick: 0 });
  block.onchange = () => fill({ row: Number(block.value), pick: 0 });
  row.oninput = limitPick;
  fill(rowOf(pieceNow(), place.woven));
  open("go", (value) => {
    if (value !== "go") return;
    const woven = firstPickOf(pieceNow(), Number(row.value) - 1) + Number(pick.value) - 1;
    go({ turn: Number(turn.value), woven });
  });
}

/** The window that marks a slip at the pick that was last woven. */
export function askSlip(
  plan: FollowPlan,
  kept: Kept,
  mark: (pick: number, note: string) => void,
  putRight: (index: number) => void,
): void {
  const { turn, woven } = kept.place;
  const pick = Math.max(0, woven - 1);
  const note = byId<HTMLInputElement>("slip-note");
  note.value = "";
  say("slip-where", `It is marked at ${pickWords(plan, turn, pick)}, the last that is woven.`);
  const items = slipItems(plan, kept);
  kept.marks.forEach((_, index) => {
    const button = made("button", "It is put right");
    button.type = "button";
    button.onclick = () => {
      putRight(index);
      byId<HTMLDialogElement>("slip").close();
    };
    items[index]!.append(" ", button);
  });
  byId("slips").replaceChildren(...items);
  open("slip", (value) => {
    if (value === "mark") mark(pick, note.value.trim());
  });
}

/** The window that begins to take picks out. */
export function askOut(plan: FollowPlan, kept: Kept, begin: (until: number) => void): void {
  const { turn, woven } = kept.place;
  const { piece } = turnsOf(plan)[turn]!;
  const row = byId<HTMLInputElement>("out-row");
  const pick = byId<HTMLInputElement>("out-pick");
  const last = rowOf(piece, Math.max(0, woven - 1));
  const slip = kept.marks.findLast((mark) => mark.turn === turn && mark.pick < woven);
  const at = slip === undefined ? { row: last.row, pick: 0 } : rowOf(piece, slip.pick);
  row.max = `${last.row + 1}`;
  row.value = `${at.row + 1}`;
  pick.value = `${at.pick + 1}`;
  const limitPick = () => {
    pick.max = `${piece.picks[Number(row.value) - 1] ?? 1}`;
  };
  row.oninput = limitPick;
  limitPick();
  open("out", (value) => {
    if (value === "out") begin(firstPickOf(piece, Number(row.value) - 1) + Number(pick.value) - 1);
  });
}

/** The window that asks who weaves. */
export function askWho({ weaver, weavers }: Kept, take: (name: string) => void): void {
  const list = byId("weaver-list");
  const fresh = byId<HTMLInputElement>("weaver-new");
  fresh.value = "";
  list.replaceChildren(
    ...["", ...weavers].map((name) => {
      const button = made("input");
      button.type = "radio";
      button.name = "weaver";
      button.value = name;
      button.checked = name === weaver;
      return made("label", [button, made("span", name === "" ? "no name" : name)], "tick");
    }),
  );
  open("weavers", (value) => {
    if (value !== "take") return;
    const chosen = list.querySelector<HTMLInputElement>("input:checked")?.value ?? "";
    take(fresh.value.trim() || chosen);
  });
}

/** A window that only shows. */
export function openWindow(id: string): void {
  open(id, () => {});
}

function optionOf(value: string, text: string): HTMLOptionElement {
  const option = made("option", text);
  option.value = value;
  return option;
}
