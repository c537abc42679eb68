/**
 * What the ground alone does along a thread. With the figure out of play a thread weaves one of two lines: that of a
 * thread drawn nowhere, and that of a thread drawn all along. Both are written down place by place with what lies before
 * and behind each place, so that of any part of a line its runs and changes can be told without looking along it.
 */

/** How the ground harness moves the interlacements along a thread, place by place. */
export const FREE = 0;
export const RAISED = 1;
export const SUNK = 2;

/** The two lines of a thread, each with a place to spare: the undrawn line from 0 on, the drawn one from `width` on. */
export interface GroundLines {
  readonly width: number;
  /** 1 where raised. */
  readonly state: Uint8Array;
  /** The first place from here on whose state is not that of the place before it; the length of the thread where none is. */
  readonly nextChange: Int32Array;
  /** The last such place up to here; 0 where none is. */
  readonly lastChange: Int32Array;
  /** How many such places there are up to here. */
  readonly changes: Int32Array;
  /** How many places before this one are raised. */
  readonly raised: Int32Array;
  /** The longest run between two changes, lowered and raised: of the undrawn line, then of the drawn one. */
  readonly longest: Int32Array;
}

/** Writes both lines down from how the harness moves the thread. */
export function groundLines(moved: Uint8Array): GroundLines {
  const length = moved.length;
  const width = length + 1;
  const state = new Uint8Array(2 * width);
  const nextChange = new Int32Array(2 * width);
  const lastChange = new Int32Array(2 * width);
  const changes = new Int32Array(2 * width);
  const raised = new Int32Array(2 * width);
  const longest = new Int32Array(4);
  for (const drawn of [0, 1]) {
    const line = drawn * width;
    let last = 0;
    let count = 0;
    let ones = 0;
    for (let place = 0; place < length; place++) {
      const move = moved[place];
      const here = move === RAISED || (move === FREE && drawn === 1) ? 1 : 0;
      state[line + place] = here;
      if (place > 0 && here !== state[line + place - 1]) {
        const run = 2 * drawn + 1 - here;
        if (last > 0 && place - last > longest[run]!) longest[run] = place - last;
        last = place;
        count++;
      }
      lastChange[line + place] = last;
      changes[line + place] = count;
      ones += here;
      raised[line + place + 1] = ones;
    }
    let next = length;
    nextChange[line + length] = length;
    for (let place = length - 1; place > 0; place--) {
      if (state[line + place] !== state[line + place - 1]) next = place;
      nextChange[line + place] = next;
    }
    nextChange[line] = next;
  }
  return { width, state, nextChange, lastChange, changes, raised, longest };
}
