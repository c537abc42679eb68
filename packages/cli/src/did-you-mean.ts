import { nearest } from "@drawcord/base";

/**
 * `; did you mean "check"?`, or nothing when no known name is near.
 * @param dashes what stands before each name when it is typed
 */
export function didYouMean(name: string, known: readonly string[], dashes = ""): string {
  const meant = nearest(name, known);
  return meant === undefined ? "" : `; did you mean "${dashes}${meant}"?`;
}
