import type { Finding, Report } from "@drawcord/check";
import type { BitGrid } from "@drawcord/grid";
import type { Paint } from "../paint.js";
import { oneLine } from "../printable.js";
import { numbers } from "./numbers.js";
import { picture } from "./picture.js";

/** Findings of one rule that are shown in full; the rest are counted. */
const MOST_SHOWN = 5;

/** What there is to say of one cloth. */
export interface Cloth {
  /** The name the file was asked for by. */
  readonly file: string;
  readonly title: string | undefined;
  readonly report: Report;
  /** The drawdown, worked out when a finding needs its picture. */
  readonly drawdown: () => BitGrid;
}

/** The report of one cloth as text, a paragraph for each thing said. */
export function reportText(cloth: Cloth, width: number, paint: Paint): string {
  const { rules } = cloth.report;
  const title = cloth.title === undefined ? "" : `  ${oneLine(cloth.title)}`;
  const skipped = rules.skipped.map(({ reason, rule }) => `${rule} did not run: ${oneLine(reason)}`);
  const parts = [
    `${paint.strong(oneLine(cloth.file))}${title}`,
    ...findings(cloth, width, paint),
    numbers(cloth.report).join("\n"),
    ...(skipped.length === 0 ? [] : [skipped.join("\n")]),
  ];
  return `${parts.join("\n\n")}\n`;
}

function findings(cloth: Cloth, width: number, paint: Paint): string[] {
  const shown = new Map<string, number>();
  const parts: string[] = [];
  for (const finding of cloth.report.findings) {
    const before = shown.get(finding.rule) ?? 0;
    shown.set(finding.rule, before + 1);
    if (before < MOST_SHOWN) parts.push(findingText(finding, cloth, width, paint));
  }
  for (const [rule, number] of shown) {
    if (number > MOST_SHOWN) {
      parts.push(`and ${number - MOST_SHOWN} more of ${rule}; --format json lists them all`);
    }
  }
  return parts;
}

function findingText(finding: Finding, cloth: Cloth, width: number, paint: Paint): string {
  const { ends, message, picks, rule, severity, shaft, waived } = finding;
  if (waived !== undefined) {
    return paint.faint(`waived  ${rule}: ${oneLine(waived)}\n  ${oneLine(message)}`);
  }
  // A finding about a shaft is one of the plan: there is nothing to see in the cloth.
  const placed = shaft === undefined && (ends !== undefined || picks !== undefined);
  const drawn = placed ? picture(cloth.drawdown(), finding, width - 2, paint) : [];
  return [
    `${paint[severity](severity)}  ${rule}`,
    `  ${oneLine(message)}`,
    ...(drawn.length === 0 ? [] : ["", ...drawn.map((line) => `  ${line}`)]),
  ].join("\n");
}
