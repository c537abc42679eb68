import { modulo } from "../arithmetic.js";
import type { ShaftSet } from "../types.js";

/** What a ground harness raises or sinks, pick by pick. */
export type Lifts = readonly ShaftSet[];

/** Whether a shaft is raised and sunk on one pick. */
export function shareShaft(up: Uint8Array, down: Uint8Array): boolean {
  for (let i = 0; i < up.length; i++) if ((up[i]! & down[i]!) === 1) return true;
  return false;
}

/** Shafts by pick, a row a pick, as 0 and 1. */
export function matrix(lifts: Lifts, shafts: number): Uint8Array {
  const bits = new Uint8Array(lifts.length * shafts);
  for (const [pick, set] of lifts.entries()) for (const shaft of set) bits[pick * shafts + shaft - 1] = 1;
  return bits;
}

/** Pairs left open between units, for a figure begun at each end of one unit. */
export function openSideways(
  up: Uint8Array,
  down: Uint8Array,
  threading: readonly number[],
  shafts: number,
  unit: number,
): number[] {
  const open = new Array<number>(unit).fill(0);
  for (let end = 0; end < threading.length; end++) {
    const right = threading[end]! - 1;
    const left = threading[modulo(end - 1, threading.length)]! - 1;
    let pairs = 0;
    for (let pick = 0; pick < up.length; pick += shafts) {
      if (up[pick + left] !== down[pick + right]) pairs += 1;
      if (down[pick + left] !== up[pick + right]) pairs += 1;
    }
    open[end % unit]! += pairs;
  }
  return open;
}

/** Pairs left open between rows, for a figure begun at each pick of one row. */
export function openLengthways(
  up: Uint8Array,
  down: Uint8Array,
  threading: readonly number[],
  shafts: number,
  row: number,
): number[] {
  const open = new Array<number>(row).fill(0);
  const picks = up.length / shafts;
  for (let pick = 0; pick < picks; pick++) {
    const before = modulo(pick - 1, picks) * shafts - 1;
    const after = pick * shafts - 1;
    let pairs = 0;
    for (const shaft of threading) {
      if (up[before + shaft] !== down[after + shaft]) pairs += 1;
      if (down[before + shaft] !== up[after + shaft]) pairs += 1;
    }
    open[pick % row]! += pairs;
  }
  return open;
}
