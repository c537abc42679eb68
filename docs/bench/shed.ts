import { many } from "@drawcord/base";
import type { BitGrid } from "@drawcord/grid";
import { expand, printShafts, type UnitDraft } from "@drawcord/units";
import type { Shed } from "./messages.js";

/** So many picks are named that are woven as the shed stands. */
const MOST_PICKS = 2000;

/**
 * The shed that a pressed treadle and pulled handles make, by the formula of the two harnesses.
 * @param draft of the piece that is shown
 * @param drawdown its cloth
 * @param step of the treadling, from 1; 0 where no treadle is pressed
 * @param handles the pattern shafts drawn, ascending
 */
export function shedOf(draft: UnitDraft, drawdown: BitGrid, step: number, handles: readonly number[]): Shed {
  const pressed = draft.ground.steps[step - 1] ?? { raise: [], sink: [] };
  const one = expand({
    ...draft,
    ground: { ...draft.ground, steps: [pressed] },
    lifts: [handles],
    picksPerRow: 1,
  }).drawdown;
  const up = Array.from({ length: one.columns }, (_, end) => (one.get(0, end) ? "#" : ".")).join("");
  const picks: number[] = [];
  for (let pick = 0; pick < drawdown.rows && picks.length < MOST_PICKS; pick++) {
    if (isAlike(drawdown, pick, one)) picks.push(pick + 1);
  }
  const raised = up.split("#").length - 1;
  const treadle = step === 0 ? "no treadle" : `treadle step ${step}`;
  const drawn = handles.length === 0 ? "no handle" : `handles ${printShafts(handles)}`;
  const where =
    picks.length === 0
      ? "no pick of this cloth is woven so"
      : `${many(picks.length, "pick")} of this cloth woven so`;
  return { up, picks, words: `${treadle}, ${drawn}: ${many(raised, "end")} up of ${up.length}; ${where}` };
}

function isAlike({ words, stride }: BitGrid, pick: number, one: BitGrid): boolean {
  for (let i = 0; i < stride; i++) if (words[pick * stride + i] !== one.words[i]) return false;
  return true;
}
