/** What is to be done at a place: the pick to weave, or to take out, with all that the loom must do for it. */
import type { ShaftSet } from "@drawcord/ground";
import type { FollowBlock, FollowLift, FollowPiece, FollowPlan } from "../plan/types.js";
import { rowOf, turnsOf, type WarpPlace } from "./place.js";

/** One pick at the loom. Everything counts from 0 but handles and treadles. */
export interface PickStep {
  /** Whether the pick is taken out instead of woven. */
  readonly out: boolean;
  /** The pick of its piece, from 0. */
  readonly pickOfPiece: number;
  /** The row of its piece, from 0. */
  readonly row: number;
  /** The pick of its row, from 0. */
  readonly pickOfRow: number;
  /** Picks in its row. */
  readonly picksOfRow: number;
  /** The pattern shafts that are drawn, from 1. */
  readonly lift: FollowLift;
  /** Handles to draw now; none but where a row begins. */
  readonly draw: ShaftSet;
  /** Handles to let go now. */
  readonly letGo: ShaftSet;
  /** The treadle, from 1; 0 where none is trodden. */
  readonly treadle: number;
  /** Which of the plan's wefts. */
  readonly weft: number;
  /** The side from which the shuttle is thrown. */
  readonly from: "left" | "right";
  /** The block of the row. */
  readonly block?: FollowBlock;
}

/**
 * The pick at a place; none at the end of a piece.
 * @param plan the plan that is woven
 * @param place where the weaver is
 * @example stepAt(plan, { turn: 0, woven: 0 }).draw // [1, 3]
 */
export function stepAt(plan: FollowPlan, place: WarpPlace): PickStep | undefined {
  const { piece, picks } = turnsOf(plan)[place.turn]!;
  const out = place.until !== undefined;
  const pick = out ? place.woven - 1 : place.woven;
  if (pick < 0 || pick >= picks) return undefined;
  const { row, pick: pickOfRow } = rowOf(piece, pick);
  const picksOfRow = piece.picks[row]!;
  const lift = liftOf(piece, row);
  // Going back, a row begins with its last pick, and the hands come from the row after it.
  const begins = out ? pickOfRow === picksOfRow - 1 : pickOfRow === 0;
  const before = liftOf(piece, out ? row + 1 : row - 1).handles;
  const block = piece.blocks.find(({ start, rows }) => row >= start && row < start + rows);
  return {
    out,
    pickOfPiece: pick,
    row,
    pickOfRow,
    picksOfRow,
    lift,
    draw: begins ? without(lift.handles, before) : [],
    letGo: begins ? without(before, lift.handles) : [],
    treadle: treadleOf(piece, pick),
    weft: weftOf(piece, pick),
    from: sideOf(plan, piece, pick),
    ...(block === undefined ? {} : { block }),
  };
}

/** The lift of a row; outside the piece every handle is at rest. */
function liftOf({ lifts, rows }: FollowPiece, row: number): FollowLift {
  const index = rows[row];
  return index === undefined ? { handles: [], units: 0 } : lifts[index]!;
}

function without(these: ShaftSet, those: ShaftSet): ShaftSet {
  const gone = new Set(those);
  return these.filter((handle) => !gone.has(handle));
}

/** The treadle of a pick, from 1; 0 where none is trodden. */
export function treadleOf({ treadling }: FollowPiece, pick: number): number {
  return treadling[pick % treadling.length]!;
}

/** Which of the plan's wefts a pick is woven with. */
export function weftOf({ thrown }: FollowPiece, pick: number): number {
  return thrown[pick % thrown.length]!;
}

/** The side of a pick: each weft has a shuttle of its own, which lies where its last pick ended. */
function sideOf({ firstFrom }: FollowPlan, piece: FollowPiece, pick: number): "left" | "right" {
  const { thrown } = piece;
  const weft = weftOf(piece, pick);
  const ofWeft = (until: number) => thrown.slice(0, until).filter((one) => one === weft).length;
  const before = Math.floor(pick / thrown.length) * ofWeft(thrown.length) + ofWeft(pick % thrown.length);
  const first = firstFrom[weft]!;
  const other = first === "left" ? "right" : "left";
  return before % 2 === 0 ? first : other;
}
