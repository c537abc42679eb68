/** Changes to the ground that may mend a draft. */
import type { Change, UnitDraft } from "@drawcord/units";
import { slippedTies } from "./ties.js";
import type { Way } from "./way.js";

/** A tie set right. */
export function tieWays(draft: UnitDraft): Way[] {
  return slippedTies(draft).map((tie) => ({ changes: [tie] }));
}

/** The treadling begun some steps later or earlier, the fewest first. */
export function startWays({ ground }: UnitDraft): Way[] {
  const { length } = ground.steps;
  return Array.from({ length: Math.max(0, length - 1) }, (_, i) => shorterWay(i + 1, length))
    .sort((a, b) => Math.abs(a) - Math.abs(b))
    .map((steps) => ({ changes: [{ change: "start-ground", steps }] }));
}

/** So many steps later in a treadling of so many, or, where that is the shorter way, earlier: below 0. */
export function shorterWay(steps: number, length: number): number {
  return 2 * steps > length ? steps - length : steps;
}

/**
 * The ways after which a figure may cut: a tie set right, the treadling begun some steps later, raise and sink exchanged
 * on every treadle, or several of these; the fewest changes first.
 */
export function groundWays(draft: UnitDraft): Way[] {
  const none: Way = { changes: [] };
  const swap: Change = { change: "swap-ground" };
  return [none, ...tieWays(draft)]
    .flatMap((tie) =>
      [none, { changes: [swap] }].flatMap((swapped) =>
        [none, ...startWays(draft)].map((start) => [...tie.changes, ...swapped.changes, ...start.changes]),
      ),
    )
    .filter((changes) => changes.length > 0)
    .sort((a, b) => a.length - b.length)
    .map((changes) => ({ changes }));
}
