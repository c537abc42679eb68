/**
 * Slips of one group of shafts beside another: a border that is woven together with motifs of another height makes every row
 * of the plan unlike the others, so that each group is told by itself.
 */
import type { UnitDraft } from "@drawcord/units";
import { liftSuspects } from "./lifts.js";
import type { Suspect } from "./suspect.js";
import { type Written, writtenAndWhole } from "./written.js";

/** Shafts of a group, at least. */
const LEAST_SHAFTS = 2;

/** Groups beside each other, at most: more are stripes of their own. */
const MOST_GROUPS = 4;

/** Bits of the telling of a group by itself from which a slip in it is told. */
const LEAST_GAIN = 2.4;

/**
 * The squares that one group of shafts draws otherwise than the rest of its own lifts says.
 * @param draft the draft
 * @param lines the line in which each row is written, by a number
 */
export function groupSuspects(draft: UnitDraft, lines: readonly number[]): Suspect[] {
  const groups = shaftGroups(draft.threading);
  if (groups.length < 2 || groups.length > MOST_GROUPS) return [];
  return groups.flatMap((group) => {
    if (group.size < LEAST_SHAFTS) return [];
    const lifts = draft.lifts.map((lift) => lift.filter((shaft) => group.has(shaft)));
    const written = writtenIn(lines, lifts);
    return writtenAndWhole(written, lifts.length, (as) => liftSuspects({ ...draft, lifts }, as)).filter(
      ({ changes, gain }) => gain >= LEAST_GAIN && changes.every(isOfSquares),
    );
  });
}

function isOfSquares({ change }: Suspect["changes"][number]): boolean {
  return change === "draw" || change === "leave";
}

/** The rows that each line weaves, where it draws the same. */
function writtenIn(lines: readonly number[], lifts: UnitDraft["lifts"]): Written {
  const written = new Map<string, number[]>();
  lifts.forEach((lift, row) => {
    const key = `${lines[row] ?? -1 - row} ${lift.join()}`;
    const rows = written.get(key);
    if (rows === undefined) written.set(key, [row]);
    else rows.push(row);
  });
  return [...written.values()];
}

/** Shafts that go on from unit to unit, one shaft up or down; those of a border by themselves. */
export function shaftGroups(threading: UnitDraft["threading"]): ReadonlySet<number>[] {
  const groups: Set<number>[] = [];
  const groupOf = (shaft: number) => groups.find((group) => group.has(shaft));
  threading.forEach(([shaft, ...more], unit) => {
    if (shaft === undefined || more.length > 0) return;
    const [before] = threading[unit - 1] ?? [];
    const goesOn = before !== undefined && Math.abs(before - shaft) === 1;
    const [own, other] = [groupOf(shaft), goesOn ? groupOf(before) : undefined];
    if (own === undefined && other === undefined) groups.push(new Set([shaft]));
    else if (own === undefined) other!.add(shaft);
    else if (other !== undefined && other !== own) {
      for (const one of other) own.add(one);
      groups.splice(groups.indexOf(other), 1);
    }
  });
  return groups;
}
