import type { UnitDraft } from "@drawcord/units";
import { many } from "../words.js";

/** One change to a draft, as data. Units, rows and shafts count from 1. */
export type Change =
  /** Shafts drawn in a row that left them down, or left down in a row that drew them. */
  | { readonly change: "draw" | "leave"; readonly row: number; readonly shafts: readonly number[] }
  /** The lift of a row written anew. */
  | { readonly change: "lift"; readonly row: number; readonly shafts: readonly number[] }
  /** A row taken out of the lift plan. */
  | { readonly change: "remove-row"; readonly row: number }
  /** A unit hung on other shafts. */
  | { readonly change: "thread"; readonly unit: number; readonly shafts: readonly number[] }
  /** A unit taken out of the threading. */
  | { readonly change: "remove-unit"; readonly unit: number }
  /** The ground's treadling begun so many steps later. */
  | { readonly change: "start-ground"; readonly steps: number }
  /** On every treadle, the shafts raised are sunk and the shafts sunk are raised. */
  | { readonly change: "swap-ground" }
  /** What one step of the ground's treadling raises and sinks. */
  | {
      readonly change: "tie";
      readonly step: number;
      readonly raise: readonly number[];
      readonly sink: readonly number[];
    }
  /** The ends of a selvedge hung on other ground shafts. */
  | { readonly change: "selvedge"; readonly side: "left" | "right"; readonly shafts: readonly number[] };

/**
 * The draft with a change made to it.
 * @example applyChange(draft, { change: "lift", row: 1, shafts: [2] }).lifts // [[2], [2]]
 */
export function applyChange(draft: UnitDraft, change: Change): UnitDraft {
  switch (change.change) {
    case "draw": {
      const lift = [...draft.lifts[change.row - 1]!, ...change.shafts];
      return withLift(
        draft,
        change.row,
        [...new Set(lift)].sort((a, b) => a - b),
      );
    }
    case "leave":
      return withLift(
        draft,
        change.row,
        draft.lifts[change.row - 1]!.filter((shaft) => !change.shafts.includes(shaft)),
      );
    case "lift":
      return withLift(draft, change.row, change.shafts);
    case "remove-row":
      return {
        ...draft,
        lifts: draft.lifts.toSpliced(change.row - 1, 1),
        picksPerRow: without(draft.picksPerRow, change.row),
      };
    case "thread":
      return { ...draft, threading: draft.threading.with(change.unit - 1, change.shafts) };
    case "remove-unit":
      return {
        ...draft,
        threading: draft.threading.toSpliced(change.unit - 1, 1),
        unitEnds: without(draft.unitEnds, change.unit),
      };
    case "start-ground": {
      const { steps } = draft.ground;
      return {
        ...draft,
        ground: { ...draft.ground, steps: [...steps.slice(change.steps), ...steps.slice(0, change.steps)] },
      };
    }
    case "swap-ground":
      return {
        ...draft,
        ground: {
          ...draft.ground,
          steps: draft.ground.steps.map((step) => ({ ...step, raise: step.sink, sink: step.raise })),
        },
      };
    case "tie": {
      const { steps } = draft.ground;
      const { raise, sink } = change;
      const step = { ...steps[change.step - 1]!, raise, sink };
      return { ...draft, ground: { ...draft.ground, steps: steps.with(change.step - 1, step) } };
    }
    case "selvedge":
      return { ...draft, selvedge: { ...draft.selvedge, [change.side]: change.shafts } };
  }
}

/**
 * What a change asks of the weaver, as a clause.
 * @example sayChange({ change: "draw", row: 3, shafts: [1, 4] }) // "draw shafts 1 and 4 in row 3"
 */
export function sayChange(change: Change): string {
  switch (change.change) {
    case "draw":
      return `draw ${shaftsInWords(change.shafts)} in row ${change.row}`;
    case "leave":
      return `leave ${shaftsInWords(change.shafts)} down in row ${change.row}`;
    case "lift":
      return change.shafts.length === 0
        ? `draw nothing in row ${change.row}`
        : `draw just ${shaftsInWords(change.shafts)} in row ${change.row}`;
    case "remove-row":
      return `leave out row ${change.row}`;
    case "thread":
      return change.shafts.length === 0
        ? `let unit ${change.unit} be static`
        : `hang unit ${change.unit} on ${shaftsInWords(change.shafts)}`;
    case "remove-unit":
      return `leave out unit ${change.unit}`;
    case "start-ground":
      return `begin the ground's treadling ${many(change.steps, "step")} later`;
    case "swap-ground":
      return "sink on every treadle what it raises, and raise what it sinks";
    case "tie":
      return `tie step ${change.step} of the ground to raise ${orNothing(change.raise)} and to sink ${orNothing(change.sink)}`;
    case "selvedge":
      return `thread the ${change.side} selvedge on ground ${shaftsInWords(change.shafts)}`;
  }
}

function withLift(draft: UnitDraft, row: number, lift: readonly number[]): UnitDraft {
  return { ...draft, lifts: draft.lifts.with(row - 1, lift) };
}

function without(sizes: number | readonly number[], place: number): number | readonly number[] {
  return typeof sizes === "number" ? sizes : sizes.toSpliced(place - 1, 1);
}

function orNothing(shafts: readonly number[]): string {
  return shafts.length === 0 ? "nothing" : shaftsInWords(shafts);
}

function shaftsInWords(shafts: readonly number[]): string {
  const parts = shafts.map(String);
  if (parts.length === 1) return `shaft ${parts[0]}`;
  return `shafts ${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
