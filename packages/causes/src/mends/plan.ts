/** Mends of the plan: the shafts of lifts and units, the ground's ties and its start, the selvedges. */
import type { CheckOptions, RuleName } from "@drawcord/check";
import { applyChanges, type UnitDraft } from "@drawcord/units";
import { groundWays, startWays, tieWays } from "./grounds.js";
import { withoutStatic, withoutUnknown } from "./numbers.js";
import { type Checked, checked, type Mended, prove } from "./proof.js";
import { selvedgeWays } from "./selvedges.js";
import { liftWays, threadingWays } from "./slips.js";
import type { Twin } from "./twin.js";
import type { Way, Ways } from "./way.js";
import { passes } from "./worse.js";

/** A rule and the ways that may make it pass. */
interface Cure {
  readonly rule: RuleName;
  readonly ways: Ways;
}

/** In the order in which they are tried. */
const cures: readonly Cure[] = [
  { rule: "static-drawn", ways: withoutStatic },
  { rule: "unknown-shaft", ways: withoutUnknown },
  { rule: "loom-capacity", ways: tieWays },
  { rule: "threading-slip", ways: threadingWays },
  { rule: "lift-slip", ways: liftWays },
  { rule: "open-cut", ways: groundWays },
  { rule: "float-length", ways: tieWays },
  { rule: "float-length", ways: startWays },
  { rule: "edge-float", ways: selvedgeWays },
  { rule: "edge-float", ways: startWays },
  { rule: "uneven-take-up", ways: selvedgeWays },
  { rule: "uneven-take-up", ways: tieWays },
];

/** Drafts in which several rules are mended together that are tried at most. */
const MOST_TOGETHER = 100;

/** The first rule that can be mended by itself, mended. */
export function mendPlan(before: Checked, options: CheckOptions): Mended | undefined {
  const known = new Map<string, Checked>();
  const all = failing(before).map(({ rule, ways }) => ({ rule, ways: ways(before.draft, options) }));
  for (const unlikely of [false, true]) {
    for (const { rule, way } of all.flatMap(({ rule, ways }) => ways.map((way) => ({ rule, way })))) {
      if ((way.unlikely ?? false) !== unlikely) continue;
      const key = JSON.stringify(way.changes);
      const after = known.get(key) ?? checked(applyChanges(before.draft, way.changes), options);
      known.set(key, after);
      const mended = prove(before, way.changes, after, [rule], twinsOf([way]));
      if (mended !== undefined) return mended;
    }
  }
  return undefined;
}

/** As few rules as can only be mended together, mended together. */
export function mendTogether(before: Checked, options: CheckOptions): Mended | undefined {
  const open = failing(before).filter(({ ways }) => ways(before.draft, options).length > 0);
  const budget = { left: MOST_TOGETHER };
  for (let size = 2; size <= open.length; size++) {
    for (const some of choices(open, size)) {
      if (
        new Set(some.map(({ rule }) => rule)).size < size ||
        new Set(some.map(({ ways }) => ways)).size < size
      )
        continue;
      const aims = some.map(({ rule }) => rule);
      for (const ways of together(before.draft, some, options)) {
        if (budget.left-- <= 0) return undefined;
        const changes = ways.flatMap((way) => way.changes);
        const after = checked(applyChanges(before.draft, changes), options);
        const mended = prove(before, changes, after, aims, twinsOf(ways));
        if (mended !== undefined) return mended;
      }
    }
  }
  return undefined;
}

function failing({ report }: Checked): readonly Cure[] {
  return cures.filter(({ rule }) => !passes(report, rule));
}

/** Ways for each of several rules, one upon the other. */
function* together(
  draft: UnitDraft,
  [first, ...others]: readonly Cure[],
  options: CheckOptions,
): Iterable<readonly Way[]> {
  if (first === undefined) {
    yield [];
    return;
  }
  for (const way of first.ways(draft, options)) {
    for (const rest of together(applyChanges(draft, way.changes), others, options)) yield [way, ...rest];
  }
}

/** So many of the items, in their order, in every way. */
function* choices<T>(items: readonly T[], size: number): Iterable<readonly T[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (const [i, item] of items.entries()) {
    for (const rest of choices(items.slice(i + 1), size - 1)) yield [item, ...rest];
  }
}

function twinsOf(ways: readonly Way[]): Twin[] {
  return ways.flatMap(({ twin }) => (twin === undefined ? [] : [twin]));
}
