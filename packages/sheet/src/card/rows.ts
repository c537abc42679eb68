import { liftWork } from "@drawcord/units";
import type { Woven } from "../woven.js";

/** From where a shuttle is thrown. */
export type ShuttleSide = "left" | "right";

/** One row as it is woven. */
export interface CardRow {
  /** From 1. */
  readonly row: number;
  readonly drawn: readonly number[];
  /** Handles drawn that the row before left. */
  readonly pulled: readonly number[];
  /** Handles let go that the row before held. */
  readonly released: readonly number[];
  /** The treadle of each pick, from 1; 0 where none is trodden. */
  readonly treadles: readonly number[];
  /** The weft of each pick, from 0 in the order of their first picks. */
  readonly wefts: readonly number[];
  /** From where the first pick of each weft in the row is thrown; left out where it has none. */
  readonly sides: readonly (ShuttleSide | undefined)[];
}

/**
 * Every row of a draft as it is woven, each weft going to and fro from the side where it begins.
 * @param first the side where each weft begins, in the order of their first picks
 */
export function cardRows(woven: Woven, first: readonly ShuttleSide[]): CardRow[] {
  const { draft, expansion, rowSpans, treadleOfStep, wefts } = woven;
  const next: ShuttleSide[] = wefts.map((_, weft) => first[weft] ?? "left");
  return liftWork(draft).rows.map(({ drawn, pulled, released }, i): CardRow => {
    const sides: (ShuttleSide | undefined)[] = wefts.map(() => undefined);
    const treadles: number[] = [];
    const weftOfPick: number[] = [];
    for (let pick = rowSpans[i]!.start; pick < rowSpans[i]!.end; pick++) {
      const step = expansion.stepOfPick[pick]!;
      const weft = woven.weftOfPick[pick]!;
      sides[weft] ??= next[weft]!;
      next[weft] = next[weft] === "left" ? "right" : "left";
      treadles.push(treadleOfStep[step]! + 1);
      weftOfPick.push(weft);
    }
    return { row: i + 1, drawn, pulled, released, treadles, wefts: weftOfPick, sides };
  });
}

/** Rows with equal keys are woven alike, however the handles come to be drawn. */
export function cardKey({ drawn, treadles, wefts, sides }: CardRow): string {
  return [drawn, treadles, wefts, sides].map((part) => part.join(" ")).join("|");
}
