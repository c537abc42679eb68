/**
 * `; did you mean "check"?`, or nothing when no known name is near.
 * @param dashes what stands before each name when it is typed
 */
export async function didYouMean(name: string, known: readonly string[], dashes = ""): Promise<string> {
  // Loaded only when something was mistyped.
  const { nearest } = await import("./nearest.js");
  const meant = nearest(name, known);
  return meant === undefined ? "" : `; did you mean "${dashes}${meant}"?`;
}
