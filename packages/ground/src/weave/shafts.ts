import { type BitGrid, toBooleans } from "@drawcord/grid";
import type { Weave } from "./weave.js";

/**
 * The least shafts that weave a drawdown: ends that move alike share one, numbered in the order in which they come.
 * @param drawdown one repeat: rows are picks, columns are ends
 * @returns the weave with its threading and what each pick raises
 * @example shaftsOf(fromText("##..\n..##")).threading // [1, 1, 2, 2]
 */
export function shaftsOf(drawdown: BitGrid): Weave {
  const rows = toBooleans(drawdown);
  const { order, kinds } = firstSeen(drawdown.columns, (end) =>
    rows.map((row) => (row[end] ? "#" : ".")).join(""),
  );
  return {
    shafts: kinds.length,
    threading: order,
    raised: rows.map((row) => kinds.flatMap((end, shaft) => (row[end] ? [shaft + 1] : []))),
  };
}

/** A weave drafted for treadles: what each treadle raises, and the treadle of each pick. */
export interface TreadledWeave {
  /** How many shafts it takes. */
  readonly shafts: number;
  /** The shaft of each end of the repeat, from 1. */
  readonly threading: readonly number[];
  /** The shafts that each treadle raises. */
  readonly tieUp: readonly (readonly number[])[];
  /** The treadle of each pick, 1-based. */
  readonly treadling: readonly number[];
}

/**
 * The least treadles for a weave: picks that raise alike share one, numbered in the order in which they come.
 * @param weave one repeat, as shafts raised on each pick
 * @example treadled(shaftsOf(fromText("##\n..\n##"))).treadling // [1, 2, 1]
 */
export function treadled(weave: Weave): TreadledWeave {
  const { order, kinds } = firstSeen(weave.raised.length, (pick) => weave.raised[pick]!.join(" "));
  return {
    shafts: weave.shafts,
    threading: weave.threading,
    tieUp: kinds.map((pick) => weave.raised[pick]!),
    treadling: order,
  };
}

/**
 * Threading, tie-up and treadling put together again.
 * @param weave threading, tie-up and treadling
 * @example untreadled({ shafts: 2, threading: [1, 2], tieUp: [[1], [2]], treadling: [2, 1] }).raised // [[2], [1]]
 */
export function untreadled({ shafts, threading, tieUp, treadling }: TreadledWeave): Weave {
  return { shafts, threading, raised: treadling.map((treadle) => tieUp[treadle - 1]!) };
}

/** Numbers things by their look, in the order in which each look is first seen. */
function firstSeen(length: number, look: (i: number) => string): { order: number[]; kinds: number[] } {
  const numbers = new Map<string, number>();
  const kinds: number[] = [];
  const order = Array.from({ length }, (_, i) => {
    const key = look(i);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    kinds.push(i);
    numbers.set(key, kinds.length);
    return kinds.length;
  });
  return { order, kinds };
}
