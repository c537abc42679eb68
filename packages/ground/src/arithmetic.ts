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
