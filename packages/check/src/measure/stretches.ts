/**
 * Floats, intersections and cuts along every thread of a draft, by the stretches in which the figure draws it and leaves
 * it. This is the checker's hot loop: a few steps for each border of the figure along each kind of thread, however many
 * interlacements lie between.
 *
 * Within a stretch the thread weaves one of its two ground lines. Only the stretch's first and its last run can be one
 * with a run of the stretch beside it; those are closed one by one. The runs between them are those of the ground line
 * from one of its changes to another, and are not even counted: where they begin, and where they end, a mark is left on
 * the line, and when all threads on that line are done, one pass adds up how often each of its runs was passed.
 */
import type { CutTally } from "../report.js";
import type { FigureLines } from "./figure-lines.js";
import { type GroundLines, groundLines } from "./ground-lines.js";
import type { Kinds } from "./kinds.js";
import type { Threads } from "./threads.js";

/** The threads of one system of a draft, by what decides them. */
export interface DraftThreads {
  /** Interlacements along each thread. */
  readonly length: number;
  /** Whether the last of them lies beside the first, as in a repeat. */
  readonly joined: boolean;
  /** Threads of one kind lie on the same squares and are moved alike. */
  readonly kinds: Kinds;
  readonly figure: FigureLines;
  /** For each thread its line of the figure. */
  readonly lineOf: Int32Array;
  /** For each thread what moves it: its treadle, or its ground shaft. */
  readonly moverOf: Int32Array;
  /** How a treadle, or a ground shaft, moves the interlacements along its threads (see ground-lines.ts). */
  readonly movedBy: (mover: number) => Uint8Array;
}

/** What was measured along the threads of a system. */
export interface Stretches {
  readonly threads: Threads;
  /** For each kind of thread, how many of its interlacements are raised. */
  readonly raised: Int32Array;
  /** Pairs of neighbours along the threads that the figure tells apart. */
  readonly cuts: CutTally;
  /** How many interlacements are drawn. */
  readonly drawn: number;
}

/** Where the measures of all threads go. */
interface StretchCounts {
  /** Lowered runs by length, and from `width` on raised ones. */
  readonly runs: Float64Array;
  readonly width: number;
  readonly changes: Int32Array;
  readonly longest: Int32Array;
  readonly raised: Int32Array;
  cutting: number;
  open: number;
  drawn: number;
}

/** Measures every thread of a system. */
export function measureStretches(system: DraftThreads): Stretches {
  const { length, kinds, moverOf, movedBy } = system;
  const count = kinds.first.length;
  const width = length + 1;
  const tally: StretchCounts = {
    runs: new Float64Array(2 * width),
    width,
    changes: new Int32Array(count),
    longest: new Int32Array(2 * count),
    raised: new Int32Array(count),
    cutting: 0,
    open: 0,
    drawn: 0,
  };
  const kindsMovedBy = new Map<number, number[]>();
  kinds.first.forEach((thread, kind) => {
    const mover = moverOf[thread]!;
    const alike = kindsMovedBy.get(mover);
    if (alike === undefined) kindsMovedBy.set(mover, [kind]);
    else alike.push(kind);
  });
  for (const [mover, moved] of kindsMovedBy) {
    const lines = groundLines(movedBy(mover));
    const marks = new Float64Array(2 * width);
    for (const kind of moved) measureKind(system, kind, lines, marks, tally);
    addMarked(lines, marks, tally);
  }
  const { runs, changes, longest, raised, cutting, open, drawn } = tally;
  return {
    threads: { raised: runs.subarray(width), lowered: runs.subarray(0, width), changes, longest },
    raised,
    cuts: { cutting, open },
    drawn,
  };
}

function measureKind(
  { length, joined, kinds, figure, lineOf }: DraftThreads,
  kind: number,
  { width, state, nextChange, lastChange, changes, raised, longest }: GroundLines,
  marks: Float64Array,
  tally: StretchCounts,
): void {
  const { before, borders } = figure;
  const times = kinds.times[kind]!;
  const own = lineOf[kinds.first[kind]!]!;
  const lastBorder = before[own + 1]!;
  const firstLine = figure.first[own]! * width;
  // The stretch at hand: its ground line, and where it begins.
  let line = firstLine;
  let begin = 0;
  // Where the run being passed began, and where the first run of all ended.
  let start = 0;
  let firstEnd = 0;
  let changed = 0;
  let ones = 0;
  let cutting = 0;
  let drawn = 0;

  for (let border = before[own]!; ; border++) {
    const end = border < lastBorder ? borders[border]! : length;
    const change = nextChange[line + begin + 1]!;
    if (change < end) {
      close(tally, kind, times, state[line + begin]!, change - start);
      if (firstEnd === 0) firstEnd = change;
      start = lastChange[line + end - 1]!;
      if (start > change) {
        marks[line + change]! += times;
        marks[line + start]! -= times;
        const most = line === 0 ? 0 : 2;
        lengthen(tally, kind, 0, longest[most]!);
        lengthen(tally, kind, 1, longest[most + 1]!);
      }
    }
    changed += changes[line + end - 1]! - changes[line + begin]!;
    ones += raised[line + end]! - raised[line + begin]!;
    if (line !== 0) drawn += end - begin;
    if (end === length) break;
    const beside = width - line;
    const here = state[line + end - 1]!;
    if (here !== state[beside + end]) {
      close(tally, kind, times, here, end - start);
      if (firstEnd === 0) firstEnd = end;
      start = end;
      changed++;
      cutting++;
    }
    line = beside;
    begin = end;
  }

  const firstState = state[firstLine]!;
  const lastState = state[line + length - 1]!;
  let borderCount = lastBorder - before[own]!;
  if (joined && line !== firstLine) {
    borderCount++;
    if (lastState !== firstState) cutting++;
  }
  if (joined && changed > 0) {
    if (lastState !== firstState) changed++;
    else {
      // The last run goes on over the seam into the first.
      tally.runs[firstState * width + firstEnd]! -= times;
      start -= firstEnd;
    }
  }
  close(tally, kind, times, lastState, length - start);
  tally.changes[kind] = changed;
  tally.raised[kind] = ones;
  tally.cutting += times * cutting;
  tally.open += times * (borderCount - cutting);
  tally.drawn += times * drawn;
}

/** Counts a run of a kind of thread. */
function close(tally: StretchCounts, kind: number, times: number, state: number, length: number): void {
  tally.runs[state * tally.width + length]! += times;
  lengthen(tally, kind, state, length);
}

function lengthen({ longest }: StretchCounts, kind: number, state: number, length: number): void {
  if (length > longest[2 * kind + state]!) longest[2 * kind + state] = length;
}

/** Counts each run of the ground lines as often as the marks say that it was passed. */
function addMarked(
  { width, state, nextChange }: GroundLines,
  marks: Float64Array,
  { runs }: StretchCounts,
): void {
  const length = width - 1;
  for (const line of [0, width]) {
    let times = 0;
    for (let start = nextChange[line]!; start < length; ) {
      times += marks[line + start]!;
      const end = nextChange[line + start + 1]!;
      runs[state[line + start]! * width + end - start]! += times;
      start = end;
    }
  }
}
