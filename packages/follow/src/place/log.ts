/** Who wove what, and when. The clock is the caller's. */
import type { WarpPlace } from "./place.js";

/** What one weaver did without a pause. */
export interface LogEntry {
  /** The name she goes by; empty where she gave none. */
  readonly weaver: string;
  /** What was done. */
  readonly did: "wove" | "took out";
  /** The turn, from 0. */
  readonly turn: number;
  /** Picks of the piece that were woven before and after. */
  readonly from: number;
  /** Picks of the piece that were woven after. */
  readonly to: number;
  /** When it began and when it ended, in milliseconds since 1970. */
  readonly began: number;
  /** When it ended, in milliseconds since 1970. */
  readonly ended: number;
}

/** A place where something is to be looked at. */
export interface Mark {
  /** Who marked it. */
  readonly weaver: string;
  /** The turn, from 0. */
  readonly turn: number;
  /** The pick of the piece, from 0. */
  readonly pick: number;
  /** What she wrote of it. */
  readonly note: string;
  /** When, in milliseconds since 1970. */
  readonly at: number;
}

/** After so long without a pick a weaver has been away. */
const PAUSE = 30 * 60_000;

/**
 * The log after a weaver went from one place to another. A press too many that is taken back leaves no trace; a jump is
 * no weaving and is not written down.
 * @param log what was woven and taken out so far, the oldest first; it stays as it is
 * @param before where the weaver was
 * @param after where she is now
 * @param weaver her name or sign, as it is to stand in the log
 * @param now milliseconds since 1970
 * @example logged([], { turn: 0, woven: 0 }, { turn: 0, woven: 4 }, "Ana", 0)[0].to // 4
 */
export function logged(
  log: readonly LogEntry[],
  before: WarpPlace,
  after: WarpPlace,
  weaver: string,
  now: number,
): readonly LogEntry[] {
  if (before.turn !== after.turn || before.woven === after.woven) return log;
  const did = before.until === undefined ? "wove" : "took out";
  const last = log.at(-1);
  const follows =
    last !== undefined && last.turn === before.turn && last.did === did && last.to === before.woven;
  if (after.woven > before.woven !== (did === "wove")) {
    if (!follows) return log;
    const less = { ...last, to: after.woven };
    return less.to === less.from ? log.slice(0, -1) : [...log.slice(0, -1), less];
  }
  if (follows && last.weaver === weaver && now - last.ended < PAUSE) {
    return [...log.slice(0, -1), { ...last, to: after.woven, ended: now }];
  }
  const { turn, woven: from } = before;
  return [...log, { weaver, did, turn, from, to: after.woven, began: now, ended: now }];
}
