import type { ShaftSet } from "@drawcord/ground";
import type { UnitDraft } from "./types.js";

/** What a draft does with one pattern shaft. */
export interface ShaftUse {
  /** Its number, from 1. */
  readonly shaft: number;
  /** Units (from 1) that hang on it. */
  readonly units: readonly number[];
  /** How many rows draw it, and the first and last of them (from 1; 0 when there are none). */
  readonly rows: number;
  /** The first row that draws it, from 1; 0 when there is none. */
  readonly firstRow: number;
  /** The last row that draws it, from 1; 0 when there is none. */
  readonly lastRow: number;
}

/**
 * Every pattern shaft that a unit hangs on or a lift draws, in ascending order. Does not check the draft.
 * @param draft the draft to look through
 * @example shaftUses(draft).map(({ shaft, rows }) => [shaft, rows]) // [[1, 2], [2, 2]]
 */
export function shaftUses({ threading, lifts }: UnitDraft): ShaftUse[] {
  const units = new Map<number, number[]>();
  threading.forEach((shafts, unit) => {
    for (const shaft of shafts) {
      const hung = units.get(shaft);
      if (hung === undefined) units.set(shaft, [unit + 1]);
      else hung.push(unit + 1);
    }
  });
  const rows = rowsOfShafts(lifts);
  const shafts = [...new Set([...units.keys(), ...rows.keys()])].sort((a, b) => a - b);
  return shafts.map((shaft) => ({
    shaft,
    units: units.get(shaft) ?? [],
    ...(rows.get(shaft) ?? { rows: 0, firstRow: 0, lastRow: 0 }),
  }));
}

type Rows = Pick<ShaftUse, "rows" | "firstRow" | "lastRow">;

/** Shaft numbers up to here are counted in arrays: a lift plan may draw millions of them. */
const COUNTED = 2 ** 16;

function rowsOfShafts(lifts: UnitDraft["lifts"]): Map<number, Rows> {
  const rowsOfLift = rowsOfLists(lifts);
  // A lift is in ascending order.
  const counted = lifts.reduce((most, lift) => Math.max(most, Math.min(COUNTED, 1 + (lift.at(-1) ?? 0))), 0);
  const times = new Int32Array(counted);
  const first = new Int32Array(counted);
  const last = new Int32Array(counted);
  const found = new Map<number, Rows>();
  for (const [lift, { rows, firstRow, lastRow }] of rowsOfLift) {
    for (let i = 0; i < lift.length; i++) {
      const shaft = lift[i]!;
      if (shaft < counted) {
        if (times[shaft] === 0) first[shaft] = firstRow;
        times[shaft]! += rows;
        last[shaft] = Math.max(last[shaft]!, lastRow);
      } else {
        const before = found.get(shaft);
        found.set(shaft, {
          rows: (before?.rows ?? 0) + rows,
          firstRow: before?.firstRow ?? firstRow,
          lastRow: Math.max(before?.lastRow ?? 0, lastRow),
        });
      }
    }
  }
  times.forEach((rows, shaft) => {
    if (rows > 0) found.set(shaft, { rows, firstRow: first[shaft]!, lastRow: last[shaft]! });
  });
  return found;
}

/** The rows of each list of shafts, by where they first come: a lift that comes again is mostly one list, read once. */
function rowsOfLists(lifts: UnitDraft["lifts"]): Map<ShaftSet, Rows> {
  const found = new Map<ShaftSet, Rows>();
  lifts.forEach((lift, row) => {
    const before = found.get(lift);
    const firstRow = before?.firstRow ?? row + 1;
    found.set(lift, { rows: (before?.rows ?? 0) + 1, firstRow, lastRow: row + 1 });
  });
  return found;
}
