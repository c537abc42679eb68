import { type BitGrid, fromCells } from "@drawcord/grid";
import type { UnitDraft, UnitShafts } from "../src/index.js";

/** The cloth by the formula of the two harnesses, crossing by crossing. */
export function slowExpand(draft: UnitDraft): { readonly drawdown: BitGrid; readonly drawn: BitGrid } {
  const { ground, threading, lifts } = draft;
  const left = draft.selvedge?.left ?? [];
  const right = draft.selvedge?.right ?? [];
  const sizeOf = (sizes: number | readonly number[], i: number) =>
    typeof sizes === "number" ? sizes : sizes[i]!;
  const unitOf = threading.flatMap((_, unit) => Array<number>(sizeOf(draft.unitEnds, unit)).fill(unit));
  const rowOf = lifts.flatMap((_, row) => Array<number>(sizeOf(draft.picksPerRow, row)).fill(row));
  const shaftOf = [
    ...left,
    ...unitOf.map((_, end) => ground.threading[end % ground.threading.length]!),
    ...right,
  ];

  const isDrawn = (pick: number, end: number) => {
    const unit = unitOf[end - left.length];
    return unit !== undefined && threading[unit]!.some((shaft) => lifts[rowOf[pick]!]!.includes(shaft));
  };
  const isRaised = (pick: number, end: number) => {
    const { raise, sink } = ground.steps[pick % ground.steps.length]!;
    return raise.includes(shaftOf[end]!) || (isDrawn(pick, end) && !sink.includes(shaftOf[end]!));
  };
  return {
    drawdown: fromCells(rowOf.length, shaftOf.length, isRaised),
    drawn: fromCells(rowOf.length, shaftOf.length, isDrawn),
  };
}

/** The length of the shortest text of a threading, by trying every way to cut every stretch. */
export function slowShortest(threading: readonly UnitShafts[]): number {
  const texts = threading.map((unit) => (unit.length === 0 ? "X" : unit.join("+")));
  const known = new Map<string, number>();
  const shortest = (from: number, to: number): number => {
    const key = `${from} ${to}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const lengths = to - from === 1 ? [texts[from]!.length] : [];
    for (let cut = from + 1; cut < to; cut++) lengths.push(shortest(from, cut) + 1 + shortest(cut, to));
    for (const step of [1, -1]) {
      const isRun = threading
        .slice(from, to)
        .every((unit, i) => unit.length === 1 && unit[0] === threading[from]![0]! + i * step);
      if (isRun && to > from + 1) lengths.push(texts[from]!.length + 1 + texts[to - 1]!.length);
    }
    for (let period = 1; period < to - from; period++) {
      if ((to - from) % period !== 0) continue;
      if (texts.slice(from, to - period).some((text, i) => text !== texts[from + period + i])) continue;
      const inside = period === 1 ? texts[from]!.length : shortest(from, from + period) + 2;
      lengths.push(inside + 1 + String((to - from) / period).length);
    }
    const best = Math.min(...lengths);
    known.set(key, best);
    return best;
  };
  return shortest(0, threading.length);
}
