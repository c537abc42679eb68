/**
 * What comes more than once in the same company is meant: a figure is repeated, a slip is made once. The company of a
 * stretch of rows (or units) is the kind of each and of the one before and after, read from either side.
 */

/** Tells whether the stretch from `first` to `last` comes again in the same company; its ends must not touch the edges. */
export function companyOf(kindOf: Int32Array): (first: number, last: number) => boolean {
  const known = new Map<number, Map<string, number>>();
  return (first, last) => {
    const length = last + 1 - first;
    let counts = known.get(length);
    if (counts === undefined) {
      counts = countCompanies(kindOf, length);
      known.set(length, counts);
    }
    return (counts.get(company(kindOf, first, length)) ?? 0) > 1;
  };
}

function countCompanies(kindOf: Int32Array, length: number): Map<string, number> {
  const counts = new Map<string, number>();
  for (let first = 1; first + length < kindOf.length; first++) {
    const key = company(kindOf, first, length);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

function company(kindOf: Int32Array, first: number, length: number): string {
  const kinds = kindOf.subarray(first - 1, first + length + 1);
  return [kinds.join(" "), kinds.toReversed().join(" ")].sort()[0]!;
}
