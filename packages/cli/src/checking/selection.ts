import { type RuleName, rules } from "@drawcord/check";
import { didYouMean } from "../did-you-mean.js";
import { CliError } from "../error.js";

/**
 * The rules that are asked for; none named means all.
 * @throws {CliError} `unknown-rule` with the nearest name
 */
export async function ruleNames(named: readonly string[]): Promise<readonly RuleName[]> {
  const known = rules.map(({ name }) => name);
  const all: readonly string[] = known;
  for (const name of named) {
    if (all.includes(name)) continue;
    const hint = (await didYouMean(name, known)) || `; there are ${known.join(", ")}`;
    throw new CliError("unknown-rule", `no rule is called "${name}"${hint}`, { rule: name });
  }
  return named.length === 0 ? known : known.filter((name) => named.includes(name));
}

/** Whether every rule is asked for. */
export function asksAll(asked: readonly string[]): boolean {
  return rules.every(({ name }) => asked.includes(name));
}
