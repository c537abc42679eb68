import type { WaiverOf } from "./options.js";
import type { Span, Told } from "./report.js";

/** Whether a waiver accepts a finding: the rule is the same, and the finding lies within every place that the waiver names. */
export function accepts(waiver: WaiverOf, finding: Told): boolean {
  return (
    waiver.rule === finding.rule &&
    within(finding.ends, waiver.ends) &&
    within(finding.picks, waiver.picks) &&
    within(finding.units, waiver.units) &&
    within(finding.rows, waiver.rows)
  );
}

function within(inner: Span | undefined, outer: Span | undefined): boolean {
  return outer === undefined || (inner !== undefined && inner[0] >= outer[0] && inner[1] <= outer[1]);
}
