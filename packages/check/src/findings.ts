import type { Cloth } from "./cloth.js";
import type { Finding, Report, Severity } from "./report.js";
import type { Rule } from "./rules/rule.js";
import { accepts } from "./waivers.js";
import { place } from "./words.js";

const WEIGHT: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/** Lets every rule look at a cloth, and sorts what they find. */
export function findAll(
  cloth: Cloth,
  rules: readonly Rule[],
): Pick<Report, "ok" | "summary" | "waived" | "rules" | "findings"> {
  const { levels = {}, waive = [] } = cloth.options;
  const ran: string[] = [];
  const skipped: { rule: string; reason: string }[] = [];
  const found: { finding: Finding; order: number }[] = [];
  rules.forEach((rule, order) => {
    const severity = levels[rule.name] ?? rule.severity;
    const reason = severity === "off" ? "it is switched off" : rule.cannot?.(cloth);
    if (severity === "off" || reason !== undefined) {
      skipped.push({ rule: rule.name, reason: reason ?? "" });
      return;
    }
    ran.push(rule.name);
    for (const fact of rule.find(cloth)) {
      const where = rule.saysPlace ? "" : place(fact);
      const said = rule.say(fact, cloth);
      const message = where === "" ? said : `${said}: ${where}`;
      const finding: Finding = { rule: rule.name, severity, message, ...fact };
      const waiver = waive.find((one) => accepts(one, finding));
      found.push({ finding: waiver === undefined ? finding : { ...finding, waived: waiver.reason }, order });
    }
  });
  found.sort(
    (a, b) =>
      WEIGHT[a.finding.severity] - WEIGHT[b.finding.severity] ||
      a.order - b.order ||
      (b.finding.measured ?? 0) - (a.finding.measured ?? 0) ||
      (a.finding.picks?.[0] ?? 0) - (b.finding.picks?.[0] ?? 0) ||
      (a.finding.ends?.[0] ?? 0) - (b.finding.ends?.[0] ?? 0),
  );
  const findings = found.map(({ finding }) => finding);
  const counted = findings.filter((finding) => finding.waived === undefined);
  const summary = { error: 0, warning: 0, note: 0 };
  for (const { severity } of counted) summary[severity]++;
  return {
    ok: summary.error === 0,
    summary,
    waived: findings.length - counted.length,
    rules: { ran, skipped },
    findings,
  };
}
