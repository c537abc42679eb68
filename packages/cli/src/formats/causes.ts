import { listed, many, type TextPoint } from "@drawcord/base";
import type { PlacedCause } from "@drawcord/review";
import { sayEdit } from "@drawcord/units";
import type { CheckedCloth } from "../checking/cloth.js";

/** A cause and its edit in one line. */
export function causeLine({ changes, message }: PlacedCause): string {
  return `${message}: ${sayEdit(changes)}`;
}

/** Where a cause was written. */
export function causePlace({ column, end, line, offset }: PlacedCause): CauseStretch | null {
  const isKnown = line !== undefined && column !== undefined && offset !== undefined && end !== undefined;
  return isKnown ? { line, column, offset, end } : null;
}

/** From where to where in a text. */
export interface CauseStretch extends TextPoint {
  readonly end: TextPoint;
}

/** `205 findings: 43 of float-length, 162 of open-cut`; nothing where it accounts for none. */
export function sayExplained({ explains }: PlacedCause, { report }: CheckedCloth): string | undefined {
  if (explains.length === 0) return undefined;
  const times = new Map<string, number>();
  for (const at of explains) {
    const { rule } = report.findings[at]!;
    times.set(rule, (times.get(rule) ?? 0) + 1);
  }
  return `${many(explains.length, "finding")}: ${listed([...times].map(([rule, count]) => `${count} of ${rule}`))}`;
}

/** The findings that no cause accounts for, by their places in the report. */
export function unexplained({ causes, report }: CheckedCloth): ReadonlySet<number> {
  const explained = new Set(causes.flatMap(({ explains }) => explains));
  return new Set(report.findings.map((_, at) => at).filter((at) => !explained.has(at)));
}
