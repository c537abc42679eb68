import { type AnyRule, type MendWay, type RuleName, rules } from "@drawcord/check";

/**
 * The rules whose mends are looked for in a way, in the order of the rules.
 * @example rulesMendedBy("ground") // ["open-cut"]
 */
export function rulesMendedBy(way: MendWay): readonly RuleName[] {
  return rules.flatMap((rule: AnyRule & { readonly name: RuleName }) =>
    rule.mends?.includes(way) === true ? [rule.name] : [],
  );
}
