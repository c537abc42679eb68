/** Mends of floats that are too long: squares turned, or ties added to the ground that bind the float down. */

import { allowedFloat, type CheckOptions } from "@drawcord/check";
import {
  allowedOfGround,
  eachGroundFloat,
  eachLongRun,
  measureDraft,
  weftAllowances,
} from "@drawcord/check/measure";
import { applyChange, type Change, type Expansion, expand, type UnitDraft } from "@drawcord/units";
import type { Watch } from "../search.js";
import { canTurn, drafts, type Faults, leastTurned, quicklyTurned, type Square } from "./squares.js";

/** Drafts that a search tries at most. */
const MOST_TRIED = 2000;

/**
 * The changes that leave no float too long: as few squares turned as can be, or, where that cannot be told, the fewer of
 * squares and ties that do.
 * @param accept whether a draft without long floats will do
 * @param watch told how far the search has come
 */
export function mendFloats(
  draft: UnitDraft,
  options: CheckOptions,
  accept: (mended: UnitDraft) => boolean,
  watch: Watch,
): readonly Change[] | undefined {
  const search = {
    accept,
    watch,
    faultsOf: (one: UnitDraft) => longFloatsIn(one, options),
    mostTried: MOST_TRIED,
  };
  // A float that lies on no square that can be turned stays.
  const turnable = longFloats(draft, options).every((float) => canTurn(draft, float.squares));
  const least = turnable ? leastTurned(draft, search) : undefined;
  if (least !== undefined) return least;
  const turned = turnable ? quicklyTurned(draft, search) : undefined;
  const tied = tiedDown(draft, options, accept, watch);
  return tied !== undefined && (turned === undefined || tied.length < turned.length) ? tied : turned;
}

/** A float that is too long. */
interface LongFloat {
  /** The squares that it lies on. */
  readonly squares: readonly Square[];
  /** The ground shafts of its ends. */
  readonly shafts: ReadonlySet<number>;
  /** The steps of its picks, from 0. */
  readonly steps: ReadonlySet<number>;
  /** Whether its ends are raised. */
  readonly raised: boolean;
}

function longFloatsIn(draft: UnitDraft, options: CheckOptions): Faults {
  const floats = longFloats(draft, options);
  // The float that lies on the fewest squares leaves the least to try.
  let squares: readonly Square[] = [];
  floats.forEach((float, i) => {
    if (i === 0 || float.squares.length < squares.length) squares = float.squares;
  });
  return { much: floats.length, squares, least: 0 };
}

function longFloats(draft: UnitDraft, options: CheckOptions): LongFloat[] {
  const expansion = expand(draft);
  const cloth = measureDraft(draft, expansion, options);
  const floats: LongFloat[] = [];
  const warp = allowedFloat(options, "warp");
  const ofGround = allowedOfGround(cloth, warp).threads;
  const wefts = weftAllowances(cloth);
  for (const state of [0, 1] as const) {
    const keep = (ends: readonly number[], picks: readonly number[]) =>
      floats.push({
        squares: squaresOf(expansion, ends, picks),
        shafts: new Set(ends.map((end) => expansion.shaftOfEnd[end]!)),
        steps: new Set(picks.map((pick) => expansion.stepOfPick[pick]!)),
        raised: state === 1,
      });
    eachLongRun(
      cloth.warp,
      state,
      () => warp.threads,
      (end, first, last, length) => keep([end], passed(first, last, length)),
    );
    eachGroundFloat(cloth, state, ofGround, (end, first, last) =>
      keep([end], passed(first, last, last + 1 - first)),
    );
    eachLongRun(
      cloth.weft,
      state,
      (pick) => wefts.find(({ has }) => has(pick))!.allowed.threads,
      (pick, first, last, length) => keep(passed(first, last, length), [pick]),
    );
  }
  return floats;
}

/** The threads that a float passes; one that is longer than it is told goes on at the other side of the repeat. */
function passed(first: number, last: number, length: number): number[] {
  const here = last + 1 - first;
  return Array.from({ length }, (_, i) => (i < here ? first + i : i - here));
}

/** The squares of some ends and picks; a selvedge has none. */
function squaresOf(
  { rowOfPick, unitOfEnd }: Expansion,
  ends: readonly number[],
  picks: readonly number[],
): Square[] {
  const units = new Set(ends.map((end) => unitOfEnd[end]!));
  units.delete(-1);
  const rows = [...new Set(picks.map((pick) => rowOfPick[pick]!))];
  return [...units].flatMap((unit) => rows.map((row): Square => [unit, row]));
}

/** Ties added one after the other, each time the one that leaves the fewest long floats. */
function tiedDown(
  draft: UnitDraft,
  options: CheckOptions,
  accept: (mended: UnitDraft) => boolean,
  watch: Watch,
): readonly Change[] | undefined {
  let mended = draft;
  const changes: Change[] = [];
  const most = drafts(draft, MOST_TRIED);
  for (let tried = 0; tried < most && !watch(tried, most); ) {
    const [float, ...others] = longFloats(mended, options);
    if (float === undefined) return changes.length > 0 && accept(mended) ? changes : undefined;
    let best: { readonly left: number; readonly tie: Change } | undefined;
    for (const tie of tiesOver(mended, float)) {
      tried++;
      const left = longFloats(applyChange(mended, tie), options).length;
      if (left < (best?.left ?? 1 + others.length)) best = { left, tie };
    }
    if (best === undefined) return undefined;
    const { tie } = best;
    mended = applyChange(mended, tie);
    // A step that is tied twice is told as it is in the end.
    const same = changes.findIndex(
      (one) => one.change === "tie" && tie.change === "tie" && one.step === tie.step,
    );
    if (same < 0) changes.push(tie);
    else changes[same] = tie;
  }
  return undefined;
}

/** The ties that bind a float: one of its ends sunk, or raised, on one of its picks. */
function tiesOver({ ground }: UnitDraft, { raised, shafts, steps }: LongFloat): Change[] {
  return [...steps].flatMap((at) =>
    [...shafts].map((shaft): Change => {
      const { raise, sink } = ground.steps[at]!;
      const without = (set: readonly number[]) => set.filter((one) => one !== shaft);
      const within = (set: readonly number[]) => [...without(set), shaft].sort((a, b) => a - b);
      return raised
        ? { change: "tie", step: at + 1, raise: without(raise), sink: within(sink) }
        : { change: "tie", step: at + 1, raise: within(raise), sink: without(sink) };
    }),
  );
}
