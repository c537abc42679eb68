import { type RuleName, rules } from "@drawcord/check";

/**
 * The rules of numbers that agree, which `plan` of the command goes by too.
 * @example numberRules.includes("sley-sett") // true
 */
export const numberRules: readonly RuleName[] = /* @__PURE__ */ rules.flatMap((rule) =>
  "ofNumbers" in rule ? [rule.name] : [],
);
