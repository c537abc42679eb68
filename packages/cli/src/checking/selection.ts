import { type CheckOptions, type Report, rules } from "@drawcord/check";
import { draftRules } from "@drawcord/files";
import { didYouMean } from "../did-you-mean.js";
import { CliError } from "../error.js";

/** Why a rule did not run that `--rule` left out. */
export const NOT_ASKED_FOR = "it was not asked for";

/**
 * The rules that are asked for, those for plain drafts among them; none named means all.
 * @throws {CliError} `unknown-rule` with the nearest name
 */
export async function ruleNames(named: readonly string[]): Promise<readonly string[]> {
  const known = [...rules, ...draftRules].map(({ name }) => name);
  for (const name of named) {
    if (known.includes(name)) continue;
    const hint = didYouMean(name, known) || `; there are ${known.join(", ")}`;
    throw new CliError("unknown-rule", `no rule is called "${name}"${hint}`, { rule: name });
  }
  return named.length === 0 ? known : known.filter((name) => named.includes(name));
}

/** The options with every rule switched off that is not asked for, and without its waivers, which would match nothing. */
export function onlyRules(options: CheckOptions, asked: readonly string[]): CheckOptions {
  const others = rules.filter(({ name }) => !asked.includes(name));
  if (others.length === 0) return options;
  const off = Object.fromEntries(others.map(({ name }) => [name, "off"] as const));
  const waive = (options.waive ?? []).filter(({ rule }) => asked.includes(rule));
  return { ...options, levels: { ...options.levels, ...off }, waive };
}

/** The report with the true reason why a rule did not run that was not asked for. */
export function withReasons(report: Report, asked: readonly string[]): Report {
  const { ran, skipped } = report.rules;
  if (skipped.every(({ rule }) => asked.includes(rule))) return report;
  const reasons = skipped.map((one) => (asked.includes(one.rule) ? one : { ...one, reason: NOT_ASKED_FOR }));
  return { ...report, rules: { ran, skipped: reasons } };
}
