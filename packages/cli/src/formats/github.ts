import { oneLine } from "../printable.js";
import { siteOfProject } from "../site.js";
import { type CauseStretch, causeLine, causePlace } from "./causes.js";
import type { Format } from "./format.js";
import { isShown } from "./worst.js";

const COMMANDS = { error: "error", warning: "warning", note: "notice" };

/**
 * Workflow commands that GitHub shows beside the lines of a recipe, one a cause and one a finding; what is waived is left out.
 * Source: GitHub Docs, "Workflow commands for GitHub Actions", Setting an error message.
 */
export const github: Format = {
  cloth({ causes, file, places, report }, { least }) {
    const site = siteOfProject();
    const told = causes
      .filter((cause) => cause.waived === undefined && isShown(cause, least))
      .map((cause) =>
        annotation(
          COMMANDS[cause.severity],
          file,
          causePlace(cause),
          "cause",
          `${causeLine(cause)} (${site.cause})`,
        ),
      );
    const found = report.findings.flatMap((finding, i) =>
      finding.waived !== undefined || !isShown(finding, least)
        ? []
        : [
            annotation(
              COMMANDS[finding.severity],
              file,
              places[i],
              finding.rule,
              `${finding.message} (${site.rule(finding.rule)})`,
            ),
          ],
    );
    return [...told, ...found].join("");
  },
  failure({ file, reasons }) {
    const site = siteOfProject();
    return reasons
      .map(({ code, message, place }) => {
        const page = code === undefined ? "" : ` (${site.code(code)})`;
        return annotation("error", file, place, "not usable", `${message}${page}`);
      })
      .join("");
  },
};

function annotation(
  command: string,
  file: string,
  place: CauseStretch | null | undefined,
  title: string,
  message: string,
): string {
  const properties = [["file", file], ...(place ? lines(place) : []), ["title", title]];
  const listed = properties.map(([name = "", value = ""]) => `${name}=${property(value)}`).join(",");
  return `::${command} ${listed}::${escaped(oneLine(message))}\n`;
}

function lines({ column, end, line }: CauseStretch): readonly (readonly [string, string])[] {
  // Columns are for annotations of one line.
  const columns = end.line === line ? ([["endColumn", String(end.column)]] as const) : [];
  return [["line", String(line)], ["col", String(column)], ["endLine", String(end.line)], ...columns];
}

function escaped(text: string): string {
  return text.replaceAll("%", "%25").replaceAll("\r", "%0D").replaceAll("\n", "%0A");
}

function property(text: string): string {
  return escaped(text).replaceAll(":", "%3A").replaceAll(",", "%2C");
}
