/** Mends of the figure, square by square: of floats that are too long, of the balance, of turns that are not held. */

import { type CheckOptions, type Finding, type MendWay, type RuleName, rules } from "@drawcord/check";
import { findAll, measureDraft } from "@drawcord/check/measure";
import { applyChanges, type Change, expand, type UnitDraft } from "@drawcord/units";
import type { Watch } from "../search.js";
import { mendFloats } from "./floats.js";
import { rulesMendedBy } from "./mended-by.js";
import { type Checked, checked, type Mended, prove } from "./proof.js";
import {
  type Faults,
  leastTurned,
  quicklyTurned,
  type Square,
  type SquareSearch,
  squaresIn,
} from "./squares.js";
import { passes } from "./worse.js";

/** The ways to look for a mend of the figure, in the order in which they are tried. */
const tried = ["floats", "squares", "any squares"] as const satisfies readonly MendWay[];

/** More squares turned than this for the sake of balance are another figure, which is the weaver's to draw; the rules say so. */
const MOST_TURNED = 8;

/** Drafts that a search for balance tries at most. */
const MOST_TRIED = 200;

/** The first rule that can be mended by turning squares, mended; those that cannot be are put with `without`. */
export function mendFigure(
  before: Checked,
  options: CheckOptions,
  without: Set<string>,
  watch: Watch,
): Mended | undefined {
  const all = tried.flatMap((way) => rulesMendedBy(way).map((name) => ({ name, way })));
  for (const { name, way } of all) {
    const anywhere = way === "any squares";
    if (watch(0, 1) || passes(before.report, name) || without.has(name)) continue;
    const proved = (mended: UnitDraft, changes: readonly Change[] = []) =>
      prove(before, changes, checked(mended, options), [name]);
    const accept = (mended: UnitDraft) => proved(mended) !== undefined;
    const changes =
      way === "floats"
        ? mendFloats(before.draft, options, accept, watch)
        : turnSquares(before.draft, {
            accept,
            anywhere,
            faultsOf: (one) => faultsOf(name, one, options, anywhere),
            mostTried: MOST_TRIED,
            mostTurned: MOST_TURNED,
            watch,
          });
    if (changes !== undefined) return proved(applyChanges(before.draft, changes), changes);
    without.add(name);
  }
  return undefined;
}

function turnSquares(draft: UnitDraft, search: SquareSearch): readonly Change[] | undefined {
  return leastTurned(draft, search) ?? quicklyTurned(draft, search);
}

/** What a rule finds in a draft, and the squares of the finding that lies on the fewest. */
function faultsOf(name: RuleName, draft: UnitDraft, options: CheckOptions, anywhere: boolean): Faults {
  const cloth = measureDraft(draft, expand(draft), options);
  const findings = findAll(
    cloth,
    rules.filter((rule) => rule.name === name),
  ).findings.filter(({ waived }) => waived === undefined);
  let squares: readonly Square[] = [];
  findings.forEach((finding, i) => {
    const here = squaresUnder(finding, draft);
    if (i === 0 || here.length < squares.length) squares = here;
  });
  const much = findings.reduce((sum, finding) => sum + excess(finding), 0);
  // Findings lie apart: where each is mended in its own place, each wants a square.
  const least = anywhere ? Math.min(1, findings.length) : findings.length;
  return { much, squares, least };
}

/** By how much a finding is beyond its limit, over all that it counts. */
function excess(finding: Finding): number {
  const beyond = "limit" in finding ? Math.abs(finding.measured) - finding.limit : 0;
  return (finding.count ?? 1) * Math.max(Number.EPSILON, beyond);
}

/** The squares of a finding; one without units lies on all of them, and so with rows. */
function squaresUnder({ rows, units }: Finding, { lifts, threading }: UnitDraft): Square[] {
  const [firstUnit, lastUnit] = units ?? [1, threading.length];
  const [firstRow, lastRow] = rows ?? [1, lifts.length];
  return squaresIn([firstUnit - 1, lastUnit - 1], [firstRow - 1, lastRow - 1]);
}
