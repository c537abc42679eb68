import type { OptionsOf } from "../options.js";
import type { AnyRule } from "../rules/rule.js";

/** A rule without its functions. */
type Entry = Omit<AnyRule, "of" | "find" | "say" | "parts">;

/**
 * A rule of numbers in the list of all rules: what it is called is known, and how it looks comes with the project, so that a
 * check of the cloth alone carries neither the rule nor its formulas. Where it is found is for `partsOf` to say.
 */
export function entryOf<R extends AnyRule>(entry: Entry & Pick<R, "name">): R {
  const { name } = entry;
  const rule: AnyRule = {
    ...entry,
    of: (cloth) => carried(name, cloth.options)?.of(cloth) ?? "nothing is said of the project",
    find: (on, found) => carried(name, on.options)!.find(on, found),
    say: (fact, on) => carried(name, on.options)!.say(fact, on),
    parts: () => [],
  };
  return rule as R;
}

function carried(name: string, { project }: OptionsOf): AnyRule | undefined {
  // They are the rules of `rulesOfNumbers`, which the type of a project, being part of the options of rules, cannot say.
  return project?.rules.find((rule) => rule.name === name) as AnyRule | undefined;
}
