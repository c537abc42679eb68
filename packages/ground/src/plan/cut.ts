import { commonDivisor } from "../arithmetic.js";
import { soundCount } from "../size.js";
import type { Ground } from "../types.js";

/** How the figure lies on the ground. */
export interface FigureSize {
  /** Ends in a unit; left out, a whole repeat of the threading. */
  readonly unitEnds?: number;
  /** Picks for which a row is held; left out, a whole round of the steps. */
  readonly picksPerRow?: number;
}

/** Pairs of neighbouring interlacements over all borders of one direction, drawn to undrawn and undrawn to drawn. */
export interface BorderCut {
  /** Pairs of which one is raised and the other lowered. */
  readonly cutting: number;
  /** Pairs that are both raised, or both lowered. */
  readonly open: number;
  /** The part that cuts, from 0 to 1. */
  readonly share: number;
}

/** How well the drawn and the undrawn weave cut each other, counted once over every kind of border that can come. */
export interface GroundCut {
  /** Borders between units: pairs of neighbouring ends, pick by pick. */
  readonly sideways: BorderCut;
  /** Borders between rows: pairs of neighbouring picks, end by end. */
  readonly lengthways: BorderCut;
}

/**
 * The cut of a ground: at every place of the repeat where a unit or a row can end, and both ways round.
 * @param ground the raise and sink plan
 * @param size ends in a unit, picks in a row
 * @throws {GroundError} `bad-size` when a unit has no ends or a row no picks
 * Derived from the model: of an undrawn end on shaft a beside a drawn one on shaft b, the pair cuts on a pick when both or
 * neither are bound there.
 * @example cutOf(groundFromWeave("satin 5 step 2")).sideways // { cutting: 8, open: 2, share: 0.8 }
 */
export function cutOf(ground: Ground, size: FigureSize = {}): GroundCut {
  const { threading, steps } = ground;
  const ends = soundCount(size.unitEnds ?? threading.length, "the number of ends in a unit");
  const picks = soundCount(size.picksPerRow ?? steps.length, "the number of picks in a row");
  const raised = steps.map(({ raise }) => new Set(raise));
  const sunk = steps.map(({ sink }) => new Set(sink));
  const undrawn = (end: number, pick: number) => raised[pick]!.has(threading[end]!);
  const drawn = (end: number, pick: number) => undrawn(end, pick) || !sunk[pick]!.has(threading[end]!);

  let side = 0;
  const sideBorders = placesOf(threading.length, ends);
  for (const [end, next] of sideBorders) {
    for (let pick = 0; pick < steps.length; pick++) {
      if (undrawn(end, pick) === drawn(next, pick)) side += 1;
      if (drawn(end, pick) === undrawn(next, pick)) side += 1;
    }
  }
  let length = 0;
  const lengthBorders = placesOf(steps.length, picks);
  for (const [pick, next] of lengthBorders) {
    for (let end = 0; end < threading.length; end++) {
      if (undrawn(end, pick) === drawn(end, next)) length += 1;
      if (drawn(end, pick) === undrawn(end, next)) length += 1;
    }
  }
  return {
    sideways: borderCut(side, 2 * sideBorders.length * steps.length),
    lengthways: borderCut(length, 2 * lengthBorders.length * threading.length),
  };
}

/**
 * Whether every pair at every border cuts.
 * @param cut what `cutOf` counted
 * @example isClean(cutOf(groundFromWeave("satin 8 step 3"))) // true
 */
export function isClean(cut: GroundCut): boolean {
  return cut.sideways.open + cut.lengthways.open === 0;
}

/** Borders of which `open` pairs of `pairs` do not cut. */
export function borderCut(open: number, pairs: number): BorderCut {
  return { cutting: pairs - open, open, share: (pairs - open) / pairs };
}

/** The places in a repeat where something of `size` threads can end: the last thread before each border and the first after. */
function placesOf(repeat: number, size: number): [number, number][] {
  const every = commonDivisor(size, repeat);
  return Array.from({ length: repeat / every }, (_, i) => [(i + 1) * every - 1, ((i + 1) * every) % repeat]);
}
