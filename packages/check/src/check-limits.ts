import { CheckError } from "./error.js";
import type { Limit } from "./limits/limit.js";
import { type Limits, limits } from "./limits.js";

/**
 * Refuses limits that cannot be meant.
 * @throws {CheckError} `bad-limit`
 */
export function checkLimits(set: Limits): void {
  const values: Readonly<Record<string, unknown>> = { ...set };
  for (const limit of limits as readonly Limit[]) {
    const { apart = {}, byWeft, name } = limit;
    for (const part of [name, ...Object.values(apart)]) checkValue(part, values[part], limit);
    const wefts = byWeft === undefined ? undefined : values[byWeft];
    for (const [weft, value] of Object.entries({ ...(wefts as object) }))
      checkValue(`${byWeft} ${weft}`, value, limit);
  }
}

function checkValue(name: string, value: unknown, { kind }: Limit): void {
  if (value === undefined) return;
  if (kind === "share" || kind === "percent") {
    const share = value as number;
    const most = kind === "share" ? 100 : Number.MAX_VALUE;
    if (share >= 0 && share <= most) return;
    const range = kind === "share" ? "percent from 0 to 100" : "percent from 0";
    throw new CheckError("bad-limit", `${name} is ${share}; expected ${range}`, {
      name,
      found: share,
    });
  }
  const sizes = kind === "size" ? { ...(value as object) } : { [kind === "count" ? "squares" : kind]: value };
  for (const [unit, size] of Object.entries<number | undefined>(sizes as Record<string, number>)) {
    if (size === undefined || (Number.isFinite(size) && size > 0)) continue;
    throw new CheckError("bad-limit", `the limit ${name} is ${size} ${unit}; expected a number above 0`, {
      name,
      found: size,
    });
  }
}
