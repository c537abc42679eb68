import type { Cloth } from "./cloth.js";
import type { Finding, Report, Severity } from "./report.js";
import type { Rule } from "./rules/rule.js";
import { accepts } from "./waivers.js";
import { place } from "./words.js";

const WEIGHT: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/** Why a rule did not look that was left out of those asked for. */
export const NOT_ASKED_FOR = "it was not asked for";

/**
 * Lets every rule look at a cloth, and sorts what they find.
 * @example findAll(measureDraft(draft, expand(draft), {}), []).findings // []
 */
export function findAll(
  cloth: Cloth,
  rules: readonly Rule[],
): Pick<Report, "ok" | "summary" | "waived" | "rules" | "findings"> {
  const { levels = {}, only, waive = [] } = cloth.options;
  const ran: string[] = [];
  const skipped: { rule: string; reason: string }[] = [];
  const found: Finding[] = [];
  const orderOf = new Map(rules.map(({ name }, order) => [name, order]));
  rules.forEach((rule) => {
    const asked = only === undefined || only.includes(rule.name);
    const severity = asked ? (levels[rule.name] ?? rule.severity) : "off";
    const why = asked ? "it is switched off" : NOT_ASKED_FOR;
    const reason = severity === "off" ? why : rule.cannot?.(cloth);
    if (severity === "off" || reason !== undefined) {
      skipped.push({ rule: rule.name, reason: reason ?? "" });
      return;
    }
    ran.push(rule.name);
    for (const fact of [...rule.find(cloth, found)]) {
      const where = rule.saysPlace ? "" : place(fact);
      const said = rule.say(fact, cloth);
      const message = where === "" ? said : `${said}: ${where}`;
      const finding: Finding = { rule: rule.name, severity, message, ...fact };
      const waiver = waive.find((one) => accepts(one, finding));
      found.push(waiver === undefined ? finding : { ...finding, waived: waiver.reason });
    }
  });
  found.sort(
    (a, b) =>
      WEIGHT[a.severity] - WEIGHT[b.severity] ||
      orderOf.get(a.rule)! - orderOf.get(b.rule)! ||
      Math.abs(b.measured ?? 0) - Math.abs(a.measured ?? 0) ||
      (b.count ?? 1) - (a.count ?? 1) ||
      (a.picks?.[0] ?? 0) - (b.picks?.[0] ?? 0) ||
      (a.ends?.[0] ?? 0) - (b.ends?.[0] ?? 0),
  );
  const counted = found.filter((finding) => finding.waived === undefined);
  const summary = { error: 0, warning: 0, note: 0 };
  for (const { severity } of counted) summary[severity]++;
  return {
    ok: summary.error === 0,
    summary,
    waived: found.length - counted.length,
    rules: { ran, skipped },
    findings: found,
  };
}
