import { checkLimits } from "./check-limits.js";
import { CheckError } from "./error.js";
import type { OptionsOf } from "./options.js";
import { rules } from "./rules.js";

/**
 * Refuses options that cannot be meant.
 * @throws {CheckError} `bad-sett`, `bad-limit`, `bad-level`, `bad-repeat`, `unknown-rule`
 */
export function checkOptions({
  sett = {},
  limits = {},
  repeat,
  levels = {},
  only = [],
  waive = [],
}: OptionsOf): void {
  for (const [name, perCm] of Object.entries(sett)) {
    if (perCm !== undefined && !(Number.isFinite(perCm) && perCm > 0)) {
      throw new CheckError("bad-sett", `${name} is ${perCm}; expected a number above 0`, {
        name,
        found: perCm,
      });
    }
  }
  checkLimits(limits);
  if (repeat !== undefined && !["none", "ends", "picks", "both"].includes(repeat)) {
    throw new CheckError("bad-repeat", `repeat is ${repeat}; expected none, ends, picks or both`, {
      found: repeat,
    });
  }
  for (const [rule, level] of Object.entries<string | undefined>(levels)) {
    checkRule(rule);
    if (level === undefined) continue;
    if (!["error", "warning", "note", "off"].includes(level)) {
      throw new CheckError(
        "bad-level",
        `the level of ${rule} is ${level}; expected error, warning, note or off`,
        {
          rule,
          found: level,
        },
      );
    }
  }
  for (const rule of only) checkRule(rule);
  for (const { rule } of waive) checkRule(rule);
}

function checkRule(name: string): void {
  if (rules.some((rule) => rule.name === name)) return;
  const known = rules.map((rule) => rule.name).join(", ");
  throw new CheckError("unknown-rule", `there is no rule ${name}; the rules are ${known}`, { name });
}
