import {
  type CheckOptions,
  checkGrid,
  type Finding,
  type Report,
  type Sett,
  type Severity,
} from "@drawcord/check";
import { drawdownOf } from "./drawdown.js";
import { draftRules } from "./rules.js";
import type { ShaftDraft, ThreadLook, ThreadUnit } from "./types.js";

/**
 * Checks a plain draft: its cloth as `checkGrid` does, at the sett that its spacing gives, and its plan by `draftRules`.
 * @throws {CheckError} for options that cannot be meant
 * @example checkShaftDraft(draft).ok // true
 */
export function checkShaftDraft(draft: ShaftDraft, options: CheckOptions = {}): Report {
  const sett = { ...settOf(draft), ...options.sett };
  const report = checkGrid(drawdownOf(draft), { ...options, sett });
  const ran: string[] = [];
  const skipped: { readonly rule: string; readonly reason: string }[] = [];
  const found: Finding[] = [];
  for (const { name, severity, find, cannot } of draftRules) {
    const reason = cannot?.(draft);
    if (reason !== undefined) {
      skipped.push({ rule: name, reason });
      continue;
    }
    ran.push(name);
    for (const finding of find(draft)) found.push({ rule: name, severity, ...finding });
  }
  const summary = { ...report.summary };
  for (const { severity } of found) summary[severity]++;
  const weights: readonly Severity[] = ["error", "warning", "note"];
  return {
    ...report,
    ok: summary.error === 0,
    summary,
    rules: { ran: [...ran, ...report.rules.ran], skipped: [...skipped, ...report.rules.skipped] },
    // The plan's faults stand before those of the cloth that come of them.
    findings: [...found, ...report.findings].sort(
      (a, b) => weights.indexOf(a.severity) - weights.indexOf(b.severity),
    ),
  };
}

/** How many of a unit make a centimetre; a decipoint is 1/720 inch. */
const perCm: Readonly<Record<ThreadUnit, number>> = {
  centimeters: 1,
  inches: 1 / 2.54,
  decipoints: 720 / 2.54,
};

/**
 * The sett of a draft's threads by their spacing, on average where threads have their own.
 * @example settOf({ ...draft, warp: { unit: "centimeters", spacing: { all: 0.125 } } }) // { endsPerCm: 8 }
 */
export function settOf({ warp, weft }: ShaftDraft): Sett {
  const endsPerCm = threadsPerCm(warp);
  const picksPerCm = threadsPerCm(weft);
  return {
    ...(endsPerCm === undefined ? {} : { endsPerCm }),
    ...(picksPerCm === undefined ? {} : { picksPerCm }),
  };
}

function threadsPerCm({ spacing, unit = "decipoints" }: ThreadLook): number | undefined {
  if (spacing === undefined) return undefined;
  const { all = 0, each = [] } = spacing;
  const mean = each.length === 0 ? all : each.reduce((sum, one) => sum + one, 0) / each.length;
  const count = perCm[unit] / mean;
  return count > 0 && Number.isFinite(count) ? count : undefined;
}
