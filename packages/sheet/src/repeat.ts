/** A stretch of a sequence that is made of equal pieces. */
export interface RepeatSpan {
  /** Where the repeats begin, from 0. */
  readonly start: number;
  /** Members of one repeat. */
  readonly period: number;
  /** How many whole repeats there are, two or more. */
  readonly times: number;
}

/**
 * The repeat of a threading or a lift plan between its borders: of all stretches made of two or more equal pieces, each
 * of them of more than one kind of member, the longest, and of equals the one with the shortest piece. Where its pieces
 * may begin at several places, they begin where they are likest to their mirror image, as a figure drawn from its point
 * does. None when nothing repeats.
 * @param keys members that repeat where their keys are equal
 * @example findRepeat([..."xabcabcy"]) // { start: 1, period: 3, times: 2 }
 */
export function findRepeat(keys: readonly string[]): RepeatSpan | undefined {
  let best: RepeatSpan | undefined;
  let longest = 0;
  for (let period = 2; period * 2 <= keys.length; period++) {
    let run = 0;
    for (let i = period; i <= keys.length; i++) {
      if (i < keys.length && keys[i] === keys[i - period]) {
        run++;
        continue;
      }
      const times = Math.floor(run / period) + 1;
      const start = i - run - period;
      if (run >= period && times * period > longest && isMixed(keys, start, period)) {
        longest = times * period;
        best = { start: pointWithin(keys, start, period, run + period - longest), period, times };
      }
      run = 0;
    }
  }
  return best;
}

/** Of the places from `first` to `slack` further on, the first at which a piece is likest to its mirror image. */
function pointWithin(keys: readonly string[], first: number, period: number, slack: number): number {
  let best = first;
  let most = -1;
  for (let start = first; start <= first + slack; start++) {
    let alike = 0;
    for (let i = 1; i < period; i++) if (keys[start + i] === keys[start + period - i]) alike++;
    if (alike > most) {
      most = alike;
      best = start;
    }
  }
  return best;
}

function isMixed(keys: readonly string[], start: number, period: number): boolean {
  for (let i = start + 1; i < start + period; i++) if (keys[i] !== keys[start]) return true;
  return false;
}
