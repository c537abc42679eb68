/** What decides the threads of a draft, along the picks and along the ends: its squares, and its ground. */
import type { Expansion, UnitDraft } from "@drawcord/units";
import type { Figure, UnitLayout } from "../cloth.js";
import { figureLines } from "./figure-lines.js";
import { FREE, RAISED, SUNK } from "./ground-lines.js";
import { type Kinds, kindsOfPairs } from "./kinds.js";
import { rowRuns } from "./runs.js";
import { rowEdges, unitEdges } from "./squares.js";
import type { DraftThreads } from "./stretches.js";

/** The squares of a figure, as far as they decide its threads. */
type FigureSquares = Pick<Figure, "squares" | "columns" | "rowKinds" | "columnKinds" | "areas">;

/** The picks, each decided by what its row draws and by its treadling step. */
export function draftPicks(
  plan: UnitLayout,
  { shaftOfEnd }: Expansion,
  { squares, rowKinds, areas }: FigureSquares,
  joined: boolean,
): DraftThreads {
  const { steps } = plan.draft.ground;
  const length = shaftOfEnd.length;
  const highestShaft = shaftOfEnd.reduce((highest, shaft) => Math.max(highest, shaft), 0);
  const treadles = firstAlike(steps);
  const lineOf = linesOf(plan.rowOfPick, rowKinds);
  const moverOf = plan.stepOfPick.map((step) => treadles[step]!);
  return {
    length,
    joined,
    kinds: kindsOfPairs(lineOf, moverOf),
    figure: figureLines(squares, areas.runs, rowKinds, unitEdges(plan), length),
    lineOf,
    moverOf,
    movedBy: (step) => {
      // What is written past the highest shaft in use falls out of the array.
      const moves = new Uint8Array(highestShaft + 1).fill(FREE);
      for (const shaft of steps[step]!.raise) moves[shaft] = RAISED;
      for (const shaft of steps[step]!.sink) moves[shaft] = SUNK;
      return movesAlong(shaftOfEnd, moves);
    },
  };
}

/** The ends, each decided by what its unit hangs on and by its ground shaft. */
export function draftEnds(
  plan: UnitLayout,
  { shaftOfEnd }: Expansion,
  { columns, columnKinds }: FigureSquares,
  joined: boolean,
): DraftThreads {
  const { steps } = plan.draft.ground;
  const length = plan.rowOfPick.length;
  const lineOf = linesOf(plan.unitOfEnd, columnKinds);
  return {
    length,
    joined,
    kinds: kindsOfPairs(lineOf, shaftOfEnd),
    figure: figureLines(columns, rowRuns(columns), columnKinds, rowEdges(plan), length),
    lineOf,
    moverOf: shaftOfEnd,
    movedBy: (shaft) => {
      const moves = Uint8Array.from(steps, ({ raise, sink }) =>
        raise.includes(shaft) ? RAISED : sink.includes(shaft) ? SUNK : FREE,
      );
      return movesAlong(plan.stepOfPick, moves);
    },
  };
}

/** The line of the figure along each thread, by the squares it lies on; the last line where it lies on none. */
function linesOf(squareOf: Int32Array, { kindOf, first }: Kinds): Int32Array {
  return squareOf.map((square) => (square < 0 ? first.length : kindOf[square]!));
}

function movesAlong(of: Int32Array, moves: Uint8Array): Uint8Array {
  const along = new Uint8Array(of.length);
  for (let place = 0; place < of.length; place++) along[place] = moves[of[place]!]!;
  return along;
}

/** For each step the first one that moves the same shafts: a treadle may come more than once in a treadling. */
function firstAlike(steps: UnitDraft["ground"]["steps"]): readonly number[] {
  const known = new Map<string, number>();
  return steps.map(({ raise, sink }, step) => {
    const key = `${raise} / ${sink}`;
    const before = known.get(key);
    if (before === undefined) known.set(key, step);
    return before ?? step;
  });
}
