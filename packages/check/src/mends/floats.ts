/**
 * Mends floats by turning squares. A float stays as long as it is unless one of the squares it lies on is turned, so the
 * search takes one float after the other and tries its squares, fewest squares turned first (E. W. Dijkstra, "A note on
 * two problems in connexion with graphs", Numerische Mathematik 1, 1959): the first draft without a long float that makes
 * nothing else worse turns as few squares as can be. Where that takes too long, the best turn is taken each time instead.
 */
import { draftSize, expand, type UnitDraft } from "@drawcord/units";
import type { Cloth } from "../cloth.js";
import { allowedFloat } from "../float-limit.js";
import { eachLongRun } from "../measure/long-runs.js";
import { measureDraft } from "../measure/measure.js";
import type { CheckOptions } from "../options.js";
import { applyChange, type Change } from "./change.js";
import { missingTie } from "./ties.js";
import { isDrawn, squaresTurned } from "./turned.js";

/** Interlacements looked at, over all drafts tried, before a search is given up. */
const MOST_LOOKED_AT = 2 ** 18;

/** Drafts tried in any case, however large, and at most, however small. */
const TRIED = { least: 50, most: 2000 };

/** Turns of one float that a quick mend compares. */
const MOST_COMPARED = 12;

/** In a draft of up to so many squares, a turn is looked for anywhere. */
const SMALL = 32;

/** A draft on the way, and the changes that led to it. */
interface Attempt {
  readonly draft: UnitDraft;
  readonly changes: readonly Change[];
  readonly turned: number;
}

/**
 * The changes that leave no float too long: a tie that is missing, or else as few squares turned as can be.
 * @param accept whether a draft without long floats will do
 */
export function mendFloats(
  draft: UnitDraft,
  options: CheckOptions,
  accept: (mended: UnitDraft) => boolean,
): readonly Change[] | undefined {
  const tie = missingTie(draft);
  if (tie !== undefined && accept(applyChange(draft, tie))) return [tie];
  // A float that lies on no square that can be turned stays.
  if (longFloats(draft, options).some(({ squares }) => turnsOfAll(draft, squares).length === 0))
    return undefined;
  const { ends, picks } = draftSize(draft);
  const most = Math.min(TRIED.most, Math.max(TRIED.least, MOST_LOOKED_AT / (ends * picks)));
  return leastMend(draft, options, accept, most) ?? quickMend(draft, options, accept, most);
}

function leastMend(
  draft: UnitDraft,
  options: CheckOptions,
  accept: (mended: UnitDraft) => boolean,
  most: number,
): readonly Change[] | undefined {
  // Attempts by how many squares they turn.
  const waiting: Attempt[][] = [[{ draft, changes: [], turned: 0 }]];
  const seen = new Set<string>();
  let tried = 0;
  for (let turned = 0; turned < waiting.length; turned++) {
    for (const attempt of waiting[turned] ?? []) {
      if (++tried > most) return undefined;
      const { faults, squares } = worstPlaced(longFloats(attempt.draft, options));
      if (faults === 0 && turned > 0 && accept(attempt.draft)) return attempt.changes;
      // What is free of long floats but makes something else worse may need another turn anywhere.
      const next = faults === 0 ? allSquares(attempt.draft) : squares;
      for (const change of turnsOfAll(attempt.draft, next)) {
        const mended = applyChange(attempt.draft, change);
        const key = keyOf(draft, mended);
        if (seen.has(key)) continue;
        seen.add(key);
        const cost = Math.max(squaresTurned(draft, mended), turned);
        waiting[cost] ??= [];
        waiting[cost].push({ draft: mended, changes: [...attempt.changes, change], turned: cost });
      }
    }
  }
  return undefined;
}

/** Turns one square after the other, each time the one that leaves the fewest long floats. */
function quickMend(
  draft: UnitDraft,
  options: CheckOptions,
  accept: (mended: UnitDraft) => boolean,
  most: number,
): readonly Change[] | undefined {
  let mended = draft;
  const changes: Change[] = [];
  for (let tried = 0; tried < most; ) {
    const { faults, squares } = worstPlaced(longFloats(mended, options));
    if (faults === 0) return accept(mended) ? changes : undefined;
    let best: { readonly faults: number; readonly change: Change } | undefined;
    for (const change of turnsOfAll(mended, someOf(squares))) {
      tried++;
      const left = longFloats(applyChange(mended, change), options).length;
      if (left < (best?.faults ?? faults)) best = { faults: left, change };
    }
    if (best === undefined) return undefined;
    changes.push(best.change);
    mended = applyChange(mended, best.change);
  }
  return undefined;
}

/** A square by its unit and its row, from 0. */
type Square = readonly [unit: number, row: number];

/** A float that is too long, by the squares it lies on. */
interface LongFloat {
  readonly squares: readonly Square[];
}

function longFloats(draft: UnitDraft, options: CheckOptions): LongFloat[] {
  const cloth = measureDraft(draft, expand(draft), options);
  const floats: LongFloat[] = [];
  const warp = allowedFloat(options, "warp").threads;
  const wefts = cloth.wefts.map((weft) => allowedFloat(options, "weft", weft).threads);
  for (const state of [0, 1] as const) {
    eachLongRun(
      cloth.warp,
      state,
      () => warp,
      (end, first, last) => floats.push({ squares: squaresOf(cloth, end, end, first, last) }),
    );
    eachLongRun(
      cloth.weft,
      state,
      (pick) => wefts[cloth.weftOfPick[pick]!]!,
      (pick, first, last) => floats.push({ squares: squaresOf(cloth, first, last, pick, pick) }),
    );
  }
  return floats;
}

/** How many floats there are, and the squares of the one that lies on the fewest: it leaves the least to try. */
function worstPlaced(floats: readonly LongFloat[]): { faults: number; squares: readonly Square[] } {
  let squares: readonly Square[] = [];
  floats.forEach((float, i) => {
    if (i === 0 || float.squares.length < squares.length) squares = float.squares;
  });
  return { faults: floats.length, squares };
}

/** The squares of a stretch of ends and picks; a selvedge has none. */
function squaresOf(
  { plan }: Cloth,
  firstEnd: number,
  lastEnd: number,
  firstPick: number,
  lastPick: number,
): Square[] {
  if (plan === undefined) return [];
  const units = new Set(plan.unitOfEnd.subarray(firstEnd, lastEnd + 1));
  units.delete(-1);
  const rows = [...new Set(plan.rowOfPick.subarray(firstPick, lastPick + 1))];
  return [...units].flatMap((unit) => rows.map((row): Square => [unit, row]));
}

function allSquares({ threading, lifts }: UnitDraft): Square[] {
  if (threading.length * lifts.length > SMALL) return [];
  return threading.flatMap((_, unit) => lifts.map((__, row): Square => [unit, row]));
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
