import { type FloatLimit, type Limits, rules, type Severity, type Span, type Waiver } from "@drawcord/check";
import type { Ground } from "@drawcord/ground";
import { toMetric } from "@drawcord/yarn/quantity";
import { nearest } from "../nearest.js";
import { printable } from "../printable.js";
import { unknownKey } from "../tree/shape.js";
import { at, entries, isSection, items, type Spot, textAt, textOf, wayTo, wrong } from "../tree/spot.js";
import { quantityOf } from "./notation.js";
import { weftsOf } from "./yarns.js";

/** The limits of the section `limits`, whose shape was checked, with the ground's own wefts by name. */
export function readLimits(section: Spot | undefined, ground: Ground): Limits {
  if (section === undefined) return {};
  const float = at(section, "float");
  const openCuts = at(section, "open-cuts");
  return {
    ...(float === undefined ? {} : readFloats(float, weftsOf(ground))),
    ...(openCuts === undefined ? {} : { openCuts: readOpenCuts(openCuts) }),
  };
}

function readFloats(float: Spot, wefts: readonly string[]): Limits {
  if (!isSection(float)) return { float: readFloat(float) };
  const warp = at(float, "warp");
  const weft = at(float, "weft");
  const named = entries(float).filter(([name]) => name !== "warp" && name !== "weft");
  for (const [name, { key, ...limit }] of named) {
    if (wefts.includes(name)) continue;
    const sentence = unknownKey(name, ["warp", "weft", ...wefts], float.path);
    throw wrong({ ...limit, node: key ?? limit.node }, "unknown-key", sentence);
  }
  return {
    ...(warp === undefined ? {} : { warpFloat: readFloat(warp) }),
    ...(weft === undefined ? {} : { weftFloat: readFloat(weft) }),
    ...(named.length === 0
      ? {}
      : { floatOfWeft: Object.fromEntries(named.map(([name, limit]) => [name, readFloat(limit)])) }),
  };
}

function readFloat(of: Spot): FloatLimit {
  const limit = quantityOf(of, ["number", "length"]);
  if (limit.kind === "length" && limit.value > 0) return { mm: toMetric(limit).value };
  if (Number.isInteger(limit.value) && limit.value >= 1) return { threads: limit.value };
  throw wrong(
    of,
    "bad-value",
    `${wayTo(of.path)} is ${textOf(of)}; expected a whole number of threads from 1, or a length above 0`,
  );
}

function readOpenCuts(of: Spot): number {
  const { value } = quantityOf(of, ["share"]);
  if (value <= 100) return value;
  throw wrong(of, "bad-value", `${wayTo(of.path)} is ${textOf(of)}; a share goes up to 100 %`);
}

/**
 * The levels of the section `limits`, by the rule's name.
 * @throws {FileError} `unknown-rule`
 */
export function readLevels(section: Spot | undefined): Readonly<Record<string, Severity | "off">> {
  const levels = section === undefined ? undefined : at(section, "levels");
  if (levels === undefined) return {};
  return Object.fromEntries(
    entries(levels).map(([rule, level]) => {
      checkRule({ ...level, node: level.key ?? level.node }, rule);
      return [rule, textOf(level) as Severity | "off"];
    }),
  );
}

/**
 * The section `waive`, whose shape was checked.
 * @throws {FileError} `unknown-rule`; `bad-notation` for a place that is none
 */
export function readWaivers(section: Spot | undefined): readonly Waiver[] {
  if (section === undefined) return [];
  return items(section).map((waiver) => {
    const rule = at(waiver, "rule")!;
    checkRule(rule, textOf(rule));
    return {
      rule: textOf(rule),
      reason: textAt(waiver, "reason")!,
      ...spanAt(waiver, "ends"),
      ...spanAt(waiver, "picks"),
      ...spanAt(waiver, "units"),
      ...spanAt(waiver, "rows"),
    };
  });
}

/** Refuses a rule that the checker does not have. */
function checkRule(of: Spot, name: string): void {
  const known = rules.map((rule) => rule.name);
  if (known.includes(name)) return;
  const meant = nearest(name, known);
  const hint = meant === undefined ? `the rules are ${known.join(", ")}` : `did you mean "${meant}"?`;
  throw wrong(of, "unknown-rule", `no rule is called "${printable(name)}"; ${hint}`);
}

/** `7` or `3-9`, as a part of a waiver. */
function spanAt<Name extends "ends" | "picks" | "units" | "rows">(
  waiver: Spot,
  name: Name,
): { readonly [key in Name]?: Span } {
  const value = at(waiver, name);
  if (value === undefined) return {};
  const match = /^\s*(\d{1,10})\s*(?:-\s*(\d{1,10}))?\s*$/.exec(textOf(value));
  const first = Number(match?.[1]);
  const last = Number(match?.[2] ?? first);
  if (match === null || first < 1 || last < first) {
    throw wrong(
      value,
      "bad-notation",
      `${wayTo(value.path)} must be one number, or the first and the last: 3-9`,
    );
  }
  const span: Span = [first, last];
  return { [name]: span } as { [key in Name]: Span };
}
