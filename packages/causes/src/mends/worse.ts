/**
 * Whether a mend makes anything worse. Every finding after it must have been there before: a finding of the same kind, in
 * the same place, at least as bad; and of no kind may there be more faults.
 */
import type { Finding, Report } from "@drawcord/check";
import { byKind, meet, sizesApart } from "../found-again.js";

/**
 * Whether no rule finds what it did not find before, or finds it worse.
 * @param mended the rules that pass now and did not before
 */
export function noneWorse(before: Report, after: Report, mended: readonly string[]): boolean {
  const was = byKind(before.findings);
  const moved = sizesApart(before.size, after.size);
  return [...byKind(after.findings)].every(([kind, is]) => {
    const [one] = is;
    if (one === undefined) return true;
    // A waiver of what was mended is no longer needed.
    if ("waives" in one && mended.includes(one.waives)) return true;
    const then = was.get(kind) ?? [];
    if (faults(is) > faults(then)) return false;
    const said = new Set(then.map(({ message }) => message));
    return is.every((finding) => {
      if (said.has(finding.message)) return true;
      const there = then.filter((other) => meet(other, finding, moved));
      return (
        (finding.count ?? 1) <= faults(there) && badness(finding) <= Math.max(0, ...there.map(badness)) + 1e-9
      );
    });
  });
}

/** Whether a rule finds nothing that is not waived. */
export function passes({ findings }: Report, rule: string): boolean {
  return findings.every((finding) => finding.rule !== rule || finding.waived !== undefined);
}

function faults(findings: readonly Finding[]): number {
  return findings.reduce((sum, { count = 1 }) => sum + count, 0);
}

/** How bad a finding is: a stated number by how far off it is, anything else by what was measured. */
function badness(finding: Finding): number {
  if ("stated" in finding) return Math.abs(finding.measured - finding.limit);
  return "measured" in finding ? Math.abs(finding.measured) : 0;
}
