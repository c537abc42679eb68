import { type Ground, groundFromWeave } from "@drawcord/ground";
import type { UnitDraft } from "@drawcord/units";
import { commonStep } from "./ground.js";

/** How a ground is named: its weave, and the ends it is counted on where the name leaves them open. */
export interface GroundName {
  readonly weave: string;
  readonly ends?: number;
}

/** The name of the ground of a draft, where by it the same ground is built; undefined where it gives another. */
export function namedGround(
  weave: string | undefined,
  { ground, picksPerRow, unitEnds }: UnitDraft,
): GroundName | undefined {
  if (weave === undefined) return undefined;
  const fit = { unitEnds: commonStep(unitEnds), picksPerRow: commonStep(picksPerRow) };
  return [undefined, ground.shafts, ground.threading.length]
    .map((ends): GroundName => (ends === undefined ? { weave } : { weave, ends }))
    .find((name) => sameGround(ground, groundNamed(name, fit)));
}

/** The ground of a name, fitted to units and rows; undefined where there is none. */
export function groundNamed(
  { ends, weave }: GroundName,
  fit: { readonly unitEnds: number; readonly picksPerRow: number },
): Ground | undefined {
  try {
    return groundFromWeave(weave, ends === undefined ? fit : { ...fit, ends });
  } catch {
    return undefined;
  }
}

/** Whether two grounds are alike in every shaft. */
export function sameGround(ground: Ground, other: Ground | undefined): boolean {
  return JSON.stringify(ground) === JSON.stringify(other);
}
