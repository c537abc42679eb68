import { checkGrid, NOT_ASKED_FOR, type Report, type Severity } from "@drawcord/check";
import { checkShaftDraft, draftRules, read } from "@drawcord/files";
import { drawdownIn, titleIn } from "../plain/drawdown.js";
import { ignoredIn } from "../plain/ignored.js";
import type { Kept } from "./kept.js";
import { ofCloth } from "./selection.js";

/**
 * Reads a plain draft, or a chart of interlacements, and checks it by the rules asked for.
 * @throws {FileError} with its place, for what cannot be read
 */
export function checkPlain(bytes: Uint8Array, file: string, rules: readonly string[]): Kept {
  const reading = read(bytes, file);
  const options = { only: ofCloth(rules) };
  const report =
    reading.kind === "draft"
      ? askedOnly(checkShaftDraft(reading.draft, options), rules)
      : checkGrid(drawdownIn(reading), options);
  return {
    title: titleIn(reading) ?? null,
    report,
    places: report.findings.map(() => null),
    ignored: ignoredIn(reading),
  };
}

/** The report without what those rules for plain drafts found that were not asked for. */
function askedOnly(report: Report, asked: readonly string[]): Report {
  const others = draftRules.map(({ name }) => name).filter((name) => !asked.includes(name));
  if (others.length === 0) return report;
  const findings = report.findings.filter(({ rule }) => !others.includes(rule));
  const weighed = (severity: Severity) =>
    findings.filter((finding) => finding.severity === severity && finding.waived === undefined).length;
  const summary = { error: weighed("error"), warning: weighed("warning"), note: weighed("note") };
  const { ran, skipped } = report.rules;
  return {
    ...report,
    ok: summary.error === 0,
    summary,
    rules: {
      ran: ran.filter((rule) => !others.includes(rule)),
      skipped: [
        ...others.map((rule) => ({ rule, reason: NOT_ASKED_FOR })),
        ...skipped.filter(({ rule }) => !others.includes(rule)),
      ],
    },
    findings,
  };
}
