import { compareLists, modulo, sum } from "../arithmetic.js";
import { GroundError } from "../error.js";

/** How a twill goes over and under: up, down, up, down and so on, as in `2/1/1/2`. */
export type Ratio = readonly number[];

/**
 * Which ends of the repeat a ratio raises, read from end 1 on the first pick.
 * @throws {GroundError} `bad-ratio` when the numbers do not come in pairs of up and down, or one is no whole number above 0
 * @example raisedBy([2, 1, 1, 2]) // [true, true, false, true, false, false]
 */
export function raisedBy(ratio: Ratio): boolean[] {
  if (ratio.length < 2 || ratio.length % 2 === 1) {
    throw new GroundError(
      "bad-ratio",
      `the ratio ${ratio.join("/")} has ${ratio.length} ${ratio.length === 1 ? "number" : "numbers"}; it takes pairs of up and down, as in 2/2 or 2/1/1/2`,
      { ratio: ratio.join("/") },
    );
  }
  return ratio.flatMap((length, i) => {
    if (!Number.isInteger(length) || length < 1) {
      throw new GroundError(
        "bad-ratio",
        `the ratio ${ratio.join("/")} holds ${length}; each number is at least 1`,
        {
          ratio: ratio.join("/"),
        },
      );
    }
    return Array.from({ length }, () => i % 2 === 0);
  });
}

/**
 * The ratio of a round of raised and lowered ends, begun at the start of a raised stretch so that the longest come first.
 * @param raised at least one raised and one lowered
 * @example ratioOf([false, true, true, false, false]) // [2, 3]
 */
export function ratioOf(raised: readonly boolean[]): number[] {
  const n = raised.length;
  const starts = raised.flatMap((up, i) => (up && !raised[modulo(i - 1, n)] ? [i] : []));
  const ratios = starts.map((start) => {
    const ratio: number[] = [];
    for (let i = 0; i < n; i++) {
      const up = raised[modulo(start + i, n)];
      if (i === 0 || up !== raised[modulo(start + i - 1, n)]) ratio.push(0);
      ratio[ratio.length - 1]! += 1;
    }
    return ratio;
  });
  return ratios.reduce((best, ratio) => (compareLists(ratio, best) > 0 ? ratio : best));
}

/** The number of ends of a ratio. */
export function endsOf(ratio: Ratio): number {
  return sum(ratio);
}
