import { many } from "@drawcord/base";
import type { Review } from "@drawcord/review";

/** What came of a check in one line, word for word the last line of `drawcord check`. */
export function resultText({ summary: ofFindings, findings, causes, rules }: Review): string {
  const summary = { ...ofFindings };
  const waived = new Map<string, number>();
  // A slip of the plan from which no finding follows counts by itself.
  for (const cause of causes) {
    if (cause.waived !== undefined) waived.set("slip", (waived.get("slip") ?? 0) + 1);
    else if (cause.explains.length === 0) summary[cause.severity]++;
  }
  const { error, warning, note } = summary;
  const total = error + warning + note;
  const kinds = (["error", "warning", "note"] as const).flatMap((level) =>
    summary[level] === 0 ? [] : [many(summary[level], level)],
  );
  for (const finding of findings) {
    if (finding.waived !== undefined) waived.set(finding.rule, (waived.get(finding.rule) ?? 0) + 1);
  }
  const skipped = new Map<string, string[]>();
  for (const { rule, reason } of rules.skipped) skipped.set(reason, [...(skipped.get(reason) ?? []), rule]);
  const parts = [
    `${many(total, "finding")}${total === 0 ? "" : ` (${kinds.join(", ")})`}`,
    ...(waived.size === 0 ? [] : [waivedText(waived)]),
    `${rules.ran.length} of ${rules.ran.length + rules.skipped.length} rules ran`,
  ];
  return (
    parts.join(", ") + [...skipped].map(([reason, names]) => `; not ${names.join(", ")}: ${reason}`).join("")
  );
}

/** `3 waived (2 of open-cut, 1 of layers)` */
function waivedText(waived: ReadonlyMap<string, number>): string {
  const total = [...waived.values()].reduce((sum, number) => sum + number, 0);
  return `${total} waived (${[...waived].map(([rule, number]) => `${number} of ${rule}`).join(", ")})`;
}
