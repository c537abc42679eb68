/**
 * Edits that a line suggests by its likeness to itself. Two stretches of a line that are alike, read the same way or one
 * of them backwards, but for one entry: then that entry was written for another, or left out, or put in.
 */

import { byLikeness } from "./by-likeness.js";
import { byRuns } from "./by-runs.js";
import { byShift } from "./by-shift.js";
import { bySteps } from "./by-steps.js";
import { exchanges } from "./exchanges.js";
import type { Alphabet, EntryLine, LineEdit } from "./line.js";
import type { Keep, Suggestion } from "./suggestion.js";

/** A stretch of likeness that counts for less than this says nothing. */
const LEAST_LIKENESS = 2.5;

/**
 * The edits suggested, those with the most likeness about them first.
 * @param line the line
 * @param alphabet what its entries are
 * @param seams where the phrases of its telling begin: an edit restores what was told apart, so it lies beside a seam, or
 *   the stretch that it is made like to does
 */
export function suggestions(line: EntryLine, alphabet: Alphabet, seams: readonly number[]): Suggestion[] {
  const found = new Map<string, Suggestion>();
  const beside = besideSeams(line, seams);
  const keep: Keep = (edit, likeness, ...places) => {
    if (likeness < LEAST_LIKENESS || !places.some((place) => beside[place] === 1)) return;
    const key = keyOf(edit);
    const before = found.get(key);
    if (before === undefined || before.likeness < likeness) found.set(key, { edit, likeness });
  };
  byLikeness(line, keep);
  // A stretch of a threading that lies too high goes on from a unit too many or too few.
  if (!alphabet.runs) byShift(line, alphabet, keep);
  else {
    byRuns(line, alphabet, keep);
    bySteps(line, alphabet, keep);
  }
  const all = [...found.values()];
  return [...all, ...exchanges(line, all)].sort((a, b) => b.likeness - a.likeness);
}

/** How far from a seam an edit may lie, in entries that do not go on as the one before. */
const NEAR = 3;

/** 1 for each place beside a seam, and for the one after the last. */
function besideSeams(line: EntryLine, seams: readonly number[]): Uint8Array {
  const beside = new Uint8Array(line.length + 1);
  const mark = (seam: number, way: 1 | -1) => {
    let far = 0;
    for (let i = seam; i >= 0 && i <= line.length && far < NEAR; i += way) {
      beside[i] = 1;
      far += line[i] === line[i + way] ? 0.1 : 1;
    }
  };
  for (const seam of [...seams, line.length]) {
    mark(seam, 1);
    mark(seam, -1);
  }
  return beside;
}

function keyOf(edit: LineEdit): string {
  switch (edit.edit) {
    case "shift":
      return `shift ${edit.from} ${edit.entries.join()}`;
    case "swap":
      return `swap ${edit.at} ${edit.with}`;
    case "remove":
      return `remove ${edit.at}`;
    default:
      return `${edit.edit} ${edit.at} ${edit.to}`;
  }
}
