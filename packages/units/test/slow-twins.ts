import { type BitGrid, fromCells } from "@drawcord/grid";
import type { UnitDraft } from "../src/index.js";

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
