import type { Report } from "./finding.js";
import { openCut } from "./rules/open-cut.js";

/**
 * How many pairs of neighbours the rule of open cuts reports, at side edges and at top and bottom. The report's own `cut`
 * counts every pick as it lies; the rule takes each weft by itself, and leaves out what is within the limit.
 * @param report the report of a cloth
 * @returns undefined where the rule did not look
 * @example openByRule(check(draft)) // { side: 0, across: 0 }
 */
export function openByRule({ findings, rules }: Pick<Report, "findings" | "rules">):
  | {
      /** Open pairs of neighbouring ends. */
      readonly side: number;
      /** Open pairs of neighbouring picks. */
      readonly across: number;
    }
  | undefined {
  if (!rules.ran.includes(openCut.name)) return undefined;
  const told = (system: "warp" | "weft") =>
    findings.reduce(
      (sum, finding) =>
        finding.rule === openCut.name && finding.system === system ? sum + (finding.count ?? 1) : sum,
      0,
    );
  return { side: told("weft"), across: told("warp") };
}
