/** What an edit does to what is found: which findings are gone, and which are new. */
import type { Finding, Report } from "@drawcord/check";
import { byKind, meet, sizesApart } from "./found-again.js";
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
  const moved = sizesApart(before.size, after.size);
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
