import type { Finding, Report, RuleName } from "./finding.js";

/** A finding of one rule. */
export type FindingBy<Name extends RuleName> = Extract<
  Finding,
  {
    /** The rule's name. */
    readonly rule: Name;
  }
>;

/**
 * What one rule found, in the order of the report.
 * @param report the report, or its findings alone
 * @param name the rule's name
 * @example findingsOf(check({ ...draft, lifts: [[1], [3]] }), "unknown-shaft")[0].shaft // 3
 */
export function findingsOf<Name extends RuleName>(
  { findings }: Pick<Report, "findings">,
  name: Name,
): readonly FindingBy<Name>[] {
  return findings.filter((finding): finding is FindingBy<Name> => finding.rule === name);
}
