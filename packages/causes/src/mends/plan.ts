/** Mends of the ground where no slip explains what is found: its ties and its start, the selvedges. */

import type { CheckOptions, MendWay, RuleName } from "@drawcord/check";
import { applyChanges } from "@drawcord/units";
import type { Watch } from "../search.js";
import { groundWays, startWays, tieWays } from "./grounds.js";
import { rulesMendedBy } from "./mended-by.js";
import { type Checked, checked, type Mended, prove } from "./proof.js";
import { selvedgeWays } from "./selvedges.js";
import type { Ways } from "./way.js";
import { passes } from "./worse.js";

/** A rule and the ways that may make it pass. */
interface Cure {
  readonly rule: RuleName;
  readonly ways: Ways;
}

/** The ways to look for a mend of the ground and the selvedges, in the order in which they are tried. */
const tried: readonly (readonly [MendWay, Ways])[] = [
  ["ground", groundWays],
  ["ties", tieWays],
  ["selvedges", selvedgeWays],
  ["starts", startWays],
];

/** The first rule that can be mended by itself, mended. */
export function mendPlan(before: Checked, options: CheckOptions, watch: Watch): Mended | undefined {
  const known = new Map<string, Checked>();
  const all = failing(before).map(({ rule, ways }) => ({ rule, ways: ways(before.draft, options) }));
  for (const { rule, ways } of all) {
    for (const [done, way] of ways.entries()) {
      if (watch(done, ways.length)) return undefined;
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
  return tried.flatMap(([way, ways]) =>
    rulesMendedBy(way).flatMap((rule) => (passes(report, rule) ? [] : [{ rule, ways }])),
  );
}
