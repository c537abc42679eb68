/**
 * The symmetry that a threading or a lift plan nearly has. Weavers thread in points and in repeats, and their slips are
 * one unit (or row) written for another, left out, or written twice; each leaves a sequence that is one entry away from
 * its own symmetry.
 */

/** One entry away from a symmetry. Places are from 0. */
export interface SymmetrySlip {
  /** `mirror`: the sequence reads the same from both ends; `repeat`: every entry comes again `period` entries on. */
  readonly symmetry: "mirror" | "repeat";
  readonly period?: number;
  /** The entry that spoils the symmetry; with a mirror and an entry changed, either of the two may be the one. */
  readonly at: number;
  /** The entry that it should be equal to, or for one too many or too few the entry that lies where its mirror should. */
  readonly other: number;
  /** Whether an entry was changed, or one is too many (or its mirror is missing). */
  readonly kind: "changed" | "odd-one";
}

/** Shorter sequences are one entry away from something by chance. */
const LEAST = 8;

/** A sequence of fewer different entries is symmetric, or nearly so, by chance: a figure on a plain ground. */
const LEAST_KINDS = 3;

/** A period must come this often for a slip in it to be told from a change of pattern. */
const LEAST_REPEATS = 3;

/**
 * The slip in a sequence that is one entry away from a symmetry, or nothing: when it has none, or has one in full.
 * Entries are equal when their keys are.
 * @example findSlip([1, 2, 3, 4, 5, 4, 3, 1, 1]) // { symmetry: "mirror", kind: "changed", at: 1, other: 7 }
 */
export function findSlip(keys: readonly (string | number)[]): SymmetrySlip | undefined {
  if (keys.length < LEAST || new Set(keys).size < LEAST_KINDS) return undefined;
  if (isMirror(keys, 0, keys.length - 1)) return undefined;
  const repeat = repeatSlip(keys);
  if (repeat === "whole") return undefined;
  return repeat ?? mirrorSlip(keys);
}

function isMirror(keys: readonly (string | number)[], first: number, last: number): boolean {
  for (let i = first, j = last; i < j; i++, j--) if (keys[i] !== keys[j]) return false;
  return true;
}

/** The first pair that spoils the mirror; the rest must agree when it is changed, or when one of the two is taken out. */
function mirrorSlip(keys: readonly (string | number)[]): SymmetrySlip | undefined {
  let i = 0;
  let j = keys.length - 1;
  while (keys[i] === keys[j]) {
    i++;
    j--;
  }
  if (isMirror(keys, i + 1, j - 1)) return { symmetry: "mirror", kind: "changed", at: i, other: j };
  if (isMirror(keys, i + 1, j)) return { symmetry: "mirror", kind: "odd-one", at: i, other: j };
  if (isMirror(keys, i, j - 1)) return { symmetry: "mirror", kind: "odd-one", at: j, other: i };
  return undefined;
}

/** The shortest period that all entries but one keep; `whole` when a period is kept by all. */
function repeatSlip(keys: readonly (string | number)[]): SymmetrySlip | "whole" | undefined {
  let found: SymmetrySlip | undefined;
  for (let period = 1; period * LEAST_REPEATS <= keys.length; period++) {
    const wrong: number[] = [];
    for (let i = 0; i + period < keys.length && wrong.length <= 2; i++) {
      if (keys[i] !== keys[i + period]) wrong.push(i);
    }
    if (wrong.length === 0) return "whole";
    found ??= slipOf(wrong, period, keys);
  }
  return found;
}

/** One entry changed is unlike the entry a period before it and the entry a period after it. */
function slipOf(
  wrong: readonly number[],
  period: number,
  keys: readonly (string | number)[],
): SymmetrySlip | undefined {
  const [first, second] = wrong;
  if (first === undefined || wrong.length > 2) return undefined;
  const slip = { symmetry: "repeat", kind: "changed", period } as const;
  if (second === undefined) {
    // Only entries of the first or the last period have a single neighbour to be unlike.
    if (first < period) return { ...slip, at: first, other: first + period };
    return first + 2 * period >= keys.length ? { ...slip, at: first + period, other: first } : undefined;
  }
  const alone = second - first === period && keys[first] === keys[second + period];
  return alone ? { ...slip, at: second, other: first } : undefined;
}

/**
 * Whether a sequence that goes on from its last entry to its first is its own mirror round some place: a point threading
 * whose turning unit stands once, at the seam.
 * @example mirrorsRound([1, 2, 3, 4, 3, 2]) // true
 */
export function mirrorsRound(keys: readonly (string | number)[]): boolean {
  const known = new Map<string | number, number>();
  const letters = keys.map((key) => {
    if (!known.has(key)) known.set(key, known.size);
    return String.fromCodePoint(0x10000 + known.get(key)!);
  });
  const round = [...letters, ...letters].join("");
  return round.includes(letters.toReversed().join(""));
}
