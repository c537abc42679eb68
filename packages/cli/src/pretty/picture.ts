import type { Finding, Span } from "@drawcord/check";
import { type BitGrid, crop, toText } from "@drawcord/grid";
import type { Paint } from "../paint.js";
import { stretch } from "./window.js";

const MARGIN = 4;
const MOST_PICKS = 24;
const MOST_ENDS = 60;

/**
 * The piece of drawdown around a finding, a line each: the last pick on top, `#` raised and `.` lowered, `>` beside the
 * picks and `^` under the ends that the finding speaks of, and the numbers of both. Nothing where a finding has no place
 * in the cloth.
 * @param drawdown the whole cloth
 * @param width characters that fit on a line
 */
export function picture(
  drawdown: BitGrid,
  finding: Pick<Finding, "ends" | "picks">,
  width: number,
  paint: Paint,
): readonly string[] {
  if ((finding.ends === undefined && finding.picks === undefined) || drawdown.rows * drawdown.columns === 0) {
    return [];
  }
  const gutter = "pick ".length + String(drawdown.rows).length + " > ".length;
  const overhang = String(drawdown.columns).length - 1;
  const fit = Math.max(8, Math.min(MOST_ENDS, width - gutter - overhang));
  const ends = stretch(finding.ends, drawdown.columns, fit, MARGIN);
  const picks = stretch(finding.picks, drawdown.rows, MOST_PICKS, MARGIN);
  const piece = crop(drawdown, {
    row: picks.shown[0] - 1,
    column: ends.shown[0] - 1,
    rows: picks.shown[1] - picks.shown[0] + 1,
    columns: ends.shown[1] - ends.shown[0] + 1,
  });
  const from = ends.marked[0] - ends.shown[0];
  const to = ends.marked[1] - ends.shown[0] + 1;
  const lines = toText(piece)
    .split("\n")
    .map((line, index) => {
      const pick = picks.shown[1] - index;
      const marked = pick >= picks.marked[0] && pick <= picks.marked[1];
      const label = `${index === 0 ? "pick " : ""}${pick}`.padStart(gutter - 3);
      if (!marked) return `${paint.faint(label)}   ${line}`;
      return `${label} > ${line.slice(0, from)}${paint.marked(line.slice(from, to))}${line.slice(to)}`;
    });
  const carets = " ".repeat(gutter + from) + "^".repeat(to - from);
  const rest = [beyond(ends.left, "ends"), beyond(picks.left, "picks")]
    .filter((text) => text !== "")
    .join(" and ");
  return [
    ...lines,
    carets,
    paint.faint(ruler(ends.shown, ends.marked, gutter)),
    ...(rest === "" ? [] : [paint.faint(`${" ".repeat(gutter)}and so on for ${rest}`)]),
  ];
}

function beyond(left: number, threads: string): string {
  return left === 0 ? "" : `${left} more ${left === 1 ? threads.slice(0, -1) : threads}`;
}

/** The numbers of the first and last end marked and shown, each with its first figure under its end, where there is room. */
function ruler(shown: Span, marked: Span, gutter: number): string {
  const line = [..."end".padStart(gutter - 3).padEnd(gutter + shown[1] - shown[0] + 12)];
  for (const end of new Set([marked[0], marked[1], shown[0], shown[1]])) {
    const at = gutter + end - shown[0];
    const figures = String(end);
    const room = line.slice(at - 1, at + figures.length + 1).every((character) => character === " ");
    if (room) for (const [offset, figure] of [...figures].entries()) line[at + offset] = figure;
  }
  return line.join("").trimEnd();
}
