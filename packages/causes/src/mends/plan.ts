/** Mends of the ground where no slip explains what is found: its ties and its start, the selvedges. */

import type { CheckOptions, RuleName } from "@drawcord/check";
import { applyChanges } from "@drawcord/units";
import type { Watch } from "../search.js";
import { groundWays, startWays, tieWays } from "./grounds.js";
import { type Checked, checked, type Mended, prove } from "./proof.js";
import { selvedgeWays } from "./selvedges.js";
import type { Ways } from "./way.js";
import { passes } from "./worse.js";

/** A rule and the ways that may make it pass. */
interface Cure {
  readonly rule: RuleName;
  readonly ways: Ways;
}

/** In the order in which they are tried. */
const cures: readonly Cure[] = [
  { rule: "loom-capacity", ways: tieWays },
  { rule: "open-cut", ways: groundWays },
  { rule: "float-length", ways: tieWays },
  { rule: "float-length", ways: startWays },
  { rule: "edge-float", ways: selvedgeWays },
  { rule: "edge-float", ways: startWays },
  { rule: "uneven-take-up", ways: selvedgeWays },
  { rule: "uneven-take-up", ways: tieWays },
];

/** The first rule that can be mended by itself, mended. */
export function mendPlan(before: Checked, options: CheckOptions, watch: Watch): Mended | undefined {
  const known = new Map<string, Checked>();
  const all = failing(before).map(({ rule, ways }) => ({ rule, ways: ways(before.draft, options) }));
  for (const { rule, ways } of all) {
    for (const [tried, way] of ways.entries()) {
      if (watch(tried, ways.length)) return undefined;
      const key = JSON.stringify(way.changes);
      const after = known.get(key) ?? checked(applyChanges(before.draft, way.changes), options);
      known.set(key, after);
      const mended = prove(before, way.changes, after, [rule]);
      if (mended !== undefined) return mended;
    }
  }
  return undefined;
}

function failing({ report }: Checked): readonly Cure[] {
  return cures.filter(({ rule }) => !passes(report, rule));
}
