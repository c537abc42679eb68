/** Between groups of numbers there is room for two blanks, so that ranges stand apart at arm's length. */
const APART = "\u00a0 ";

/** Between tens of cords. */
const TENS = "\u00a0| ";

/**
 * Handles as a card prints them: neighbours from three on as a range, what does not belong together set apart.
 * @param tens whether they are grouped by tens, as the cords of a single-unit draw hang; no range then goes over a ten
 * @example handlesText([1, 2, 3, 7, 9]).split(/\s+/) // ["1–3", "7", "9"]
 */
export function handlesText(handles: readonly number[], tens = false): string {
  if (!tens) return groups(handles);
  const byTen = new Map<number, number[]>();
  for (const handle of handles) {
    const ten = Math.floor((handle - 1) / 10);
    const known = byTen.get(ten);
    if (known === undefined) byTen.set(ten, [handle]);
    else known.push(handle);
  }
  return [...byTen.values()].map(groups).join(TENS);
}

function groups(handles: readonly number[]): string {
  const parts: string[] = [];
  for (let i = 0; i < handles.length; ) {
    let last = i;
    while (handles[last + 1] === handles[last]! + 1) last++;
    if (last - i >= 2) parts.push(`${handles[i]}–${handles[last]}`);
    else for (let k = i; k <= last; k++) parts.push(`${handles[k]}`);
    i = last + 1;
  }
  return parts.join(APART);
}
