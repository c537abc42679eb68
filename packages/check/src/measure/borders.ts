/** The borders of drawn and undrawn, and whether the cloth cuts there; 32 pairs of interlacements at a time. */
import { type BitGrid, onesIn } from "@drawcord/grid";
import type { CutTally } from "../report.js";

/**
 * Told of up to 32 pairs of neighbouring interlacements, those from `column` on: a 1 in `border` where their drawn state
 * differs, and a 1 in `cut` where one is raised and the other lowered.
 */
export type VisitPairs = (column: number, border: number, cut: number) => void;

/**
 * Visits the pairs of each end and the one right of it, on one pick.
 * @param joined whether the last end has the first beside it; that pair is the last end's
 */
export function sidePairs(
  drawdown: BitGrid,
  drawn: BitGrid,
  pick: number,
  joined: boolean,
  visit: VisitPairs,
): void {
  const { stride, columns } = drawdown;
  if (columns === 0) return;
  const base = pick * stride;
  const last = (columns - 1) & 31;
  for (let i = 0; i < stride; i++) {
    const border = unlikeNext(drawn, base, i, last);
    if (border === 0) continue;
    const seam = i === stride - 1 && !joined ? ~(1 << last) : -1;
    if ((border & seam) !== 0) visit(i * 32, border & seam, unlikeNext(drawdown, base, i, last));
  }
}

/** A 1 at each bit of word `i` that differs from the bit after it; after the last bit of the row comes the first. */
function unlikeNext({ words, stride }: BitGrid, base: number, i: number, last: number): number {
  const word = words[base + i]!;
  if (i < stride - 1) return word ^ ((word >>> 1) | (words[base + i + 1]! << 31));
  const used = last === 31 ? -1 : 2 ** (last + 1) - 1;
  return (word ^ ((word >>> 1) | ((words[base]! & 1) << last))) & used;
}

/** Visits the pairs of a pick and another, end by end. */
export function acrossPairs(
  drawdown: BitGrid,
  drawn: BitGrid,
  pick: number,
  other: number,
  visit: VisitPairs,
): void {
  const { stride } = drawdown;
  const a = pick * stride;
  const b = other * stride;
  for (let i = 0; i < stride; i++) {
    const border = drawn.words[a + i]! ^ drawn.words[b + i]!;
    if (border !== 0) visit(i * 32, border, drawdown.words[a + i]! ^ drawdown.words[b + i]!);
  }
}

/** Pick by pick, the neighbouring pairs of ends whose drawn state differs. */
export function sideCuts(drawdown: BitGrid, drawn: BitGrid, joined: boolean): CutTally {
  return count(drawdown.rows, (pick, visit) => sidePairs(drawdown, drawn, pick, joined, visit));
}

/** End by end, the neighbouring pairs of picks whose drawn state differs. */
export function acrossCuts(drawdown: BitGrid, drawn: BitGrid, joined: boolean): CutTally {
  const { rows } = drawdown;
  return count(joined ? rows : rows - 1, (pick, visit) =>
    acrossPairs(drawdown, drawn, pick, (pick + 1) % rows, visit),
  );
}

function count(picks: number, pairsOf: (pick: number, visit: VisitPairs) => void): CutTally {
  let cutting = 0;
  let open = 0;
  for (let pick = 0; pick < picks; pick++) {
    pairsOf(pick, (_column, border, cut) => {
      cutting += onesIn(border & cut);
      open += onesIn(border & ~cut);
    });
  }
  return { cutting, open };
}
