import { listed } from "@drawcord/base";
import { type Recipe, valueIn } from "@drawcord/files";
import { type Ground, groundFromWeave } from "@drawcord/ground";
import { endsOfEachUnit, picksOfEachRow } from "@drawcord/units";

/**
 * Says where a ground named by its weave begins otherwise than rows of the usual number of picks alone would have it: a
 * ground is begun for the picks that every row is a multiple of, so that one row of another number may move its start.
 */
export function groundStart(bytes: Uint8Array, { draft, file }: Recipe): readonly string[] {
  const weave = valueIn(bytes, file, ["ground", "weave"]);
  const picks = [...new Set(picksOfEachRow(draft))].sort((a, b) => a - b);
  if (typeof weave !== "string" || picks.length < 2) return [];
  const ends = valueIn(bytes, file, ["ground", "ends"]);
  const options = {
    unitEnds: endsOfEachUnit(draft).reduce(divisor),
    ...(typeof ends === "number" ? { ends } : {}),
  };
  const usual = mostOften(picksOfEachRow(draft));
  const step = picks.reduce(divisor);
  const begun = groundFromWeave(weave, { ...options, picksPerRow: step });
  const alone = groundFromWeave(weave, { ...options, picksPerRow: usual });
  if (JSON.stringify(begun) === JSON.stringify(alone)) return [];
  const rows = listed(
    picks.map((count) => `${count}`),
    "and",
  );
  return [
    `rows have ${rows} picks, so the ground "${weave}" is begun for steps of ${step}: it begins with ${move(begun)}. Were all rows of ${usual} picks, with ${move(alone)}`,
  ];
}

function move({ steps }: Ground): string {
  const { raise = [], sink = [] } = steps[0] ?? {};
  const shafts = (set: readonly number[]) => (set.length === 0 ? "none" : set.join(" "));
  return `shafts ${shafts(raise)} raised and ${shafts(sink)} sunk`;
}

function mostOften(counts: readonly number[]): number {
  const times = new Map<number, number>();
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1);
  return [...times].reduce((best, one) => (one[1] > best[1] ? one : best))[0];
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}
