import type { Severity, Span, Waiver } from "@drawcord/check";
import { attempt, Unread } from "../tree/problems.js";
import { at, entries, isWhole, items, need, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";

/** The levels of the section `limits`, whose shape was checked, by the rule's name. */
export function readLevels(section: Spot | undefined): Readonly<Record<string, Severity | "off">> {
  const levels = section === undefined ? undefined : at(section, "levels");
  if (levels === undefined) return {};
  return Object.fromEntries(
    entries(levels).map(([rule, level]) => [rule, textOf(level) as Severity | "off"]),
  );
}

/**
 * The section `waive`, whose shape was checked. A waiver of which something cannot be read, such as a place that is none
 * (`bad-notation`), is left out whole: without its place it would accept more than it says.
 */
export function readWaivers(section: Spot | undefined): readonly Waiver<string>[] {
  if (section === undefined) return [];
  return items(section).flatMap((waiver) => {
    const read = attempt(section.tree.problems, () => readWaiver(waiver));
    return read === undefined ? [] : [read];
  });
}

function readWaiver(waiver: Spot): Waiver<string> {
  if (!isWhole(waiver)) throw new Unread();
  return {
    rule: textOf(need(waiver, "rule")),
    reason: textOf(need(waiver, "reason")),
    ...spanAt(waiver, "ends"),
    ...spanAt(waiver, "picks"),
    ...spanAt(waiver, "units"),
    ...spanAt(waiver, "rows"),
  };
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
