/** The remainder of `a` by `n`, from 0 to n - 1 also where `a` is negative. */
export function modulo(a: number, n: number): number {
  return ((a % n) + n) % n;
}

/** The greatest number that divides both. */
export function commonDivisor(a: number, b: number): number {
  return b === 0 ? Math.abs(a) : commonDivisor(b, a % b);
}

/** The least number that both divide. */
export function commonMultiple(a: number, b: number): number {
  return (a / commonDivisor(a, b)) * b;
}

/** 0, 1, ... up to `length` - 1. */
export function upTo(length: number): number[] {
  return Array.from({ length }, (_, i) => i);
}

/** The sum of a list. */
export function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, value) => total + value, 0);
}

/** Which of two lists of equal length comes first, number by number: below 0 the first, above 0 the second. */
export function compareLists(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}

/**
 * A round of numbers begun where it reads least.
 * @example leastRound([2, 1, 3, 1]) // [1, 2, 1, 3]
 */
export function leastRound(round: readonly number[]): number[] {
  const rounds = round.map((_, start) => [...round.slice(start), ...round.slice(0, start)]);
  return rounds.reduce((least, other) => (compareLists(other, least) < 0 ? other : least));
}
