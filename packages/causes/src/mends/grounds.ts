/** Changes to the ground that may mend a draft. */
import type { Change, UnitDraft } from "@drawcord/units";
import { slippedTies } from "./ties.js";
import type { Way } from "./way.js";

/** A tie set right. */
export function tieWays(draft: UnitDraft): Way[] {
  return slippedTies(draft).map((tie) => ({ changes: [tie] }));
}

/** The treadling begun some steps later, the fewest first. */
export function startWays({ ground }: UnitDraft): Way[] {
  return Array.from({ length: Math.max(0, ground.steps.length - 1) }, (_, i) => ({
    changes: [{ change: "start-ground", steps: i + 1 }],
  }));
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
