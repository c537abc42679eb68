import type { Finding } from "@drawcord/check";

/** What a finding speaks of: all that it says but its words, its place and how bad it is. */
export function findingKind(finding: Finding): string {
  return JSON.stringify(Object.entries(finding).filter(([name]) => !OF_ONE.has(name)));
}

const OF_ONE: ReadonlySet<string> = new Set([
  ...["message", "severity", "count", "measured", "limit", "counterpart"],
  ...["ends", "picks", "units", "rows", "runs", "side", "waiver"],
  ...["threads", "assumedPerCm", "perCm", "other", "above", "below", "ties"],
  ...["picksOver", "long", "rowsPlanned", "unitsPlanned", "finishes"],
]);
