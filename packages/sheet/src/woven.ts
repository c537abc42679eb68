import type { GroundStep, ShaftSet } from "@drawcord/ground";
import {
  type Expansion,
  endsOfEachUnit,
  expand,
  loomNeeds,
  picksOfEachRow,
  type UnitDraft,
} from "@drawcord/units";
import { findRepeat } from "./repeat.js";

/** First and one past the last, from 0. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** What one treadle does to the ground harness. */
export type Treadle = Pick<GroundStep, "raise" | "sink">;

/** A draft worked out for drawing: every end and pick, and where units, rows and repeats lie among them. */
export interface Woven {
  readonly draft: UnitDraft;
  readonly expansion: Expansion;
  readonly ends: number;
  readonly picks: number;
  /** Ends of each unit. */
  readonly unitSpans: readonly Stretch[];
  /** Picks of each row. */
  readonly rowSpans: readonly Stretch[];
  /** Ground shaft of each end, from 1. */
  readonly shaftOfEnd: readonly number[];
  /** Unlike steps of the treadling in the order in which they first come: treadle 1 first. */
  readonly treadles: readonly Treadle[];
  /** The treadle, from 0, of each step of the treadling; -1 where none is trodden and the figure alone has a say. */
  readonly treadleOfStep: readonly number[];
  /** The names of the wefts of all pieces, in the order of their first picks; "weft" where nothing else is said. */
  readonly wefts: readonly string[];
  /** The weft of each pick, from 0. */
  readonly weftOfPick: readonly number[];
  /** Whether every unit has a cord of its own. */
  readonly singleUnit: boolean;
  /** Pattern shafts, the highest in use or threaded. */
  readonly patternShafts: number;
  /** One repeat of the figure, in units and in rows; all of them where nothing repeats. */
  readonly repeat: {
    readonly units: Stretch;
    readonly rows: Stretch;
    readonly across: number;
    readonly along: number;
  };
}

/** What the pieces on a warp have together, and how the wefts of one of them go. */
export interface Warp {
  /** The ground steps of all pieces: their treadles hang at the loom together. */
  readonly steps: readonly GroundStep[];
  /** The wefts of the pieces before, so that a letter stands for the same weft in all. */
  readonly wefts: readonly string[];
  /** The weft of a pick, from 0; default by the steps of the ground. */
  readonly weftOfPick?: (pick: number) => string;
}

/**
 * Works a draft out for drawing.
 * @throws {UnitsError} for a draft that cannot be expanded
 */
export function weave(draft: UnitDraft, warp: Warp = { steps: draft.ground.steps, wefts: [] }): Woven {
  const expansion = expand(draft);
  const { drawdown } = expansion;
  const left = draft.selvedge?.left ?? [];
  const unitSpans = spansOf(endsOfEachUnit(draft), left.length);
  const rowSpans = spansOf(picksOfEachRow(draft), 0);
  const { treadles, treadleOfStep } = treadlesOf(draft.ground.steps, warp.steps);
  const { steps } = draft.ground;
  const names = Array.from(
    expansion.stepOfPick,
    (step, pick) => warp.weftOfPick?.(pick) ?? steps[step]!.weft ?? "weft",
  );
  const wefts = [...new Set([...warp.wefts, ...names])];
  return {
    draft,
    expansion,
    ends: drawdown.columns,
    picks: drawdown.rows,
    unitSpans,
    rowSpans,
    shaftOfEnd: shaftsOfEnds(draft, drawdown.columns),
    treadles,
    treadleOfStep,
    wefts,
    weftOfPick: names.map((name) => wefts.indexOf(name)),
    singleUnit: loomNeeds(draft).singleUnitDraw,
    patternShafts: Math.max(0, ...highest(draft.threading), ...highest(draft.lifts)),
    repeat: repeatOf(draft, unitSpans, rowSpans),
  };
}

/** One entry a unit or row, whether the draft gives one number for all or a list. */
function spansOf(counts: readonly number[], first: number): Stretch[] {
  let end = first;
  return counts.map((count) => {
    const start = end;
    end += count;
    return { start, end };
  });
}

function shaftsOfEnds({ ground, selvedge }: UnitDraft, ends: number): number[] {
  const left = selvedge?.left ?? [];
  const right = selvedge?.right ?? [];
  const inside = ends - left.length - right.length;
  const middle = Array.from({ length: inside }, (_, i) => ground.threading[i % ground.threading.length]!);
  return [...left, ...middle, ...right];
}

function treadlesOf(
  own: readonly GroundStep[],
  steps: readonly GroundStep[],
): { treadles: Treadle[]; treadleOfStep: number[] } {
  const treadles: Treadle[] = [];
  const index = new Map<string, number>();
  const keyOf = ({ raise, sink }: GroundStep) => `${raise.join(" ")}/${sink.join(" ")}`;
  for (const step of steps) {
    const { raise, sink } = step;
    if (raise.length + sink.length === 0 || index.has(keyOf(step))) continue;
    index.set(keyOf(step), treadles.push({ raise, sink }) - 1);
  }
  return { treadles, treadleOfStep: own.map((step) => index.get(keyOf(step)) ?? -1) };
}

function* highest(sets: readonly ShaftSet[]): Iterable<number> {
  let most = 0;
  for (const set of sets) most = Math.max(most, set.at(-1) ?? 0);
  yield most;
}

function repeatOf(draft: UnitDraft, units: readonly Stretch[], rows: readonly Stretch[]): Woven["repeat"] {
  const across = findRepeat(
    draft.threading.map((shafts, unit) => `${shafts.join("+")}:${lengthOf(units[unit]!)}`),
  );
  const along = findRepeat(rowKeys(draft, rows));
  return {
    units: oneOf(across, units.length),
    rows: oneOf(along, rows.length),
    across: across?.times ?? 1,
    along: along?.times ?? 1,
  };
}

/** Rows with equal keys draw the same shafts for as many picks. */
function rowKeys(draft: UnitDraft, rows: readonly Stretch[]): string[] {
  return draft.lifts.map((lift, row) => `${lift.join(" ")}:${lengthOf(rows[row]!)}`);
}

function lengthOf({ start, end }: Stretch): number {
  return end - start;
}

function oneOf(
  span: { readonly start: number; readonly period: number } | undefined,
  length: number,
): Stretch {
  return span === undefined
    ? { start: 0, end: length }
    : { start: span.start, end: span.start + span.period };
}
