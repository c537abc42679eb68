import type { ShaftSet } from "@drawcord/ground";
import { type Border, borderedLifts } from "./bordered-lifts.js";
import { UnitsError } from "./error.js";
import {
  alternatingLifts,
  brickLifts,
  exchangedLifts,
  type Frame,
  fittedLifts,
  framedLifts,
  halfDropLifts,
  mirroredLifts,
  placedLifts,
  repeatedLifts,
  turnedLifts,
  upsideDownLifts,
} from "./lift-variation.js";

/** One way to vary a lift plan, as data. Where no shafts are named, all pattern shafts are meant. */
export type LiftChange =
  | {
      /** Which way, as its name. */
      readonly change: "repeated";
      /** How often the rows come, from 1. */
      readonly times: number;
    }
  | {
      /** Which way, as its name. */
      readonly change: "upside-down";
    }
  /** Its shafts 1, 2, 3 and so on drawn as these. */
  | {
      /** Which way, as its name. */
      readonly change: "placed";
      /** The shafts that its shafts 1, 2, 3 and so on become, in their order. */
      readonly on: ShaftSet;
    }
  | {
      /** Which way, as its name. */
      readonly change: "mirrored" | "turned" | "exchanged" | "brick";
      /** The shafts meant; all pattern shafts by default. */
      readonly on?: ShaftSet;
    }
  | {
      /** Which way, as its name. */
      readonly change: "half-drop";
      /** The shafts of the motif. */
      readonly on: ShaftSet;
      /** The shafts that it comes again on, as many. */
      readonly beside: ShaftSet;
    }
  | ({
      /** Which way, as its name. */
      readonly change: "framed";
    } & Frame)
  | ({
      /** Which way, as its name. */
      readonly change: "bordered";
      /** The block that the border is built from, by its name. */
      readonly strip: string;
      /** The shafts between the sides; by default all that are not of the sides. */
      readonly on?: ShaftSet;
    } & Omit<Border, "on">)
  | {
      /** Which way, as its name. */
      readonly change: "fitted";
      /** The rows to be filled; what does not fit whole is left out. */
      readonly rows: number;
    }
  | {
      /** Which way, as its name. */
      readonly change: "alternating";
      /** How often the rows come, from 1. */
      readonly times: number;
      /** What is done to them every other time. */
      readonly every: LiftChange;
    }
  /** As often as the piece has room for, every other time changed where that is said; `filledOrder` says how often. */
  | {
      /** Which way, as its name. */
      readonly change: "filled";
      /** What is done to them every other time; nothing by default. */
      readonly every?: LiftChange;
    };

/**
 * A lift plan changed.
 * @param lifts the shafts drawn in each row, row 1 first
 * @param change what is done to them
 * @param shafts how many pattern shafts there are, for a change that names none
 * @param rowsOf the rows of a block by its name, for a border that is built from one; undefined of one that is not there
 * @throws {UnitsError} as the change does: `bad-size`, `wrong-length`, `shared-shaft`, `too-large`; `no-length` for one that
 * fills a length, `unknown-block` for a border of a block that is not there
 * @example changedLifts([[1], [2]], { change: "exchanged" }, 2) // [[2], [1]]
 */
export function changedLifts(
  lifts: readonly ShaftSet[],
  change: LiftChange,
  shafts: number,
  rowsOf: (block: string) => readonly ShaftSet[] | undefined = () => undefined,
): readonly ShaftSet[] {
  switch (change.change) {
    case "repeated":
      return repeatedLifts(lifts, change.times);
    case "upside-down":
      return upsideDownLifts(lifts);
    case "placed":
      return placedLifts(lifts, change.on);
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
    case "bordered": {
      const strip = rowsOf(change.strip);
      if (strip === undefined) {
        const sentence = `the block "${change.strip}", of which a border is to be built, is not there`;
        throw new UnitsError("unknown-block", sentence, { block: change.strip });
      }
      const { beside } = change;
      const on = change.on ?? all(shafts).filter((shaft) => !beside.includes(shaft));
      return borderedLifts(lifts, strip, { ...change, on });
    }
    case "fitted":
      return fittedLifts(lifts, change.rows);
    case "alternating":
      return alternatingLifts(lifts, change.times, (rows) =>
        changedLifts(rows, change.every, shafts, rowsOf),
      );
    case "filled":
      throw new UnitsError(
        "no-length",
        `"*fill" fills a piece to its length; the length of this one is not known`,
      );
  }
}

/**
 * The rows that a plan of so many rows comes to when it is changed.
 * @param rows rows before the change
 * @param change what is done to them
 * @example changedRows(3, { change: "brick" }) // 6
 */
export function changedRows(rows: number, change: LiftChange): number {
  switch (change.change) {
    case "repeated":
      return rows * change.times;
    case "brick":
      return rows * 2;
    case "framed":
      return rows + 2 * change.rows;
    case "bordered":
      return rows + 2 * change.beside.length;
    case "fitted":
      return rows === 0 ? 0 : rows * Math.floor(change.rows / rows);
    case "alternating": {
      const other = changedRows(rows, change.every);
      return rows * Math.ceil(change.times / 2) + other * Math.floor(change.times / 2);
    }
    default:
      return rows;
  }
}

function all(shafts: number): ShaftSet {
  return Array.from({ length: shafts }, (_, i) => i + 1);
}
