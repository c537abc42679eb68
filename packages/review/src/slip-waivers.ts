import { type Finding, type Report, unusedWaiver } from "@drawcord/check";
import type { Recipe } from "@drawcord/files";
import { SLIP } from "./rule-names.js";

type Waivers = Pick<Recipe, "levels" | "waive">;

/**
 * The report with its waivers counted as the recipe lists them: the checker knows none of slips, so those that accept no slip
 * are told here, beside those that accept no finding.
 * @param report what the checker found
 * @param recipe whose waivers they are
 * @param used the waivers (from 0) of slips that accept one; undefined where slips were not looked for
 */
export function withSlipWaivers(
  report: Report,
  { levels, waive }: Waivers,
  used: ReadonlySet<number> | undefined,
): Report {
  if (!waive.some(({ rule }) => rule === SLIP)) return report;
  const ofFindings = waive.flatMap(({ rule }, i) => (rule === SLIP ? [] : [i + 1]));
  const findings = report.findings.map(
    (finding): Finding =>
      finding.rule === unusedWaiver.name ? { ...finding, waiver: ofFindings[finding.waiver - 1]! } : finding,
  );
  const severity = levels[unusedWaiver.name] ?? unusedWaiver.severity;
  if (used === undefined || severity === "off" || levels[SLIP] === "off") return { ...report, findings };
  const unused = waive.flatMap(({ ends, picks, rows, rule: waives, units }, i): Finding[] => {
    if (waives !== SLIP || used.has(i)) return [];
    const place = {
      ...(ends && { ends }),
      ...(picks && { picks }),
      ...(units && { units }),
      ...(rows && { rows }),
    };
    const fact = { waives, waiver: i + 1, ...place };
    return [{ rule: unusedWaiver.name, severity, ...fact, message: unusedWaiver.say(fact) }];
  });
  return {
    ...report,
    ok: report.ok && (severity !== "error" || unused.length === 0),
    summary: { ...report.summary, [severity]: report.summary[severity] + unused.length },
    findings: [...findings, ...unused],
  };
}
