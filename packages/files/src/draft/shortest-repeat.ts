/**
 * The shortest beginning of a list that gives the whole when it comes again and again, the last time perhaps cut short; the
 * list itself where it does not come twice.
 * @example shortestRepeat([1, 2, 3, 1, 2, 3, 1]) // [1, 2, 3]
 */
export function shortestRepeat<T>(list: readonly T[]): readonly T[] {
  // For each place, how long the beginning is that also ends there.
  const borders = [0];
  for (let i = 1; i < list.length; i++) {
    let length = borders[i - 1]!;
    while (length > 0 && list[i] !== list[length]) length = borders[length - 1]!;
    borders.push(list[i] === list[length] ? length + 1 : 0);
  }
  const repeat = list.length - (borders.at(-1) ?? 0);
  return repeat * 2 <= list.length ? list.slice(0, repeat) : list;
}
