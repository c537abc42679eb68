import { type AnyRule, type Finding, rules } from "@drawcord/check";

const known: ReadonlyMap<string, AnyRule> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ rules.map((rule): [string, AnyRule] => [rule.name, rule]),
);

/** The rule that found it. */
export function ruleOf({ rule }: Pick<Finding, "rule">): AnyRule {
  return known.get(rule)!;
}
