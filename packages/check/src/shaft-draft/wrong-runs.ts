import type { Span } from "../report.js";

/** Neighbours that are wrong in the same way, together, counted from 1. */
export function wrongRuns<T, What extends string>(
  things: readonly T[],
  wrong: (thing: T) => What | undefined,
): { readonly span: Span; readonly what: What }[] {
  const runs: { span: [number, number]; what: What }[] = [];
  things.forEach((thing, i) => {
    const what = wrong(thing);
    if (what === undefined) return;
    const before = runs.at(-1);
    if (before !== undefined && before.what === what && before.span[1] === i) before.span[1] = i + 1;
    else runs.push({ span: [i + 1, i + 1], what });
  });
  return runs;
}

/** How many were joined, where it is more than one. */
export function counted([first, last]: Span): { readonly count?: number } {
  return last === first ? {} : { count: last - first + 1 };
}
