/** Slips planted in a small plan, of which the evidence tells every one. */
import { applyTogether, type Cause, findCauses } from "@drawcord/causes";
import { applyChange, type Change, expand, type UnitDraft } from "@drawcord/units";
import { plainPlan } from "./plain-plan.js";
import type { Dice } from "./random.js";

/** A plan with slips, and what undoes them. */
export interface Planted {
  readonly sound: UnitDraft;
  readonly slipped: UnitDraft;
  /** What the evidence says, a slip each, the one to look at first before all others. */
  readonly causes: readonly Cause[];
}

/** Where a slip can be made. */
type SlipPlace = "threading" | "lifts" | "ties" | "start" | "selvedge" | "picks";

const places: readonly SlipPlace[] = ["threading", "lifts", "ties", "start", "selvedge", "picks"];

/**
 * A plan with so many slips, each in another place of it, and each told by the rest of the plan.
 * @param dice which plan and which slips
 * @param slips from 1 to 3
 */
export function plantedPlan(dice: Dice, slips: number): Planted {
  for (;;) {
    const sound = plainPlan(dice);
    const slipped = dice
      .shuffled(places)
      .slice(0, slips)
      .reduce((draft, place) => slip(draft, place, dice), sound);
    if (sameCloth(slipped, sound)) continue;
    const { causes } = findCauses(slipped);
    if (causes.length !== slips) continue;
    const mended = applyTogether(
      slipped,
      causes.flatMap(({ changes }) => changes),
    );
    if (sameCloth(mended, sound) && samePlan(mended, sound)) return { sound, slipped, causes };
  }
}

function sameCloth(one: UnitDraft, other: UnitDraft): boolean {
  const [a, b] = [expand(one).drawdown, expand(other).drawdown];
  return a.rows === b.rows && a.columns === b.columns && a.equals(b);
}

function samePlan(one: UnitDraft, other: UnitDraft): boolean {
  const plan = ({ ground, lifts, threading }: UnitDraft) => JSON.stringify([ground, lifts, threading]);
  return plan(one) === plan(other);
}

/** A plan with one slip in a place. */
function slip(draft: UnitDraft, place: SlipPlace, dice: Dice): UnitDraft {
  return applyChange(draft, slipIn(draft, place, dice));
}

function slipIn({ ground, lifts, selvedge, threading }: UnitDraft, place: SlipPlace, dice: Dice): Change {
  const handles = Math.max(...threading.flat());
  switch (place) {
    case "threading": {
      const hung = threading.flatMap((shafts, unit) => (shafts.length === 0 ? [] : [unit + 1]));
      return { change: "thread", unit: dice.one(hung), shafts: [dice.whole(1, handles)] };
    }
    case "lifts": {
      const row = dice.whole(2, lifts.length - 1);
      const shaft = dice.whole(1, handles);
      return { change: lifts[row - 1]!.includes(shaft) ? "leave" : "draw", row, shafts: [shaft] };
    }
    case "ties": {
      const step = dice.whole(1, ground.steps.length);
      const { raise, sink } = ground.steps[step - 1]!;
      return dice.one([true, false])
        ? { change: "tie", step, raise: [], sink }
        : { change: "tie", step, raise, sink: [] };
    }
    case "start":
      return { change: "start-ground", steps: dice.one([1, 3]) };
    case "selvedge": {
      const side = dice.one(["left", "right"] as const);
      const own = selvedge![side]!;
      return { change: "selvedge", side, shafts: own.with(dice.whole(0, own.length - 1), dice.whole(1, 4)) };
    }
    case "picks":
      return { change: "row-picks", row: dice.whole(1, lifts.length), picks: dice.one([3, 5]) };
  }
}
