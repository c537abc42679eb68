import type { OptionsOf } from "../options.js";
import type { AnyRule } from "../rules/rule.js";

/** A rule without its functions. */
type Entry = Omit<AnyRule, "of" | "find" | "say" | "parts">;

/**
 * A rule of numbers in the list of all rules: what it is called is known, and how it looks comes with the project, so that a
 * check of the cloth alone carries neither the rule nor its formulas. Where it is found is for `partsOf` to say.
 */
export function entryOf<R extends AnyRule>(entry: Entry & Pick<R, "name">): R {
  const unsaid = { ...entry, of: () => "nothing is said of the project", parts: () => [] };
  // As it never looks, it finds nothing and says nothing: `wholeRule` gives the one that does.
  return unsaid as unknown as R;
}

/** The rule itself, where it is one of numbers and came with the project. */
export function wholeRule(rule: AnyRule, { project }: OptionsOf): AnyRule {
  // They are the rules of `rulesOfNumbers`, which the type of a project, being part of the options of rules, cannot say.
  return (project?.rules.find(({ name }) => name === rule.name) as AnyRule | undefined) ?? rule;
}
