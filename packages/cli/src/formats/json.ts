import type { Finding } from "@drawcord/check";
import type { CheckedCloth } from "../checking/cloth.js";
import { mendNumber } from "../mending/proposal.js";
import { toJson } from "../printable.js";
import { siteOfProject } from "../site.js";
import type { Format } from "./format.js";

/** One object when one file was asked for, else an array. Always says all there is. */
export const json: Format = {
  cloth: (cloth) => toJson(reportObject(cloth), 2),
  head: (files) => (files === 1 ? "" : "[\n"),
  between: ",\n",
  tail: ({ files, tally }) => (tally.files === 0 ? "" : "\n") + (files === 1 ? "" : "]\n"),
};

/** A line for each file. Always says all there is. */
export const ndjson: Format = {
  cloth: (cloth) => `${toJson(reportObject(cloth))}\n`,
};

/** Findings, each with its place in the file. */
export function findingObjects(
  findings: readonly Finding[],
  places: CheckedCloth["places"],
): readonly object[] {
  return findings.map((finding, i) => {
    const place = places[i];
    return {
      ...finding,
      ...(place && { line: place.line, column: place.column, offset: place.offset, end: place.end }),
    };
  });
}

/** The report with the file's name, causes before findings, and with the place in the file and the number of the mend of each finding. */
function reportObject({ causes, file, mends, places, report, untried }: CheckedCloth): object {
  const findings = findingObjects(report.findings, places).map((finding, i) => {
    const mend = mendNumber(mends, report.findings[i]!);
    return { ...finding, ...(mend !== undefined && { mend }) };
  });
  return {
    file,
    ...report,
    causes,
    untried,
    findings,
    pages: pagesOf(report, causes),
    ...(mends && { mends: mends.map(({ edits: _, ...mend }) => mend) }),
  };
}

/** The page of each rule that found something, by its name, and under `cause` what is said of causes. */
function pagesOf({ findings }: CheckedCloth["report"], causes: CheckedCloth["causes"]): object {
  const site = siteOfProject();
  const found = new Set(findings.map(({ rule }) => rule));
  return {
    ...(causes.length > 0 && { cause: site.cause }),
    ...Object.fromEntries([...found].map((rule) => [rule, site.rule(rule)])),
  };
}
