import { CheckError } from "./error.js";
import type { CheckOptions } from "./options.js";
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
}: CheckOptions): void {
  for (const [name, perCm] of Object.entries(sett)) {
    if (perCm !== undefined && !(Number.isFinite(perCm) && perCm > 0)) {
      throw new CheckError("bad-sett", `${name} is ${perCm}; expected a number above 0`, {
        name,
        found: perCm,
      });
    }
  }
  checkSizes("float", limits.float);
  checkSizes("warpFloat", limits.warpFloat);
  checkSizes("weftFloat", limits.weftFloat);
  for (const [weft, limit] of Object.entries(limits.floatOfWeft ?? {}))
    checkSizes(`floatOfWeft ${weft}`, limit);
  checkSizes("stretch", limits.stretch);
  checkSizes("area", limits.area);
  checkSizes("drawnArea", limits.drawnArea);
  checkSizes("undrawnArea", limits.undrawnArea);
  checkSizes("thinArea", { squares: limits.thinArea });
  checkSizes("unlikeSides", { times: limits.unlikeSides });
  for (const name of ["openCuts", "takeUp", "faceShare"] as const) {
    const share = limits[name];
    if (share !== undefined && !(share >= 0 && share <= 100)) {
      throw new CheckError("bad-limit", `${name} is ${share}; expected percent from 0 to 100`, {
        name,
        found: share,
      });
    }
  }
  if (repeat !== undefined && !["none", "ends", "picks", "both"].includes(repeat)) {
    throw new CheckError("bad-repeat", `repeat is ${repeat}; expected none, ends, picks or both`, {
      found: repeat,
    });
  }
  for (const [rule, level] of Object.entries(levels)) {
    checkRule(rule);
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

function checkSizes(name: string, limit: object | undefined): void {
  for (const [unit, length] of Object.entries<number | undefined>({ ...limit })) {
    if (length !== undefined && !(Number.isFinite(length) && length > 0)) {
      throw new CheckError("bad-limit", `the limit ${name} is ${length} ${unit}; expected a number above 0`, {
        name,
        found: length,
      });
    }
  }
}

function checkRule(name: string): void {
  if (rules.some((rule) => rule.name === name)) return;
  const known = rules.map((rule) => rule.name).join(", ");
  throw new CheckError("unknown-rule", `there is no rule ${name}; the rules are ${known}`, { name });
}
