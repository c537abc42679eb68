/** Items begun for each lane before the oldest result has been taken, so that one long item does not idle the others. */
const AHEAD = 32;

/**
 * Works on many items at once, one in each lane at a time, and gives the results in the order of the items. No more is
 * begun than a little ahead of what has been taken.
 * @param lanes each does one item at a time and must not reject
 */
export async function* jobsInOrder<Item, Result>(
  items: readonly Item[],
  lanes: readonly ((item: Item) => Promise<Result>)[],
): AsyncGenerator<Result, void> {
  const free = [...lanes];
  const waiting: ((lane: (item: Item) => Promise<Result>) => void)[] = [];
  const work = async (item: Item): Promise<Result> => {
    const lane = free.pop() ?? (await new Promise<(typeof lanes)[number]>((take) => waiting.push(take)));
    const result = await lane(item);
    const next = waiting.shift();
    if (next === undefined) free.push(lane);
    else next(lane);
    return result;
  };
  const begun: Promise<Result>[] = [];
  let next = 0;
  for (;;) {
    while (next < items.length && begun.length < lanes.length * AHEAD) begun.push(work(items[next++]!));
    const oldest = begun.shift();
    if (oldest === undefined) return;
    yield await oldest;
  }
}
