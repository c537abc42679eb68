import type { UnitDraft } from "@drawcord/units";

/** The squares (units x rows) that are drawn in one draft and undrawn in another of the same size. */
export function squaresTurned(before: UnitDraft, after: UnitDraft): number {
  let turned = 0;
  before.lifts.forEach((lift, row) => {
    const other = after.lifts[row]!;
    if (lift === other && before.threading === after.threading) return;
    before.threading.forEach((shafts, unit) => {
      if (isDrawn(shafts, lift) !== isDrawn(after.threading[unit]!, other)) turned++;
    });
  });
  return turned;
}

/** Whether a unit on these shafts is drawn by a lift. */
export function isDrawn(shafts: readonly number[], lift: readonly number[]): boolean {
  return shafts.some((shaft) => lift.includes(shaft));
}
