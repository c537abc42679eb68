import { step, type Watched } from "@drawcord/base";
import type { Cloth } from "./cloth.js";
import { wholeRule } from "./numbers/entry.js";
import type { ReportOf, Severity, Told } from "./report.js";
import type { AnyRule, Fact, FindingOf } from "./rules/rule.js";
import { accepts } from "./waivers.js";

const WEIGHT: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/** Why a rule did not look that was left out of those asked for. */
export const NOT_ASKED_FOR = "it was not asked for";

/**
 * Lets every rule look at a cloth, and sorts what they find.
 * @param cloth a cloth as `measureDraft` measures it
 * @param rules the rules that look, in the order in which they look
 * @param watched how it is watched and stopped; by default neither
 * @throws {StoppedError} `stopped` when the signal says so
 * @example findAll(measureDraft(draft, expand(draft), {}), []).findings // []
 */
export function findAll<R extends AnyRule>(
  cloth: Cloth,
  rules: readonly R[],
  watched: Watched = {},
): Pick<ReportOf<FindingOf<R>>, "ok" | "summary" | "waived" | "rules" | "findings"> {
  const { waive = [] } = cloth.options;
  const ran: R["name"][] = [];
  const skipped: { rule: R["name"]; reason: string }[] = [];
  const found: (Told & Fact)[] = [];
  const orderOf = new Map(rules.map(({ name }, order) => [name, order]));
  for (const [done, rule] of rules.entries()) {
    step(watched, done, rules.length);
    if (rule.plainOnly && cloth.shaftDraft === undefined) continue;
    const level = levelOf(rule, cloth);
    if (typeof level === "object") {
      skipped.push({ rule: rule.name, reason: level.off });
      continue;
    }
    const looking = wholeRule(rule, cloth.options);
    const on = looking.of(cloth);
    if (typeof on === "string") {
      skipped.push({ rule: rule.name, reason: on });
      continue;
    }
    ran.push(rule.name);
    for (const fact of [...looking.find(on, found)]) {
      const finding = { rule: rule.name, severity: level, message: looking.say(fact), ...fact };
      const waiver = waive.find((one) => accepts(one, finding));
      found.push(waiver === undefined ? finding : { ...finding, waived: waiver.reason });
    }
  }
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
    // Each was made of the name and a fact of one rule, which the list of all cannot say.
    findings: found as unknown as FindingOf<R>[],
  };
}

/** The level of a rule's findings, or why it is not to look. */
function levelOf({ name, severity }: AnyRule, { options }: Cloth): Severity | { off: string } {
  const { levels = {}, only } = options;
  if (only !== undefined && !only.includes(name)) return { off: NOT_ASKED_FOR };
  const level = levels[name] ?? severity;
  return level === "off" ? { off: "it is switched off" } : level;
}
