import type { Span } from "@drawcord/check";

/** The stretch of threads that a picture shows. */
export interface ShownStretch {
  /** First and last thread shown, from 1. */
  readonly shown: Span;
  /** First and last thread marked, from 1, cut to what is shown. */
  readonly marked: Span;
  /** How many of the threads to be marked are left out, beyond the last one shown. */
  readonly left: number;
}

/**
 * Which threads to show around those that a finding names.
 * @param span the threads named; none means all of them
 * @param threads how many there are
 * @param most how many fit
 * @param margin how many to show on either side, where there are so many and they fit
 */
export function stretch(span: Span | undefined, threads: number, most: number, margin: number): ShownStretch {
  const [first, last] = span ?? [1, threads];
  const from = Math.max(1, first - margin);
  const to = Math.min(threads, last + margin, from + most - 1);
  return { shown: [from, to], marked: [first, Math.min(last, to)], left: Math.max(0, last - to) };
}
