import type { ShaftDraft } from "@drawcord/check";
import { drawdownOfDraft, shaftsMoved } from "@drawcord/check";
import type { ShaftSet } from "@drawcord/ground";
import type { UnitDraft } from "@drawcord/units";
import { pieces } from "../pictures/pieces.js";
import { findRepeat, type RepeatSpan } from "../repeat.js";
import { type Stretch, type Woven, weave } from "../woven.js";

/** Threads that are drawn as one block where a cloth is too fine for threads. */
const BLOCK = 4;

/**
 * A plain draft as a cloth to draw: all its ends on a ground harness that has a shaft for each kind of end, and no unit drawn.
 * Its units and rows are stretches of threads that no repeat begins within.
 */
export function wovenOf(draft: ShaftDraft): Woven {
  const drawdown = drawdownOfDraft(draft);
  const moved = shaftsMoved(draft);
  const [ends, picks] = [drawdown.columns, drawdown.rows];
  const endKeys = draft.threading.map((shafts) => shafts.join("+"));
  const kinds = [...new Set(endKeys)];
  const first = kinds.map((kind) => endKeys.indexOf(kind));
  const [across, along] = [findRepeat(endKeys), findRepeat(moved.map((shafts) => shafts.join(" ")))];
  const [units, rows] = [spans(ends, across), spans(picks, along)];
  const raised = (pick: number): ShaftSet =>
    first.flatMap((end, kind) => (drawdown.get(pick, end) ? [kind + 1] : []));
  const plan: UnitDraft = {
    ground: {
      shafts: kinds.length,
      threading: endKeys.map((key) => kinds.indexOf(key) + 1),
      steps: Array.from({ length: picks }, (_, pick) => ({ raise: raised(pick), sink: [] })),
    },
    unitEnds: units.map(lengthOf),
    threading: units.map(() => []),
    lifts: rows.map(() => []),
    picksPerRow: rows.map(lengthOf),
  };
  return {
    ...weave(plan),
    repeat: {
      units: within(units, across),
      rows: within(rows, along),
      across: across?.times ?? 1,
      along: along?.times ?? 1,
    },
  };
}

/** All threads in stretches of at most a block, the edges of the repeats among theirs. */
function spans(length: number, repeat: RepeatSpan | undefined): Stretch[] {
  const cuts =
    repeat === undefined
      ? [0, length]
      : [0, ...Array.from({ length: repeat.times + 1 }, (_, i) => repeat.start + i * repeat.period), length];
  return cuts.slice(1).flatMap((end, i) => {
    const start = cuts[i]!;
    if (end === start) return [];
    return pieces(end - start, BLOCK).map((one) => ({ start: start + one.start, end: start + one.end }));
  });
}

/** The stretches of the first repeat; all where nothing repeats. */
function within(all: readonly Stretch[], repeat: RepeatSpan | undefined): Stretch {
  if (repeat === undefined) return { start: 0, end: all.length };
  return {
    start: all.findIndex(({ start }) => start === repeat.start),
    end: all.findIndex(({ end }) => end === repeat.start + repeat.period) + 1,
  };
}

function lengthOf({ start, end }: Stretch): number {
  return end - start;
}
