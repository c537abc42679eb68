import { many } from "@drawcord/base";
import { reportNumbers } from "@drawcord/check";
import { sayEdit } from "@drawcord/units";
import type { CheckedCloth } from "../checking/cloth.js";
import { mendWords } from "../mending/proposal.js";
import { paintIn } from "../paint.js";
import { lastLine } from "../pretty/last-line.js";
import { picture } from "../pretty/picture.js";
import { oneLine } from "../printable.js";
import { type Site, siteOfProject } from "../site.js";
import { sayExplained } from "./causes.js";
import type { Format, Look } from "./format.js";
import { isSeen, isShown, isSilent, type PlacedFinding, worstOfEach } from "./worst.js";

/** Characters in a line of a picture: a page scrolls no further. */
const WIDTH = 80;

/** A section a cloth, for a page: its causes, its findings with their pictures, and its numbers in a table. */
export const markdown: Format = {
  cloth(cloth, look) {
    if (isSilent(cloth, look.least)) return "";
    const site = siteOfProject();
    return `${[heading(cloth), ...causes(cloth, look, site), ...findings(cloth, look, site), ...numbers(cloth, look)].join("\n\n")}\n\n`;
  },
  failure: ({ file, reasons }) =>
    [
      `## ${escaped(file)}`,
      ...reasons.map(({ code, message }) => {
        const page = code === undefined ? "" : ` ([${code}](${siteOfProject().code(code)}))`;
        return `Could not be used: ${escaped(message)}${page}`;
      }),
      "",
    ].join("\n\n"),
  tail({ look, status, tally }) {
    if (tally.files === 0 || (look.least !== undefined && status === 0)) return "";
    return `**${escaped(lastLine(tally))}**\n`;
  },
};

function heading({ file, title }: CheckedCloth): string {
  return title === undefined ? `## ${escaped(file)}` : `## ${escaped(title)}\n\n${escaped(file)}`;
}

function causes(cloth: CheckedCloth, { least }: Look, site: Site): readonly string[] {
  const told = cloth.causes
    .filter((cause) => isShown(cause, least))
    .map((cause) => {
      const { changes, line, message, rivals, severity, sure, waived, why } = cause;
      if (waived !== undefined) return `### waived: slip\n\n${escaped(`${waived}: ${message}`)}`;
      const explained = sayExplained(cause, cloth);
      return [
        `### ${severity}: [cause](${site.cause})${line === undefined ? "" : ` (line ${line})`}`,
        escaped(`${message}; ${why}`),
        `${sure ? "Mend" : "Perhaps"}: ${escaped([changes, ...rivals.slice(0, 3)].map((edit) => sayEdit(edit)).join("; or: "))}`,
        ...(explained === undefined ? [] : [`Accounts for ${escaped(explained)}`]),
      ].join("\n\n");
    });
  const { untried } = cloth;
  return [...told, ...(untried.length === 0 ? [] : [`Not tried: ${escaped(untried.join("; "))}`])];
}

function findings(cloth: CheckedCloth, look: Look, site: Site): readonly string[] {
  return worstOfEach(cloth, look).flatMap(({ more, rule, shown, waived }) => [
    ...shown.map((placed) => findingText(placed, cloth, site)),
    ...(more === 0 ? [] : [`and ${more} more of ${rule}${waived ? ", waived" : ""}`]),
  ]);
}

function findingText({ finding, place }: PlacedFinding, cloth: CheckedCloth, site: Site): string {
  const { message, rule, severity, waived } = finding;
  const line = place === null ? "" : ` (line ${place.line})`;
  if (waived !== undefined) return `*waived* ${rule}${line}: ${escaped(waived)}  \n${escaped(message)}`;
  const mend = mendWords(cloth.mends, finding);
  const drawn = isSeen(finding) ? picture(cloth.drawdown(), finding, WIDTH, paintIn(false)) : [];
  return [
    `### ${severity}: [${rule}](${site.rule(rule)})${line}\n\n${escaped(message)}`,
    ...(mend === undefined ? [] : [`Mend: ${escaped(mend)}`]),
    ...(drawn.length === 0 ? [] : [`\`\`\`text\n${drawn.join("\n")}\n\`\`\``]),
  ].join("\n\n");
}

function numbers({ report }: CheckedCloth, { least }: Look): readonly string[] {
  if (least !== undefined) return [];
  const { error, note, warning } = report.summary;
  const rows = [
    ["findings", [many(error, "error"), many(warning, "warning"), many(note, "note")].join(", ")],
    ...reportNumbers(report),
  ];
  return [["| | |", "| --- | --- |", ...rows.map((cells) => `| ${cells.join(" | ")} |`)].join("\n")];
}

/** Text as a page shows it as it stands: one line, nothing in it taken for a mark or a tag. */
function escaped(text: string): string {
  return oneLine(text).replace(/[\\`*_{}[\]<>#|~&]/g, "\\$&");
}
