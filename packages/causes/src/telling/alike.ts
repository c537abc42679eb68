/**
 * Where a line is like itself. Most entries of a plan have few like them, so what is told of pairs of places is told of
 * pairs of like entries alone, and all other pairs are nothing.
 */

/** The pairs of like entries of a line. Places count from 0. */
export interface Alike {
  /** For each place the places of all entries like it, itself among them, ascending. */
  readonly fellows: readonly Int32Array[];
  /** The number of a pair of places; -1 where the entries are unlike, or a place lies outside the line. */
  readonly pair: (i: number, j: number) => number;
  /** How many pairs there are. */
  readonly pairs: number;
}

/**
 * For each place the places of all entries like it, itself among them, ascending.
 * @param line any numbers
 */
export function fellowsOf(line: Int32Array): Int32Array[] {
  const lists = new Map<number, number[]>();
  line.forEach((entry, i) => {
    const list = lists.get(entry);
    if (list === undefined) lists.set(entry, [i]);
    else list.push(i);
  });
  const sets = new Map([...lists].map(([entry, list]) => [entry, Int32Array.from(list)]));
  return Array.from(line, (entry) => sets.get(entry)!);
}

/**
 * Numbers the pairs of like entries.
 * @param line any numbers
 */
export function alikeOf(line: Int32Array): Alike {
  const n = line.length;
  const fellows = fellowsOf(line);
  const rank = new Int32Array(n);
  for (const set of new Set(fellows)) {
    for (let i = 0; i < set.length; i++) rank[set[i]!] = i;
  }
  const before = new Int32Array(n + 1);
  for (let i = 0; i < n; i++) before[i + 1] = before[i]! + fellows[i]!.length;
  return {
    fellows,
    pair: (i, j) => (i >= 0 && j >= 0 && i < n && line[i] === line[j] ? before[i]! + rank[j]! : -1),
    pairs: before[n]!,
  };
}

/** For each pair of places how far the line reads alike from both of them on. */
export function alikeOnwards(alike: Alike): Int32Array {
  return stretches(alike, true, (i, j) => alike.pair(i + 1, j + 1));
}

/** For each pair of places how far the line reads alike from both of them back. */
export function alikeBackwards(alike: Alike): Int32Array {
  return stretches(alike, false, (i, j) => alike.pair(i - 1, j - 1));
}

/** For each pair of places how far the line reads from the first on as from the second back. */
export function alikeTurned(alike: Alike): Int32Array {
  return stretches(alike, true, (i, j) => alike.pair(i + 1, j - 1));
}

/** For each pair of places how far it goes on, where each pair that goes on does so in the `next` one. */
function stretches(
  { fellows, pair, pairs }: Alike,
  fromEnd: boolean,
  next: (i: number, j: number) => number,
): Int32Array {
  const lengths = new Int32Array(pairs);
  for (let k = 0; k < fellows.length; k++) {
    const i = fromEnd ? fellows.length - 1 - k : k;
    const set = fellows[i]!;
    const first = pair(i, set[0]!);
    for (let rank = 0; rank < set.length; rank++) {
      const beside = next(i, set[rank]!);
      lengths[first + rank] = beside < 0 ? 1 : lengths[beside]! + 1;
    }
  }
  return lengths;
}
