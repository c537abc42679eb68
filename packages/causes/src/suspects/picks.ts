/** Rows held for another number of picks than all others. */

import { commonSize, type UnitDraft } from "@drawcord/units";
import type { Suspect } from "./suspect.js";

/** Of so many rows, one may be held otherwise and be a slip. */
const ROWS_TO_A_SLIP = 6;

/** The rows that alone are held for other picks than the rest, or than their counterparts. */
export function picksSuspects({ picksPerRow }: UnitDraft): Suspect[] {
  if (typeof picksPerRow === "number" || commonSize(picksPerRow) !== undefined) return [];
  if (picksPerRow.length < ROWS_TO_A_SLIP) return [];
  const times = new Map<number, number>();
  for (const picks of picksPerRow) times.set(picks, (times.get(picks) ?? 0) + 1);
  const [usual = 0, held = 0] = [...times].sort((a, b) => b[1] - a[1])[0] ?? [];
  const odd = picksPerRow.flatMap((picks, row) => (picks === usual ? [] : [row]));
  if (odd.length === 0) return [];
  const middle = (picksPerRow.length - 1) / 2;
  if (odd.length * ROWS_TO_A_SLIP <= held && isStray(odd, picksPerRow.length)) {
    return odd.map((row) =>
      suspect(row, picksPerRow[row]!, usual, row === middle ? 4 : odd.length === 1 ? 10 : 7),
    );
  }
  return againstMirror(picksPerRow);
}

/** Rows held otherwise are meant where they lie as each other's mirrors; one alone in the very middle may be. */
function isStray(odd: readonly number[], rows: number): boolean {
  if (odd.length > 2) return false;
  return odd.length === 1 || !odd.every((row) => odd.includes(rows - 1 - row));
}

function againstMirror(picks: readonly number[]): Suspect[] {
  const last = picks.length - 1;
  const pairs = picks.flatMap((one, row) => (row < last - row && one !== picks[last - row] ? [row] : []));
  const [row] = pairs;
  if (row === undefined || pairs.length > 1) return [];
  const other = last - row;
  return [
    {
      ...suspect(row, picks[row]!, picks[other]!, 6, other + 1),
      sure: false,
      rivals: [[{ change: "row-picks", row: other + 1, picks: picks[row]! }]],
    },
  ];
}

function suspect(row: number, picks: number, usual: number, gain: number, counterpart?: number): Suspect {
  return {
    changes: [{ change: "row-picks", row: row + 1, picks: usual }],
    slip: {
      slip: "row-picks",
      row: row + 1,
      picks,
      usual,
      ...(counterpart !== undefined && { counterpart }),
    },
    reason: { reason: "even-picks" },
    gain,
    sure: true,
    rivals: [],
  };
}
