import { rules } from "@drawcord/check";
import { draftRules } from "@drawcord/files";
import { didYouMean } from "../did-you-mean.js";
import { CliError } from "../error.js";

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

/** Those of the rules asked for that look at a cloth. */
export function ofCloth(asked: readonly string[]): readonly string[] {
  return rules.map(({ name }) => name).filter((name) => asked.includes(name));
}
