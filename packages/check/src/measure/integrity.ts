/**
 * Does the cloth hang together? Draw an arrow from the upper to the lower thread at every crossing; a set of threads can
 * be lifted off when every arrow between it and the rest points away from it. Whether there is one is decided by the
 * sorted sums alone: order the picks by how many ends they lie over, most first, and the ends by how many picks lie over
 * them, fewest first; the first i picks and j ends lift off just when
 *     (ends the i picks lie over) - (picks that lie over the j ends) = i (n - j), n the number of ends.
 * Source: C. R. J. Clapham, "When a fabric hangs together", Bulletin of the London Mathematical Society 12 (1980) 161-164.
 *
 * For a given i the left side less the right is greatest where the next end has i picks over it, so all such (i, j) are
 * found in one pass. They are nested, and from one to the next lies one strongly connected component of the arrows:
 * components of picks alone or of ends alone are single threads, and any other component lies wholly over or under the rest.
 */
/** The layers of a cloth, uppermost first. */
export interface Integrity {
  /** Picks (from 0) in the order of the layers. */
  readonly picks: Int32Array;
  /** Ends (from 0) in the order of the layers. */
  readonly ends: Int32Array;
  /** Layer k holds `picks[picksBefore[k]]` to one before `picks[picksBefore[k + 1]]`. */
  readonly picksBefore: readonly number[];
  /** Layer k holds `ends[endsBefore[k]]` to one before `ends[endsBefore[k + 1]]`. */
  readonly endsBefore: readonly number[];
  readonly layers: number;
}

/**
 * Sorts the threads of a cloth into layers that hang together.
 * @param endsOverPick how many ends lie over each pick
 * @param picksUnderEnd how many picks lie under each end
 * @example integrityOf(Uint32Array.of(1, 1), Uint32Array.of(1, 1)).layers // 1
 */
export function integrityOf(endsOverPick: Uint32Array, picksUnderEnd: Uint32Array): Integrity {
  const ends = picksUnderEnd.length;
  const picks = endsOverPick.length;
  const picksOverEnd = picksUnderEnd.map((raised) => picks - raised);
  const pickOrder = byCount(endsOverPick, ends);
  const endOrder = byCount(picksOverEnd, picks);

  const picksBefore: number[] = [];
  const endsBefore: number[] = [];
  // Of the ends in order, `few` have fewer than i picks over them; `sum` is the left side less the right for (i, few).
  let few = 0;
  let sumOfPicks = 0;
  let sumOfEnds = 0;
  for (let i = 0; i <= picks; i++) {
    if (i > 0) sumOfPicks += ends - endsOverPick[pickOrder[i - 1]!]!;
    while (few < ends && picksOverEnd[endOrder[few]!]! < i) sumOfEnds += picksOverEnd[endOrder[few++]!]!;
    if (sumOfPicks - sumOfEnds !== i * (ends - few)) continue;
    for (let j = few; ; j++) {
      picksBefore.push(i);
      endsBefore.push(j);
      if (j === ends || picksOverEnd[endOrder[j]!] !== i) break;
    }
  }
  return { picks: pickOrder, ends: endOrder, picksBefore, endsBefore, layers: picksBefore.length - 1 };
}

/** The places of `counts` in ascending order of their counts, equal ones in the order they come; `most` is the largest. */
function byCount(counts: Uint32Array, most: number): Int32Array {
  const before = new Int32Array(most + 2);
  for (const count of counts) before[count + 1]!++;
  for (let count = 0; count <= most; count++) before[count + 1]! += before[count]!;
  const order = new Int32Array(counts.length);
  counts.forEach((count, place) => {
    order[before[count]!++] = place;
  });
  return order;
}

/** The threads of the layers from `first` to one before `end`, counted from 1, in ascending order. */
export function threadsOf(
  integrity: Integrity,
  first: number,
  end: number,
): { ends: readonly number[]; picks: readonly number[] } {
  const { ends, endsBefore, picks, picksBefore } = integrity;
  const sorted = (threads: Int32Array) => Array.from(threads.sort(), (thread) => thread + 1);
  return {
    ends: sorted(ends.slice(endsBefore[first]!, endsBefore[end]!)),
    picks: sorted(picks.slice(picksBefore[first]!, picksBefore[end]!)),
  };
}
