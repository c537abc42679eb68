/** Where the weaver is, and how she gets on. Nothing here knows of a page. */
import type { FollowPiece, FollowPlan } from "../plan/types.js";

/** Where the weaver is on the warp. */
export interface WarpPlace {
  /** Which piece in weaving order, from 0: a piece woven four times comes four times. */
  readonly turn: number;
  /** Picks woven of this piece. */
  readonly woven: number;
  /** Picks are being taken out, until so many are left. */
  readonly until?: number;
}

/** A piece in weaving order. */
export interface Turn {
  /** What is woven. */
  readonly piece: FollowPiece;
  /** Which of the pieces of this name it is, from 1. */
  readonly time: number;
  /** Picks of the piece. */
  readonly picks: number;
}

/**
 * The pieces one after the other as they are woven.
 * @param plan the plan, as `followPlan` makes it
 * @example turnsOf(plan).length // 2
 */
export function turnsOf({ pieces }: FollowPlan): readonly Turn[] {
  return pieces.flatMap((piece) => {
    const picks = piece.picks.reduce((sum, row) => sum + row, 0);
    return Array.from({ length: piece.count }, (_, i) => ({ piece, time: i + 1, picks }));
  });
}

/** Before the first pick. */
export const START: WarpPlace = { turn: 0, woven: 0 };

/**
 * One pick on; after the last of a piece, the next piece. Where picks are being taken out, one more is out.
 * @param plan the plan that is woven
 * @param place where the weaver is
 * @example forward(plan, { turn: 0, woven: 3 }) // { turn: 0, woven: 4 }
 */
export function forward(plan: FollowPlan, place: WarpPlace): WarpPlace {
  const { turn, woven, until } = place;
  if (until !== undefined) {
    const left = woven - 1;
    return left <= until ? { turn, woven: until } : { turn, woven: left, until };
  }
  const turns = turnsOf(plan);
  if (woven < turns[turn]!.picks) return { turn, woven: woven + 1 };
  return turn + 1 < turns.length ? { turn: turn + 1, woven: 0 } : place;
}

/**
 * One pick back, for a press too many; before the first of a piece, the end of the one before. Where picks are being
 * taken out, the last one is in again.
 * @param plan the plan that is woven
 * @param place where the weaver is
 * @example back(plan, { turn: 0, woven: 3 }) // { turn: 0, woven: 2 }
 */
export function back(plan: FollowPlan, place: WarpPlace): WarpPlace {
  const { turn, woven, until } = place;
  const turns = turnsOf(plan);
  if (until !== undefined) {
    return woven < turns[turn]!.picks ? { turn, woven: woven + 1, until } : place;
  }
  if (woven > 0) return { turn, woven: woven - 1 };
  return turn > 0 ? { turn: turn - 1, woven: turns[turn - 1]!.picks } : place;
}

/**
 * To the first pick of the row after the one that is being woven, or to the end of the piece.
 * @param plan the plan that is woven
 * @param place where the weaver is
 * @example forwardRow(plan, { turn: 0, woven: 3 }) // { turn: 0, woven: 4 }
 */
export function forwardRow(plan: FollowPlan, place: WarpPlace): WarpPlace {
  const { piece, picks } = turnsOf(plan)[place.turn]!;
  if (place.until !== undefined || place.woven >= picks) return forward(plan, place);
  const { row, pick } = rowOf(piece, place.woven);
  return { turn: place.turn, woven: place.woven - pick + piece.picks[row]! };
}

/**
 * To the first pick of the row that is being woven, or of the row before where none of it is woven yet.
 * @param plan the plan that is woven
 * @param place where the weaver is
 * @example backRow(plan, { turn: 0, woven: 6 }) // { turn: 0, woven: 4 }
 */
export function backRow(plan: FollowPlan, place: WarpPlace): WarpPlace {
  if (place.until !== undefined || place.woven === 0) return back(plan, place);
  const { piece } = turnsOf(plan)[place.turn]!;
  return { turn: place.turn, woven: place.woven - 1 - rowOf(piece, place.woven - 1).pick };
}

/** The row of a pick, and which of the row's picks it is; all from 0. */
export function rowOf({ picks }: FollowPiece, pick: number): { readonly row: number; readonly pick: number } {
  let first = 0;
  for (let row = 0; row < picks.length; row++) {
    if (pick < first + picks[row]!) return { row, pick: pick - first };
    first += picks[row]!;
  }
  return { row: picks.length, pick: 0 };
}

/** The first pick of a row, all from 0. */
export function firstPickOf({ picks }: FollowPiece, row: number): number {
  return picks.slice(0, row).reduce((sum, count) => sum + count, 0);
}

/**
 * Begins to take picks out, from where the weaver is down to `until` picks.
 * @param place where the weaver is
 * @param until how many picks of the piece are to stay, 0 for none
 * @returns the same place where nothing is woven past `until`
 * @example takeOut({ turn: 0, woven: 9 }, 4) // { turn: 0, woven: 9, until: 4 }
 */
export function takeOut({ turn, woven }: WarpPlace, until: number): WarpPlace {
  return until < woven ? { turn, woven, until: Math.max(0, until) } : { turn, woven };
}

/**
 * A place that was written down, made one of this plan: past the end of it is at its end.
 * @example placeWithin(plan, { turn: 99, woven: 1 }).turn // 1
 */
export function placeWithin(plan: FollowPlan, { turn, woven, until }: WarpPlace): WarpPlace {
  const turns = turnsOf(plan);
  const whole = (value: number, most: number) =>
    Number.isFinite(value) ? Math.min(Math.max(0, Math.trunc(value)), most) : 0;
  const at = whole(turn, turns.length - 1);
  const picks = whole(woven, turns[at]!.picks);
  return until !== undefined && whole(until, picks) < picks
    ? { turn: at, woven: picks, until: whole(until, picks) }
    : { turn: at, woven: picks };
}
