import type { BitGrid } from "@drawcord/grid";
import type { Paint } from "../paint.js";

const PICKS = 6;
const MOST_ENDS = 28;

/**
 * The cloth where two drawdowns first differ, a line for each of a few picks, as it is on the left and as it would be on
 * the right: the last pick on top, `#` raised and `.` lowered, what differs marked. Nothing where they weave the same.
 * @param width characters that fit on a line
 */
export function beforeAndAfter(
  is: BitGrid,
  wouldBe: BitGrid,
  width: number,
  paint: Paint,
): readonly string[] {
  const rows = Math.min(is.rows, wouldBe.rows);
  const columns = Math.min(is.columns, wouldBe.columns);
  const place = firstUnlike(is, wouldBe, rows, columns);
  if (place === undefined) return [];
  const label = `pick ${rows}`.length;
  const ends = Math.max(4, Math.min(MOST_ENDS, columns, Math.floor((width - label - 5) / 2)));
  const firstPick = Math.max(0, Math.min(place.pick - 1, rows - PICKS));
  const firstEnd = Math.max(0, Math.min(place.end - 4, columns - ends));
  const side = (grid: BitGrid, other: BitGrid, pick: number) => {
    const squares = Array.from({ length: Math.min(ends, columns - firstEnd) }, (_, i) => {
      const end = firstEnd + i;
      const square = grid.get(pick, end) ? "#" : ".";
      return grid.get(pick, end) === other.get(pick, end) ? square : paint.marked(square);
    });
    return squares.join("");
  };
  const lines: string[] = [];
  for (let pick = Math.min(rows, firstPick + PICKS) - 1; pick >= firstPick; pick--) {
    const name = paint.faint(`${pick === firstPick ? "pick " : ""}${pick + 1}`.padStart(label));
    lines.push(`${name}  ${side(is, wouldBe, pick)}   ${side(wouldBe, is, pick)}`);
  }
  const head = `${"".padStart(label)}  ${"as it is".padEnd(ends)}   as it would be`;
  const foot = `${"".padStart(label)}  ${`end ${firstEnd + 1}`.padEnd(ends)}   end ${firstEnd + 1}`;
  return [paint.faint(head.trimEnd()), ...lines, paint.faint(foot)];
}

function firstUnlike(
  is: BitGrid,
  wouldBe: BitGrid,
  rows: number,
  columns: number,
): { readonly pick: number; readonly end: number } | undefined {
  const words = columns >>> 5;
  for (let pick = 0; pick < rows; pick++) {
    const [one, other] = [pick * is.stride, pick * wouldBe.stride];
    let word = 0;
    while (word < words && is.words[one + word] === wouldBe.words[other + word]) word++;
    for (let end = word * 32; end < Math.min(columns, word * 32 + 32); end++) {
      if (is.get(pick, end) !== wouldBe.get(pick, end)) return { pick, end };
    }
  }
  return undefined;
}
