/** Whether what is found after an edit is what was found before it: of the same kind, and in the same place. */
import type { Finding, Report, Span } from "@drawcord/check";
import { findingKind } from "./kind-of.js";

type Places = Pick<Finding, "ends" | "picks" | "units" | "rows">;
type Sizes = Report["size"];

/** Findings that are not waived, those that speak of the same thing together. */
export function byKind(findings: readonly Finding[]): Map<string, Finding[]> {
  const kinds = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (finding.waived !== undefined) continue;
    const kind = findingKind(finding);
    const same = kinds.get(kind);
    if (same === undefined) kinds.set(kind, [finding]);
    else same.push(finding);
  }
  return kinds;
}

/** By how many threads, units and rows a cloth grew or shrank, and so how far what lies in it may have moved. */
export function sizesApart(before: Sizes, after: Sizes): Sizes {
  const apart = (of: keyof Sizes) => Math.abs(after[of] - before[of]);
  return { ends: apart("ends"), picks: apart("picks"), units: apart("units"), rows: apart("rows") };
}

/** Whether two findings have a place in common, when one may have moved so far. */
export function meet(one: Places, other: Places, moved: Sizes): boolean {
  return (["ends", "picks", "units", "rows"] as const).every((of) => overlap(one[of], other[of], moved[of]));
}

/** Whether two stretches have a place in common; what has no place is everywhere. */
function overlap(one: Span | undefined, other: Span | undefined, moved: number): boolean {
  if (one === undefined || other === undefined) return true;
  return one[0] <= other[1] + moved && other[0] <= one[1] + moved;
}
