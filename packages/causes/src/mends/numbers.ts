import type { CheckOptions } from "@drawcord/check";
import type { Change, UnitDraft } from "@drawcord/units";
import type { Way } from "./way.js";

/** Lifts without the number that only stands for static units. */
export function withoutStatic(draft: UnitDraft, { staticShaft }: CheckOptions): Way[] {
  return staticShaft === undefined ? [] : leftOut(draft, (shaft) => shaft === staticShaft);
}

/** Lifts without the shafts on which no unit hangs. */
export function withoutUnknown(draft: UnitDraft, { staticShaft }: CheckOptions): Way[] {
  const hung = new Set(draft.threading.flat());
  return leftOut(draft, (shaft) => shaft !== staticShaft && !hung.has(shaft));
}

function leftOut(draft: UnitDraft, isOut: (shaft: number) => boolean): Way[] {
  const changes = draft.lifts.flatMap((lift, row): Change[] => {
    const shafts = lift.filter(isOut);
    return shafts.length === 0 ? [] : [{ change: "leave", row: row + 1, shafts }];
  });
  return changes.length === 0 ? [] : [{ changes }];
}
