import { YarnError } from "../error.js";

/** One repeat of a weave: rows are picks, columns ends; true where the end lies over the pick. A bit grid is one. */
export interface Drawdown {
  /** Picks of the repeat. */
  readonly rows: number;
  /** Ends of the repeat. */
  readonly columns: number;
  /**
   * Whether the end lies over the pick.
   * @param row the pick, from 0
   * @param column the end, from 0
   */
  get(row: number, column: number): boolean;
}

/** Threads in the repeat (R) and intersections along a crossing thread (I), the mean where they differ. */
export interface Interlacing {
  /** Threads in the repeat. */
  readonly threads: number;
  /** Intersections along a crossing thread. */
  readonly intersections: number;
}

/** How a weave interlaces, for the sett of its ends and that of its picks. */
export interface WeaveInterlacing {
  /** For the ends: ends in the repeat, intersections along a pick. */
  readonly warp: Interlacing;
  /** For the picks: picks in the repeat, intersections along an end. */
  readonly weft: Interlacing;
}

/** What is counted along all threads of one system over the repeat, each thread joined end to end. */
export interface ThreadCount {
  /** Changes of face. */
  readonly intersections: number;
  /** Longest float; a thread that never changes floats without end. */
  readonly longest: number;
  /** Sum over all floats of their length less 1; a thread that never changes counts with its whole length. */
  readonly floating: number;
}

/** Counts along one thread of `length` interlacements, the last joined to the first. */
function countThread(length: number, raised: (at: number) => boolean): ThreadCount {
  const changes: number[] = [];
  for (let at = 0; at < length; at++) if (raised(at) !== raised((at + 1) % length)) changes.push(at);
  if (changes.length === 0) return { intersections: 0, longest: Number.POSITIVE_INFINITY, floating: length };
  const floats = changes.map((at, i) => (changes[i + 1] ?? changes[0]! + length) - at);
  return { intersections: changes.length, longest: Math.max(...floats), floating: length - changes.length };
}

/**
 * Counts along the threads of one system, one entry a thread.
 * @throws {YarnError} `zero` when the repeat has no threads
 * @example countThreads(plain, "warp").map((end) => end.intersections) // [2, 2]
 */
export function countThreads(drawdown: Drawdown, system: "warp" | "weft"): ThreadCount[] {
  const { rows, columns } = drawdown;
  if (rows < 1 || columns < 1) {
    throw new YarnError("zero", `a repeat of ${columns} ends and ${rows} picks has no interlacements`, {
      rows,
      columns,
    });
  }
  return system === "warp"
    ? Array.from({ length: columns }, (_, end) => countThread(rows, (pick) => drawdown.get(pick, end)))
    : Array.from({ length: rows }, (_, pick) => countThread(columns, (end) => drawdown.get(pick, end)));
}

/**
 * R and I of a weave, for its sett.
 * @param drawdown one repeat of the weave
 * @throws {YarnError} `zero` when the repeat has no threads
 * @example interlacing(plain).warp // { threads: 2, intersections: 2 }
 */
export function interlacing(drawdown: Drawdown): WeaveInterlacing {
  const mean = (counts: readonly ThreadCount[]): number =>
    counts.reduce((sum, { intersections }) => sum + intersections, 0) / counts.length;
  return {
    warp: { threads: drawdown.columns, intersections: mean(countThreads(drawdown, "weft")) },
    weft: { threads: drawdown.rows, intersections: mean(countThreads(drawdown, "warp")) },
  };
}
