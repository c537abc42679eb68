/** The report's numbers written plainly: one interlacement at a time, over arrays, with nothing clever. */
import type { BitGrid } from "@drawcord/grid";
import { expand, type UnitDraft } from "@drawcord/units";
import type { CutTally, FloatTally, Repeat, Report, Spread } from "../src/index.js";

type Cells = boolean[][];

export type Numbers = Pick<Report, "size" | "floats" | "cut" | "balance"> & {
  readonly integrity: Pick<Report["integrity"], "looseEnds" | "loosePicks">;
};

export function slowDraft(draft: UnitDraft, repeat: Repeat = "none"): Numbers {
  const { drawdown, drawn, unitOfEnd, rowOfPick } = expand(draft);
  const squares: Cells = draft.lifts.map((lift) =>
    draft.threading.map((shafts) => shafts.some((shaft) => lift.includes(shaft))),
  );
  const size = { units: draft.threading.length, rows: draft.lifts.length };
  // The drawn state again from its own definition: the unit of the end hangs on a shaft that the row of the pick draws.
  const cells = cellsOf(drawn).map((line, pick) =>
    line.map((_, end) => unitOfEnd[end]! >= 0 && squares[rowOfPick[pick]!]![unitOfEnd[end]!]!),
  );
  const told = numbers(cellsOf(drawdown), cells, squares, size, repeat);
  // What is drawn is a share of what can be: of the ends in units, and so of no selvedge.
  const inUnits = cells.map((line) => line.filter((_, end) => unitOfEnd[end]! >= 0));
  return { ...told, balance: { ...told.balance, drawnShare: share(inUnits) } };
}

/** The numbers of a drawdown, with what is thought to be drawn, if anything is. */
export function slowGrid(drawdown: BitGrid, drawn: BitGrid | undefined, repeat: Repeat = "none"): Numbers {
  const cells = drawn && cellsOf(drawn);
  return numbers(cellsOf(drawdown), cells, cells ?? [], { units: 0, rows: 0 }, repeat);
}

export function cellsOf(grid: BitGrid): Cells {
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.columns }, (_, column) => grid.get(row, column)),
  );
}

function numbers(
  cloth: Cells,
  drawn: Cells | undefined,
  squares: Cells,
  size: { units: number; rows: number },
  repeat: Repeat,
): Numbers {
  const overEnds = repeat === "ends" || repeat === "both";
  const overPicks = repeat === "picks" || repeat === "both";
  const picks = cloth;
  const ends = turned(cloth);
  return {
    size: { ends: ends.length, picks: picks.length, ...size },
    floats: {
      warpFace: floats(ends, true, overPicks),
      warpBack: floats(ends, false, overPicks),
      weftFace: floats(picks, false, overEnds),
      weftBack: floats(picks, true, overEnds),
    },
    cut: {
      side: cuts(picks, drawn, overEnds),
      across: cuts(ends, drawn && turned(drawn), overPicks),
    },
    balance: {
      warpFaceShare: share(cloth),
      drawnShare: drawn === undefined ? 0 : share(drawn),
      intersections: { ends: spread(ends, overPicks), picks: spread(picks, overEnds) },
      areas: areas(squares, overEnds, overPicks),
    },
    integrity: { looseEnds: loose(ends), loosePicks: loose(picks) },
  };
}

function turned(cells: Cells): Cells {
  return (cells[0] ?? []).map((_, column) => cells.map((line) => line[column]!));
}

/** The maximal runs of one thread; where it repeats it is first turned round so that it begins with a change. */
export function runsOf(thread: boolean[], joined: boolean): { state: boolean; length: number }[] {
  let line = thread;
  if (joined) {
    const change = thread.findIndex((state, i) => state !== thread[(i + thread.length - 1) % thread.length]);
    if (change > 0) line = [...thread.slice(change), ...thread.slice(0, change)];
  }
  const runs: { state: boolean; length: number }[] = [];
  for (const state of line) {
    const run = runs.at(-1);
    if (run?.state === state) run.length++;
    else runs.push({ state, length: 1 });
  }
  return runs;
}

function floats(threads: Cells, state: boolean, joined: boolean): FloatTally {
  const lengths: Record<string, number> = {};
  let longest = 0;
  for (const thread of threads) {
    for (const run of runsOf(thread, joined)) {
      if (run.state !== state) continue;
      lengths[run.length] = (lengths[run.length] ?? 0) + 1;
      longest = Math.max(longest, run.length);
    }
  }
  return { longest, lengths };
}

function pairsOf(length: number, joined: boolean): [number, number][] {
  return Array.from({ length: joined ? length : length - 1 }, (_, i) => [i, (i + 1) % length]);
}

function cuts(threads: Cells, drawn: Cells | undefined, joined: boolean): CutTally {
  let cutting = 0;
  let open = 0;
  threads.forEach((thread, t) => {
    for (const [a, b] of pairsOf(thread.length, joined)) {
      if (drawn === undefined || drawn[t]![a] === drawn[t]![b]) continue;
      if (thread[a] === thread[b]) open++;
      else cutting++;
    }
  });
  return { cutting, open };
}

function share(cells: Cells): number {
  const all = cells.flat();
  return all.filter(Boolean).length / all.length;
}

function spread(threads: Cells, joined: boolean): Spread {
  const counts = threads.map(
    (thread) => pairsOf(thread.length, joined).filter(([a, b]) => thread[a] !== thread[b]).length,
  );
  return {
    least: Math.min(...counts),
    most: Math.max(...counts),
    mean: counts.reduce((a, b) => a + b, 0) / counts.length,
  };
}

/** Floods each patch of squares in turn. */
function areas(squares: Cells, overColumns: boolean, overRows: boolean): { count: number; largest: number } {
  const rows = squares.length;
  const columns = squares[0]?.length ?? 0;
  const seen = new Set<number>();
  let count = 0;
  let largest = 0;
  for (let start = 0; start < rows * columns; start++) {
    if (seen.has(start)) continue;
    count++;
    let size = 0;
    const queue = [start];
    seen.add(start);
    for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
      size++;
      const row = Math.floor(at / columns);
      const column = at % columns;
      for (const [down, right] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        let r = row + down;
        let c = column + right;
        if (overRows) r = (r + rows) % rows;
        if (overColumns) c = (c + columns) % columns;
        if (squares[r]?.[c] !== squares[row]![column] || seen.has(r * columns + c)) continue;
        seen.add(r * columns + c);
        queue.push(r * columns + c);
      }
    }
    largest = Math.max(largest, size);
  }
  return { count, largest };
}

function loose(threads: Cells): number[] {
  return threads.flatMap((thread, i) =>
    thread.every(Boolean) || thread.every((state) => !state) ? [i + 1] : [],
  );
}
