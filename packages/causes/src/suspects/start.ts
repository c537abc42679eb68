/** The ground begun at another step than that at which it cuts. */
import { cutOf, type Ground } from "@drawcord/ground";
import { applyChanges, type Change, commonSize, type UnitDraft } from "@drawcord/units";
import { shorterWay } from "../mends/grounds.js";
import type { Suspect } from "./suspect.js";

/** Borders left open by a ground begun so. */
interface Begun {
  readonly changes: readonly Change[];
  readonly open: number;
  /** How many steps it is begun too late or too early. */
  readonly far: number;
}

/** A start, or raise and sink exchanged, with which the ground cuts better; the nearest start first. */
export function startSuspects(draft: UnitDraft): Suspect[] {
  const { ground } = draft;
  const count = ground.steps.length;
  if (count < 2 || count > 64) return [];
  const openOf = (changes: readonly Change[]) => openPairs(applyChanges(draft, changes).ground, draft);
  const now = openOf([]);
  if (now === 0) return [];
  const begun: Begun[] = [];
  for (const swap of [false, true]) {
    for (let steps = 0; steps < count; steps++) {
      if (steps === 0 && !swap) continue;
      const changes: Change[] = [
        ...(swap ? [{ change: "swap-ground" } as const] : []),
        ...(steps === 0 ? [] : [{ change: "start-ground", steps: shorterWay(steps, count) } as const]),
      ];
      const open = openOf(changes);
      if (open < now)
        begun.push({ changes, open, far: Math.abs(shorterWay(steps, count)) + (swap ? 1.5 : 0) });
    }
  }
  begun.sort((a, b) => a.open - b.open || a.far - b.far || lateness(a) - lateness(b));
  const [best, ...others] = begun;
  if (best === undefined) return [];
  const rivals = others.filter(({ far, open }) => open === best.open && far === best.far);
  return [
    {
      changes: best.changes,
      slip: best.changes.some(({ change }) => change === "swap-ground")
        ? { slip: "ground-swapped" }
        : { slip: "ground-begun", steps: lateness(best) },
      reason: { reason: "cuts", all: best.open === 0 },
      gain: 0,
      slipOf: "ground",
      sure: rivals.length === 0,
      rivals: rivals.map(({ changes }) => changes),
    },
  ];
}

/** Of two starts as far off, that is likelier which a pick thrown too late would have missed. */
function lateness({ changes }: Pick<Begun, "changes">): number {
  return changes.reduce((sum, change) => sum + (change.change === "start-ground" ? change.steps : 0), 0);
}

function openPairs(ground: Ground, { picksPerRow, unitEnds }: UnitDraft): number {
  const [unit, row] = [commonSize(unitEnds), commonSize(picksPerRow)];
  const size = { ...(unit && { unitEnds: unit }), ...(row && { picksPerRow: row }) };
  const { lengthways, sideways } = cutOf(ground, size);
  return lengthways.open + sideways.open;
}
