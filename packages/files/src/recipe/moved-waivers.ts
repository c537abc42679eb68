/** Waivers by place move with what they name when units or rows are put in or taken out. */
import type { Span } from "@drawcord/check";
import { endsOfEachUnit, picksOfEachRow, type UnitDraft } from "@drawcord/units";
import type { Revision } from "./revise.js";
import type { Recipe } from "./types.js";

/** Where each of the things of a draft, counted from 1, lies in another; undefined where it was taken out. */
type Moved = (place: number) => number | undefined;

/** So many entries that are alike on either side tell that one was put in, or taken out, and not changed. */
const ALIKE = 3;

/**
 * The places of the waivers of a recipe as they are once its draft is changed. One of which nothing is left stays as it is,
 * and is then said to match nothing. Rows and picks of a recipe with pieces count in each of them, and stay.
 * @param recipe the recipe before, or that of one of its pieces
 * @param draft the changed draft
 */
export function movedWaivers(
  { draft: before, pieces, waive }: Recipe,
  draft: UnitDraft,
): readonly Revision[] {
  const isAlone = pieces.length === 1 && pieces[0]!.path.length === 0;
  const rows = aligned(before.lifts, draft.lifts);
  const units = aligned(before.threading, draft.threading);
  const stays: Moved = (place) => place;
  const moved = {
    rows: isAlone ? rows : stays,
    picks: isAlone ? within(picksOfEachRow(before), picksOfEachRow(draft), rows, 0, 0) : stays,
    units,
    ends: within(
      endsOfEachUnit(before),
      endsOfEachUnit(draft),
      units,
      before.selvedge?.left?.length ?? 0,
      draft.selvedge?.left?.length ?? 0,
    ),
  };
  return waive.flatMap((waiver, i) =>
    (["rows", "picks", "units", "ends"] as const).flatMap((of): Revision[] => {
      const span = waiver[of];
      const after = span && movedSpan(span, moved[of]);
      if (span === undefined || after === undefined || after.join() === span.join()) return [];
      const [first, last] = after;
      return [{ path: ["waive", i, of], value: first === last ? first : `${first}-${last}` }];
    }),
  );
}

/** A span from the first of its places that is left to the last. */
function movedSpan([first, last]: Span, moved: Moved): Span | undefined {
  let [from, to] = [first, last];
  while (from <= to && moved(from) === undefined) from++;
  while (to >= from && moved(to) === undefined) to--;
  return from > to ? undefined : [moved(from)!, moved(to)!];
}

/** Where each entry of a list lies in the list that was made of it by few edits. */
function aligned(before: readonly unknown[], after: readonly unknown[]): Moved {
  const [was, is] = [before, after].map((list) => list.map((entry) => String(entry))) as [string[], string[]];
  const places: (number | undefined)[] = [];
  const alike = (i: number, j: number) => {
    for (let k = 0; k < ALIKE && (i + k < was.length || j + k < is.length); k++) {
      if (was[i + k] !== is[j + k]) return false;
    }
    return true;
  };
  let j = 0;
  for (let i = 0; i < was.length; i++) {
    const more = is.length - j - (was.length - i);
    if (was[i] !== is[j]) {
      let put = 1;
      while (put < more && !alike(i, j + put)) put++;
      if (more > 0 && alike(i, j + put)) j += put;
      else if (more < 0) {
        let gone = 1;
        while (gone < -more && !alike(i + gone, j)) gone++;
        if (alike(i + gone, j)) {
          for (let k = 1; k < gone; k++, i++) places.push(undefined);
          places.push(undefined);
          continue;
        }
      }
    }
    places.push(j < is.length ? j + 1 : undefined);
    j++;
  }
  return (place) => (place > was.length ? place + is.length - was.length : places[place - 1]);
}

/** Where threads lie whose units or rows moved: as far into their own, or at its last. Those outside move with the edges. */
function within(
  was: readonly number[],
  is: readonly number[],
  moved: Moved,
  left: number,
  leftNow: number,
): Moved {
  const [first, firstNow] = [firstsOf(was), firstsOf(is)];
  return (thread) => {
    const at = thread - left;
    if (at < 1) return Math.max(1, thread + leftNow - left);
    if (at > first.at(-1)!) return thread - left - first.at(-1)! + leftNow + firstNow.at(-1)!;
    let one = 0;
    while (at > first[one + 1]!) one++;
    const other = moved(one + 1);
    if (other === undefined) return undefined;
    return leftNow + firstNow[other - 1]! + Math.min(at - first[one]!, is[other - 1]!);
  };
}

/** How many threads lie before each of the units or rows, and before the end. */
function firstsOf(sizes: readonly number[]): number[] {
  const firsts = [0];
  for (const size of sizes) firsts.push(firsts.at(-1)! + size);
  return firsts;
}
