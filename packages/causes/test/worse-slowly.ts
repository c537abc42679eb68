/** What a mend must not do, told the plain way: every finding after is looked for among those before. */
import type { Finding, Report, Span } from "@drawcord/check";

const far = (finding: Finding) => {
  if (finding.rule === "stated-number") return Math.abs(finding.measured - finding.limit);
  return "measured" in finding ? Math.abs(finding.measured) : 0;
};

const times = (findings: readonly Finding[]) => findings.reduce((sum, { count }) => sum + (count ?? 1), 0);

const alike = (a: Finding, b: Finding) =>
  (
    [
      "rule",
      "unit",
      "system",
      "weft",
      "face",
      "harness",
      "shaft",
      "stated",
      "drawn",
      "alone",
      "waives",
    ] as const
  ).every((key) => said(a, key) === said(b, key));

const said = (finding: object, key: string) => (finding as Readonly<Record<string, unknown>>)[key];

const touch = (a: Span | undefined, b: Span | undefined, slack: number) =>
  a === undefined || b === undefined || (a[0] - slack <= b[1] && b[0] - slack <= a[1]);

/**
 * The findings after that were not there before, or not so bad.
 * @param mended the rules mended
 * @param slip whether it was a slip that was mended: its counterpart may then have had a note before
 */
export function worseThan(before: Report, after: Report, mended: readonly string[], slip = false): Finding[] {
  const was = before.findings.filter(({ waived }) => waived === undefined);
  const is = after.findings.filter(({ waived }) => waived === undefined);
  return is.filter((finding) => {
    if (mended.includes(finding.rule)) return true;
    if (finding.rule === "unused-waiver" && mended.includes(finding.waives)) return false;
    const kind = was.filter((one) => alike(one, finding));
    if (slip && finding.severity === "note") return kind.length === 0;
    if (times(is.filter((one) => alike(one, finding))) > times(kind)) return true;
    const here = kind.filter((one) =>
      (["ends", "picks", "units", "rows"] as const).every((of) =>
        touch(one[of], finding[of], Math.abs(before.size[of] - after.size[of])),
      ),
    );
    return times([finding]) > times(here) || far(finding) > Math.max(...here.map(far)) + 1e-9;
  });
}
