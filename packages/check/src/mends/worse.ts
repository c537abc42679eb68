import type { Finding, Report } from "../report.js";

/** How much a rule finds: how many faults, and how bad the worst of them is. */
interface Weight {
  readonly faults: number;
  readonly worst: number;
}

/** Whether no rule but the one to be mended finds more faults, or a worse one, after than before. */
export function noneWorse(before: Report, after: Report, mended: string): boolean {
  const names = new Set(after.findings.map(({ rule }) => rule));
  names.delete(mended);
  return [...names].every((rule) => {
    const was = weigh(before.findings, rule);
    const is = weigh(after.findings, rule);
    return is.faults <= was.faults && is.worst <= was.worst + 1e-9;
  });
}

/** Whether a rule finds nothing that is not waived. */
export function passes({ findings }: Report, rule: string): boolean {
  return findings.every((finding) => finding.rule !== rule || finding.waived !== undefined);
}

function weigh(findings: readonly Finding[], rule: string): Weight {
  let faults = 0;
  let worst = 0;
  for (const { rule: own, count = 1, measured = 0 } of findings) {
    if (own !== rule) continue;
    faults += count;
    worst = Math.max(worst, Math.abs(measured));
  }
  return { faults, worst };
}
