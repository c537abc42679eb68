import type { ShaftSet } from "@drawcord/ground";
import type { LiftChange, UnitShafts, WovenBlock } from "@drawcord/units";

/** What the shafts of a threading become in another, whose units are the same. */
export interface ShaftMap {
  /** The new shaft of an old one; undefined where its units hang still. */
  readonly of: (shaft: number) => number | undefined;
  /** The new shafts of old ones. */
  readonly all: (shafts: readonly number[]) => ShaftSet;
  /** The new shafts of which half of the units or more hung on the old ones. */
  readonly mostly: (shafts: ShaftSet) => ShaftSet;
}

/** Undefined where a unit hangs on several shafts, or the units of one old shaft on several new ones. */
export function shaftMap(before: readonly UnitShafts[], after: readonly UnitShafts[]): ShaftMap | undefined {
  const becomes = new Map<number, number | undefined>();
  const units = new Map<number, number>();
  const from = new Map<number, Map<number, number>>();
  for (const [unit, old] of before.entries()) {
    const now = after[unit] ?? [];
    if (old.length > 1 || now.length > 1) return undefined;
    const [[shaft], [next]] = [old, now];
    if (next !== undefined) units.set(next, (units.get(next) ?? 0) + 1);
    if (shaft === undefined) continue;
    if (becomes.has(shaft) && becomes.get(shaft) !== next) return undefined;
    becomes.set(shaft, next);
    if (next === undefined) continue;
    const counts = from.get(next) ?? new Map<number, number>();
    counts.set(shaft, (counts.get(shaft) ?? 0) + 1);
    from.set(next, counts);
  }
  const all = (shafts: readonly number[]) =>
    [...new Set(shafts.flatMap((shaft) => becomes.get(shaft) ?? []))].sort((a, b) => a - b);
  const isMostly = (next: number, shafts: ShaftSet) => {
    const drawn = shafts.reduce((sum, shaft) => sum + (from.get(next)?.get(shaft) ?? 0), 0);
    return 2 * drawn >= units.get(next)!;
  };
  return {
    of: (shaft) => becomes.get(shaft),
    all,
    mostly: (shafts) => all(shafts).filter((next) => isMostly(next, shafts)),
  };
}

/** A line of a weaving order with the shafts that its changes name as they are now. */
export function mappedLine({ all, of }: ShaftMap, line: WovenBlock): WovenBlock {
  const changes = (made: readonly LiftChange[]) => made.map(changed);
  return {
    ...line,
    changes: changes(line.changes),
    ...(line.beside && { beside: line.beside.map((part) => ({ ...part, changes: changes(part.changes) })) }),
  };

  function changed(change: LiftChange): LiftChange {
    switch (change.change) {
      case "placed":
        return { ...change, on: all(change.on) };
      case "mirrored":
      case "turned":
      case "exchanged":
      case "brick":
        return change.on === undefined ? change : { ...change, on: all(change.on) };
      case "half-drop":
        return { ...change, on: all(change.on), beside: all(change.beside) };
      case "framed":
        return {
          ...change,
          across: all(change.across),
          ...(change.edge && { edge: all(change.edge) }),
        };
      case "bordered":
        return {
          ...change,
          ...(change.on && { on: all(change.on) }),
          beside: change.beside.flatMap((shaft) => of(shaft) ?? []),
        };
      case "alternating":
        return { ...change, every: changed(change.every) };
      case "filled":
        return change.every === undefined ? change : { ...change, every: changed(change.every) };
      default:
        return change;
    }
  }
}
