import type { ShaftSet } from "@drawcord/ground";
import {
  alternatingLifts,
  brickLifts,
  exchangedLifts,
  type Frame,
  fittedLifts,
  framedLifts,
  halfDropLifts,
  mirroredLifts,
  repeatedLifts,
  turnedLifts,
  upsideDownLifts,
} from "./lift-variation.js";

/** One way to vary a lift plan, as data. Where no shafts are named, all pattern shafts are meant. */
export type LiftChange =
  | { readonly change: "repeated"; readonly times: number }
  | { readonly change: "upside-down" }
  | { readonly change: "mirrored" | "turned" | "exchanged" | "brick"; readonly on?: ShaftSet }
  | { readonly change: "half-drop"; readonly on: ShaftSet; readonly beside: ShaftSet }
  | ({ readonly change: "framed" } & Frame)
  | { readonly change: "fitted"; readonly rows: number }
  | { readonly change: "alternating"; readonly times: number; readonly every: LiftChange };

/**
 * A lift plan changed.
 * @param shafts how many pattern shafts there are, for a change that names none
 * @throws {UnitsError} as the change does: `bad-size`, `wrong-length`, `too-large`
 * @example changedLifts([[1], [2]], { change: "exchanged" }, 2) // [[2], [1]]
 */
export function changedLifts(
  lifts: readonly ShaftSet[],
  change: LiftChange,
  shafts: number,
): readonly ShaftSet[] {
  switch (change.change) {
    case "repeated":
      return repeatedLifts(lifts, change.times);
    case "upside-down":
      return upsideDownLifts(lifts);
    case "mirrored":
      return mirroredLifts(lifts, change.on ?? all(shafts));
    case "turned":
      return turnedLifts(lifts, change.on ?? all(shafts));
    case "exchanged":
      return exchangedLifts(lifts, change.on ?? all(shafts));
    case "brick":
      return brickLifts(lifts, change.on ?? all(shafts));
    case "half-drop":
      return halfDropLifts(lifts, change.on, change.beside);
    case "framed":
      return framedLifts(lifts, change);
    case "fitted":
      return fittedLifts(lifts, change.rows);
    case "alternating":
      return alternatingLifts(lifts, change.times, (rows) => changedLifts(rows, change.every, shafts));
  }
}

function all(shafts: number): ShaftSet {
  return Array.from({ length: shafts }, (_, i) => i + 1);
}
