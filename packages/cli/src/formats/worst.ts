import type { Range } from "@drawcord/base";
import type { Finding, Severity } from "@drawcord/check";
import type { CheckedCloth } from "../checking/cloth.js";
import { LEVELS } from "../checking/tally.js";
import { unexplained } from "./causes.js";
import type { Look } from "./format.js";

/** Findings of one rule that are shown in full; the rest are counted. */
const MOST_SHOWN = 3;

/** A finding and where in the file it can be mended. */
export interface PlacedFinding {
  readonly finding: Finding;
  readonly place: Range | null;
}

/** The findings of one rule: those to be shown, the worst first, and how many there are besides. */
export interface RuleFindings {
  readonly rule: string;
  readonly waived: boolean;
  readonly shown: readonly PlacedFinding[];
  readonly more: number;
}

/**
 * The findings rule by rule, those that are waived last; of each the worst few, and none that a cause accounts for, unless
 * all are asked for.
 */
export function worstOfEach(cloth: CheckedCloth, { all, least }: Look): readonly RuleFindings[] {
  const { places, report } = cloth;
  const left = unexplained(cloth);
  const groups = new Map<string, PlacedFinding[]>();
  report.findings.forEach((finding, i) => {
    if (!isShown(finding, least) || !(all || left.has(i))) return;
    const key = `${finding.waived === undefined ? "" : "waived "}${finding.rule}`;
    const group = groups.get(key) ?? [];
    groups.set(key, group);
    group.push({ finding, place: places[i] ?? null });
  });
  return [...groups.values()]
    .map((group) => {
      const shown = all ? group : group.slice(0, MOST_SHOWN);
      const { rule, waived } = group[0]!.finding;
      return { rule, waived: waived !== undefined, shown, more: group.length - shown.length };
    })
    .sort((a, b) => Number(a.waived) - Number(b.waived));
}

/** Whether a finding can be seen in the drawdown; one about a shaft is of the plan. */
export function isSeen(finding: Finding): boolean {
  return !("shaft" in finding) && (finding.ends !== undefined || finding.picks !== undefined);
}

/** Whether `--quiet` leaves a finding in. */
export function isShown(
  { severity, waived }: Pick<Finding, "severity" | "waived">,
  least: Severity | undefined,
): boolean {
  return least === undefined || (waived === undefined && LEVELS.indexOf(severity) <= LEVELS.indexOf(least));
}

/** Whether `--quiet` has nothing to say of a cloth. */
export function isSilent(
  { causes, report }: Pick<CheckedCloth, "causes" | "report">,
  least: Severity | undefined,
): boolean {
  return least !== undefined && ![...causes, ...report.findings].some((one) => isShown(one, least));
}
