/** Whether a finding is still there after an edit: of the same kind, and in the same place. */
import type { Finding, Report, Span } from "@drawcord/check";
import { findingKind } from "./kind-of.js";

/** What an edit does to the findings of a report. */
export interface Effect {
  /** Indexes of the findings that are gone. */
  readonly gone: readonly number[];
  /** What is found that was not before. */
  readonly added: readonly Finding[];
}

/** Compares the findings before an edit with those after it; what a waiver accepts is left out. */
export function effectOf(before: Report, after: Report): Effect {
  const moved = {
    ends: Math.abs(after.size.ends - before.size.ends),
    picks: Math.abs(after.size.picks - before.size.picks),
    units: Math.abs(after.size.units - before.size.units),
    rows: Math.abs(after.size.rows - before.size.rows),
  };
  const was = byKind(before.findings);
  const is = byKind(after.findings);
  const gone = before.findings.flatMap((finding, i) =>
    finding.waived !== undefined ||
    (is.get(findingKind(finding)) ?? []).some((other) => meet(finding, other, moved))
      ? []
      : [i],
  );
  const added = after.findings.filter(
    (finding) =>
      finding.waived === undefined &&
      !(was.get(findingKind(finding)) ?? []).some((other) => meet(finding, other, moved)),
  );
  return { gone, added };
}

function byKind(findings: readonly Finding[]): Map<string, Finding[]> {
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

type Places = Pick<Finding, "ends" | "picks" | "units" | "rows">;

function meet(one: Places, other: Places, moved: Report["size"]): boolean {
  return (["ends", "picks", "units", "rows"] as const).every((of) => overlap(one[of], other[of], moved[of]));
}

/** Whether two stretches have a place in common; what has no place is everywhere. */
function overlap(one: Span | undefined, other: Span | undefined, moved: number): boolean {
  if (one === undefined || other === undefined) return true;
  return one[0] <= other[1] + moved && other[0] <= one[1] + moved;
}
