import { type Report, reportNumbers } from "@drawcord/check";

/** The numbers of a report, a line or two each, with their names in a column. */
export function numbers(report: Report): readonly string[] {
  const pairs = reportNumbers(report);
  const left = Math.max(...pairs.map(([name]) => name.length)) + 2;
  return pairs.map(([name, text]) => `${name.padEnd(left)}${text}`);
}
