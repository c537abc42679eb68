import type { System } from "../cloth.js";
import { eachRun } from "./runs.js";

/** Told of a run: its thread, its first and last interlacement (from 0), and its length, which over a seam is more than these. */
export type VisitLongRun = (thread: number, first: number, last: number, length: number) => void;

/**
 * Visits the runs of one state that are longer than what is allowed on their thread, thread by thread. Only threads that
 * have such a run are looked through. A run that goes on over the seam of a repeat is told where it begins, as far as
 * the seam.
 * @param system the ends or the picks
 * @param state 1 for raised runs, 0 for lowered ones
 * @param allowedOn asked for each thread, from 0, how long a run may be on it
 * @param visit called with each run
 * @example eachLongRun(measureDraft(draft, expand(draft), {}).warp, 1, () => 1, () => {}) // undefined
 */
export function eachLongRun(
  system: System,
  state: 0 | 1,
  allowedOn: (thread: number) => number,
  visit: VisitLongRun,
): void {
  const { count, length: columns, kinds, threads, joined } = system;
  for (let thread = 0; thread < count; thread++) {
    const allowed = allowedOn(thread);
    if (threads.longest[2 * kinds.kindOf[thread]! + state]! <= allowed) continue;
    const { grid } = system;
    const seam = joined && grid.get(thread, 0) === grid.get(thread, columns - 1);
    let beyond = 0;
    eachRun(grid, thread, (start, end, runState) => {
      if (runState !== state) return;
      const last = end === columns;
      if (seam && start === 0 && !last) {
        beyond = end;
        return;
      }
      const length = end - start + (last ? beyond : 0);
      if (length > allowed) visit(thread, start, end - 1, length);
    });
  }
}
