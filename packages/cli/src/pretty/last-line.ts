import type { Report, Severity } from "@drawcord/check";
import { count } from "./words.js";

/** `3 findings (1 error, 2 warnings), 1 waived, 7 of 7 rules ran`; a rule ran when it looked at every file. */
export function lastLine(reports: readonly Pick<Report, "summary" | "waived" | "rules">[]): string {
  const severities: readonly Severity[] = ["error", "warning", "note"];
  const sums = severities.map((severity) => sum(reports.map(({ summary }) => summary[severity])));
  const total = sum(sums);
  const kinds = severities.flatMap((severity, i) => (sums[i] === 0 ? [] : [count(sums[i]!, severity)]));
  const split = total === 0 ? "" : ` (${kinds.join(", ")})`;
  const where = reports.length === 1 ? "" : ` in ${count(reports.length, "file")}`;
  const accepted = sum(reports.map(({ waived }) => waived));
  const waived = accepted === 0 ? "" : `, ${accepted} waived`;
  const skipped = new Set(reports.flatMap(({ rules }) => rules.skipped.map(({ rule }) => rule)));
  const all = new Set([...skipped, ...reports.flatMap(({ rules }) => rules.ran)]);
  return `${count(total, "finding")}${split}${where}${waived}, ${all.size - skipped.size} of ${all.size} rules ran\n`;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
