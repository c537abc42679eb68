/** Ends a unit and picks a row: a draft may give one number for all, which is a list wherever it is looked at. */
import type { UnitDraft } from "./types.js";

/** A draft with its sizes as lists, an entry for each unit and each row. */
export interface SizedDraft extends UnitDraft {
  /** Ends in each unit, an entry a unit. */
  readonly unitEnds: readonly number[];
  /** Picks in each row, an entry a row. */
  readonly picksPerRow: readonly number[];
}

/**
 * The ends of each unit, unit 1 first.
 * @param draft the sizes of its units, one number or a list, and its threading
 * @example endsOfEachUnit({ unitEnds: 4, threading: [[1], [], [2]] }) // [4, 4, 4]
 */
export function endsOfEachUnit({
  threading,
  unitEnds,
}: Pick<UnitDraft, "threading" | "unitEnds">): readonly number[] {
  return listOf(unitEnds, threading.length);
}

/**
 * The picks of each row, row 1 (woven first) first.
 * @param draft the picks of its rows, one number or a list, and its lifts
 * @example picksOfEachRow({ picksPerRow: [4, 5], lifts: [[1], [2]] }) // [4, 5]
 */
export function picksOfEachRow({
  lifts,
  picksPerRow,
}: Pick<UnitDraft, "lifts" | "picksPerRow">): readonly number[] {
  return listOf(picksPerRow, lifts.length);
}

/**
 * A draft with its sizes as lists.
 * @param draft the draft; it stays as it is
 * @example sized(draft).unitEnds.length === draft.threading.length // true
 */
export function sized(draft: UnitDraft): SizedDraft {
  return { ...draft, unitEnds: endsOfEachUnit(draft), picksPerRow: picksOfEachRow(draft) };
}

/**
 * The size that all have; undefined where one is unlike the others.
 * @param sizes one number for all, or a list
 * @example commonSize([4, 4, 4]) // 4
 */
export function commonSize(sizes: number | readonly number[]): number | undefined {
  if (typeof sizes === "number") return sizes;
  return sizes.every((size) => size === sizes[0]) ? sizes[0] : undefined;
}

function listOf(sizes: number | readonly number[], length: number): readonly number[] {
  return typeof sizes === "number" ? Array<number>(length).fill(sizes) : sizes;
}
