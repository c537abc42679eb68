import { GroundError } from "./error.js";

/** The most shafts a weave may need, and the most ends or picks its repeat may have. */
export const LARGEST = { shafts: 64, repeat: 1024 } as const;

/**
 * Hands a count back when it is a whole number of at least `least`.
 * @throws {GroundError} `bad-size`
 */
export function soundCount(value: number, what: string, least = 1): number {
  if (!Number.isInteger(value) || value < least) {
    throw new GroundError("bad-size", `${what} must be a whole number of at least ${least}, not ${value}`, {
      value,
      least,
    });
  }
  return value;
}

/**
 * Hands the number of shafts back when a ground harness of this package can have it.
 * @throws {GroundError} `too-large`
 */
export function shaftCount(value: number, weave: string): number {
  if (value > LARGEST.shafts) {
    throw new GroundError(
      "too-large",
      `${weave} needs ${value} ground shafts; a ground harness may have ${LARGEST.shafts} at the most`,
      { shafts: value, most: LARGEST.shafts },
    );
  }
  return value;
}

/**
 * Hands the number of threads in a repeat back when it is not too long to work with.
 * @throws {GroundError} `too-large`
 */
export function repeatLength(value: number, what: string): number {
  if (value > LARGEST.repeat) {
    throw new GroundError(
      "too-large",
      `${what} repeats on ${value} threads; a repeat may have ${LARGEST.repeat} at the most`,
      { repeat: value, most: LARGEST.repeat },
    );
  }
  return value;
}
