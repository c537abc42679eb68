/**
 * Mends by turning squares. A fault stays as it is unless one of the squares it lies on is turned, so the search takes one
 * fault after the other and tries its squares, fewest squares turned first (E. W. Dijkstra, "A note on two problems in
 * connexion with graphs", Numerische Mathematik 1, 1959): the first draft without a fault that makes nothing else worse
 * turns as few squares as can be. Where that takes too long, the best turn is taken each time instead.
 */

import { applyChange, applyChanges, type Change, draftSize, type UnitDraft } from "@drawcord/units";
import type { Watch } from "../search.js";
import { isDrawn, squaresTurned } from "./turned.js";

/** Interlacements looked at, over all drafts tried, before a search is given up. */
const MOST_LOOKED_AT = 2 ** 18;

/** Drafts tried in any case, however large. */
const LEAST_TRIED = 50;

/** Turns of one fault that a quick mend compares. */
const MOST_COMPARED = 12;

/** In a draft of up to so many squares, a turn is looked for anywhere. */
const SMALL = 32;

/** A square by its unit and its row, from 0. */
export type Square = readonly [unit: number, row: number];

/** What is left to mend in a draft. */
export interface Faults {
  /** How much it is: 0 where there is nothing. */
  readonly much: number;
  /** The squares of one fault: of them one must be turned, or else more of the draft. */
  readonly squares: readonly Square[];
  /** At least so many squares have to be turned yet. */
  readonly least: number;
}

/** How a fault is looked for, and whether a draft without it will do. */
export interface SquareSearch {
  readonly faultsOf: (draft: UnitDraft) => Faults;
  readonly accept: (mended: UnitDraft) => boolean;
  /** Whether squares apart from a fault may mend it too; in a small draft they are then tried. */
  readonly anywhere?: boolean;
  /** Drafts tried at most, however small. */
  readonly mostTried: number;
  /** Told how far the search has come. */
  readonly watch: Watch;
  /** Squares turned at most; default: as many as there are. */
  readonly mostTurned?: number;
}

/** How many drafts of this size may be tried, `most` at most. */
export function drafts(draft: UnitDraft, most: number): number {
  const { ends, picks } = draftSize(draft);
  return Math.min(most, Math.max(LEAST_TRIED, MOST_LOOKED_AT / Math.max(1, ends * picks)));
}

/** A draft on the way, and the changes that led to it. */
interface Attempt {
  readonly draft: UnitDraft;
  readonly changes: readonly Change[];
}

/** The fewest squares turned after which there is no fault; nothing where none do, or finding them takes too long. */
export function leastTurned(draft: UnitDraft, search: SquareSearch): readonly Change[] | undefined {
  const { accept, anywhere = false, faultsOf, mostTurned = Number.POSITIVE_INFINITY, watch } = search;
  // Attempts by how many squares they turn.
  const waiting: Attempt[][] = [[{ draft, changes: [] }]];
  const seen = new Set<string>();
  const most = drafts(draft, search.mostTried);
  let tried = 0;
  for (let turned = 0; turned < waiting.length && turned <= mostTurned; turned++) {
    for (const attempt of waiting[turned] ?? []) {
      if (++tried > most || watch(tried, most)) return undefined;
      const { least, much, squares } = faultsOf(attempt.draft);
      if (turned + least > mostTurned) continue;
      if (much === 0 && turned > 0 && accept(attempt.draft)) return attempt.changes;
      // What is free of faults but makes something else worse may need another turn anywhere.
      const everywhere = allSquares(attempt.draft);
      const next = much === 0 || (anywhere && everywhere.length > 0) ? everywhere : squares;
      for (const change of turnsOfAll(attempt.draft, next)) {
        const mended = applyChange(attempt.draft, change);
        const key = keyOf(draft, mended);
        if (seen.has(key)) continue;
        seen.add(key);
        const cost = Math.max(squaresTurned(draft, mended), turned);
        waiting[cost] ??= [];
        waiting[cost].push({ draft: mended, changes: [...attempt.changes, change] });
      }
    }
  }
  return undefined;
}

/** Turns one square after the other, each time the one that leaves the least faults. */
export function quicklyTurned(
  draft: UnitDraft,
  { accept, faultsOf, mostTried, mostTurned = Number.POSITIVE_INFINITY, watch }: SquareSearch,
): readonly Change[] | undefined {
  let mended = draft;
  const changes: Change[] = [];
  const most = drafts(draft, mostTried);
  for (let tried = 0; tried < most && !watch(tried, most); ) {
    const { least, much, squares } = faultsOf(mended);
    if (squaresTurned(draft, mended) + least > mostTurned) return undefined;
    if (much === 0) return accept(mended) ? withoutIdle(draft, changes, accept) : undefined;
    let best: { readonly much: number; readonly change: Change } | undefined;
    for (const change of turnsOfAll(mended, someOf(squares))) {
      tried++;
      const left = faultsOf(applyChange(mended, change)).much;
      if (left < (best?.much ?? much)) best = { much: left, change };
    }
    if (best === undefined) return undefined;
    changes.push(best.change);
    mended = applyChange(mended, best.change);
  }
  return undefined;
}

/** Changes without those that later ones made needless. */
function withoutIdle(
  draft: UnitDraft,
  changes: readonly Change[],
  accept: SquareSearch["accept"],
): readonly Change[] {
  return changes.reduce<readonly Change[]>((needed, change) => {
    const others = needed.filter((one) => one !== change);
    return others.length > 0 && accept(applyChanges(draft, others)) ? others : needed;
  }, changes);
}

/** Whether any of the squares can be turned. */
export function canTurn(draft: UnitDraft, squares: readonly Square[]): boolean {
  return squares.some(([unit]) => draft.threading[unit]!.length > 0);
}

/** The squares of a stretch of units and rows, from 0 and with the last. */
export function squaresIn(
  [firstUnit, lastUnit]: readonly [number, number],
  [firstRow, lastRow]: readonly [number, number],
): Square[] {
  const rows = Array.from({ length: lastRow - firstRow + 1 }, (_, row) => firstRow + row);
  return Array.from({ length: lastUnit - firstUnit + 1 }, (_, unit) => firstUnit + unit).flatMap((unit) =>
    rows.map((row): Square => [unit, row]),
  );
}

function allSquares({ threading, lifts }: UnitDraft): Square[] {
  if (threading.length * lifts.length > SMALL) return [];
  return squaresIn([0, threading.length - 1], [0, lifts.length - 1]);
}

/** Evenly spread, at most as many as a quick mend compares. */
function someOf(squares: readonly Square[]): Square[] {
  const step = Math.max(1, squares.length / MOST_COMPARED);
  return Array.from(
    { length: Math.min(squares.length, MOST_COMPARED) },
    (_, i) => squares[Math.floor(i * step)]!,
  );
}

function turnsOfAll(draft: UnitDraft, squares: readonly Square[]): Change[] {
  return squares.flatMap((square) => turnsOf(draft, square));
}

/** The ways to turn a square: draw any of its unit's shafts, or leave all of them down. A static unit has none. */
function turnsOf({ threading, lifts }: UnitDraft, [unit, row]: Square): Change[] {
  const shafts = threading[unit]!;
  const lift = lifts[row]!;
  if (isDrawn(shafts, lift)) {
    return [{ change: "leave", row: row + 1, shafts: shafts.filter((shaft) => lift.includes(shaft)) }];
  }
  return shafts.map((shaft) => ({ change: "draw", row: row + 1, shafts: [shaft] }));
}

/** The rows that differ, as a name for the draft. */
function keyOf(before: UnitDraft, after: UnitDraft): string {
  return after.lifts
    .flatMap((lift, row) => (lift === before.lifts[row] ? [] : [`${row}: ${lift.join(" ")}`]))
    .join("; ");
}
