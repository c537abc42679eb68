import { isAbsolute, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { type Finding, NOT_ASKED_FOR, rulePages, rules } from "@drawcord/check";
import type { TextEdit } from "@drawcord/files";
import type { PlacedCause } from "@drawcord/review";
import { sayEdit } from "@drawcord/units";
import type {
  Fix,
  Invocation,
  Location,
  Notification,
  PhysicalLocation,
  Replacement,
  ReportingDescriptor,
  Result,
  ToolComponent,
} from "sarif";
import type { CheckedCloth, Failure } from "../checking/cloth.js";
import { mendNumber, type Proposal } from "../mending/proposal.js";
import { oneLine, toJson } from "../printable.js";
import { type Site, siteOfProject } from "../site.js";
import { version } from "../version.js";
import { type CauseStretch, causeLine, causePlace } from "./causes.js";
import type { Format } from "./format.js";

const SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

/**
 * One log with one run: the rules, a result for each finding, and what could not be looked at. Always says all there is.
 * Source: OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0.
 */
export const sarif: Format = {
  cloth: (cloth) => {
    const { causes, file, mends, places, report } = cloth;
    const told = new Set<number>();
    const slips = causes.map((cause) => toJson(slip(cause, cloth)));
    const found = report.findings.map((finding, i) => {
      const number = mendNumber(mends, finding);
      // A fix mends all findings of its rules, and is told with the first of them.
      const fixes = number === undefined || told.has(number) ? [] : [fix(mends!.slice(0, number), file)];
      if (number !== undefined) told.add(number);
      const cause = causes.findIndex(({ explains }) => explains.includes(i));
      return toJson({
        ...result(finding, file, places[i] ?? null, cause),
        ...(fixes.length > 0 && { fixes }),
      });
    });
    return [...slips, ...found].join(",\n");
  },
  head: async () =>
    `{"$schema":"${SCHEMA}","version":"2.1.0","runs":[{"tool":{"driver":${toJson(driver(await version()))}},\n"columnKind":"utf16CodeUnits",\n"results":[\n`,
  between: ",\n",
  tail: ({ status, tally: { failures, skipped } }) => {
    const invocation: Invocation = {
      executionSuccessful: status !== 2,
      exitCode: status,
      toolExecutionNotifications: failures.flatMap(notifications),
      toolConfigurationNotifications: [...skipped].flatMap(([reason, byRule]) =>
        reason === NOT_ASKED_FOR ? [] : [...byRule].map(([rule, files]) => notRun(rule, reason, files)),
      ),
    };
    return `],\n"invocations":[${toJson(invocation)}]}]}\n`;
  },
};

function driver(version: string): ToolComponent {
  const site = siteOfProject();
  return {
    name: "Drawcord",
    semanticVersion: version,
    informationUri: site.home,
    rules: [...rules.map((rule) => descriptor(rule, site)), { ...SLIP, helpUri: site.cause }],
  };
}

function descriptor({ name, severity }: (typeof rules)[number], site: Site): ReportingDescriptor {
  const rule = rulePages[name];
  return {
    id: name,
    helpUri: site.rule(name),
    shortDescription: { text: rule.summary },
    fullDescription: { text: `${rule.meaning} ${rule.reason}` },
    help: { text: `${rule.mend} (Source: ${rule.source})` },
    defaultConfiguration: { level: severity },
  };
}

/** What a cause is told as: a rule beside those of the cloth. */
const SLIP: ReportingDescriptor = {
  id: "slip",
  shortDescription: { text: "What was written wrong, and the edit that sets it right." },
  fullDescription: {
    text: "Something in the recipe that the rest of it speaks against; the findings that it explains are gone once it is set right.",
  },
  help: { text: "Make the edit where it is sure; else choose between it and its rivals." },
};

function slip(cause: PlacedCause, { edits, file }: CheckedCloth): Result {
  const {
    changes,
    explains,
    or,
    piece,
    pieces,
    reason,
    rivals,
    severity,
    slip: written,
    sure,
    waived,
    why,
  } = cause;
  const made = sure ? edits(changes, piece) : [];
  const words = oneLine(causeLine(cause));
  return {
    ruleId: SLIP.id,
    ruleIndex: rules.length,
    level: severity,
    message: { text: words },
    locations: [location(file, causePlace(cause))],
    ...(made.length > 0 && { fixes: [fixOf(made, oneLine(sayEdit(changes)), file)] }),
    ...(waived !== undefined && accepted(waived)),
    properties: {
      slip: written,
      ...(or !== undefined && { or }),
      why,
      reason,
      changes,
      explains,
      sure,
      rivals,
      ...(piece !== undefined && { piece }),
      ...(pieces !== undefined && { pieces }),
    },
  };
}

function accepted(reason: string): Pick<Result, "suppressions"> {
  return { suppressions: [{ kind: "inSource", status: "accepted", justification: oneLine(reason) }] };
}

/** @param cause the number, from 0, of the slip that explains it among those of its file; -1 where none does */
function result(finding: Finding, file: string, place: CauseStretch | null, cause: number): Result {
  const { message, rule, severity, waived, ...measured } = finding;
  return {
    ruleId: rule,
    ruleIndex: rules.findIndex(({ name }) => name === rule),
    level: severity,
    message: { text: oneLine(message) },
    locations: [location(file, place)],
    ...(waived !== undefined && accepted(waived)),
    properties: { ...measured, ...(cause >= 0 && { cause }) },
  };
}

/** The last of several mends, with those that it stands upon. */
function fix(mends: readonly Proposal[], file: string): Fix {
  const words = mends.map((mend) => mend.words).join("; ");
  return fixOf(mends.at(-1)!.edits, oneLine(words), file);
}

function fixOf(edits: readonly TextEdit[], text: string, file: string): Fix {
  const replacements = edits.map(
    ({ range: { column, end, line }, text: inserted }): Replacement => ({
      deletedRegion: {
        startLine: line,
        startColumn: column,
        endLine: end.line,
        endColumn: end.column,
      },
      insertedContent: { text: inserted },
    }),
  );
  return {
    description: { text },
    artifactChanges: [{ artifactLocation: { uri: uriOf(file) }, replacements }],
  };
}

function location(file: string, place: CauseStretch | null): Location {
  const region = place && {
    startLine: place.line,
    startColumn: place.column,
    endLine: place.end.line,
    endColumn: place.end.column,
  };
  const physicalLocation: PhysicalLocation = {
    artifactLocation: { uri: uriOf(file) },
    ...(region ? { region } : {}),
  };
  return { physicalLocation };
}

/** A relative name stays relative, so that the log fits wherever the folder is checked out. */
function uriOf(file: string): string {
  if (isAbsolute(file)) return pathToFileURL(file).href;
  return file.split(sep).map(encodeURIComponent).join("/");
}

function notifications({ file, reasons }: Failure): readonly Notification[] {
  return reasons.map(({ code, message, place }) => ({
    level: "error",
    message: { text: oneLine(message) },
    locations: [location(file, place ?? null)],
    ...(code !== undefined && { properties: { code, page: siteOfProject().code(code) } }),
  }));
}

function notRun(rule: string, reason: string, files: number): Notification {
  return {
    level: "note",
    message: { text: `${rule} did not look at ${files} ${files === 1 ? "file" : "files"}: ${reason}` },
    associatedRule: { id: rule, index: rules.findIndex(({ name }) => name === rule) },
  };
}
