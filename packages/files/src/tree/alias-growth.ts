/** How much longer a text would be with its aliases written out. */
export interface AliasGrowth {
  /**
   * Counts an alias at the offset `at`, which comes after all before it and stands for the text from `start` to `end`,
   * the aliases within it written out too. Returns the growth of the whole text so far.
   */
  add(at: number, start: number, end: number): number;
}

/**
 * Adds up aliases one by one, each in the time that it takes to find a place in a list.
 * @example aliasGrowth().add(10, 0, 8) // 8
 */
export function aliasGrowth(): AliasGrowth {
  const offsets: number[] = [];
  /** The growth by all aliases before each. */
  const sums = [0];
  /** The growth by the aliases before an offset. */
  const before = (offset: number) => {
    let low = 0;
    let high = offsets.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (offsets[middle]! < offset) low = middle + 1;
      else high = middle;
    }
    return sums[low]!;
  };
  return {
    add(at, start, end) {
      const total = sums.at(-1)! + end - start + before(end) - before(start);
      offsets.push(at);
      sums.push(total);
      return total;
    },
  };
}
