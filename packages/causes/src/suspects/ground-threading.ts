import type { Ground } from "@drawcord/ground";
import type { Change } from "@drawcord/units";
import type { Suspect } from "./suspect.js";

/** Ends of a repeat beyond which not every edit is weighed. */
const MOST_ENDS = 128;

/** The one end of the ground threading that keeps it from going straight or in points round its harness. */
export function groundThreadingSuspects({ shafts, threading }: Ground): Suspect[] {
  if (threading.length < 3 || threading.length > MOST_ENDS || inOrder(threading, shafts)) return [];
  const found: Change[] = [];
  threading.forEach((was, end) => {
    for (let shaft = 1; shaft <= shafts; shaft++) {
      if (shaft !== was && inOrder(threading.with(end, shaft), shafts))
        found.push({ change: "ground-threading", end: end + 1, shaft });
    }
  });
  const [change, ...rivals] = found;
  if (change?.change !== "ground-threading") return [];
  return [
    {
      changes: [change],
      slip: { slip: "ground-end", end: change.end, shaft: threading[change.end - 1]!, says: change.shaft },
      reason: { reason: "ground-goes-on" },
      gain: 8,
      sure: rivals.length === 0,
      rivals: rivals.map((rival) => [rival]),
    },
  ];
}

/** Whether each end is on the shaft next to that of the last, the first shaft being next to the last, and so on in the repeat. */
function inOrder(threading: readonly number[], shafts: number): boolean {
  return threading.every((shaft, i) => {
    const next = threading[(i + 1) % threading.length]!;
    const step = (next - shaft + shafts) % shafts;
    return step === 1 || step === shafts - 1;
  });
}
