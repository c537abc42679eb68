import { many, runsOf } from "@drawcord/base";
import type { Report } from "./finding.js";
import { openByRule } from "./open-by-rule.js";
import type { CutTally, FloatTally, Spread } from "./report.js";

/**
 * The numbers of a report in words, as it is read: size, floats, cuts, balance, and whether the cloth hangs together.
 * @param report of a cloth
 * @returns lines with their names; the name is empty where a line goes on with the one before
 * @example reportNumbers(check(draft)).at(-1) // ["integrity", "the cloth hangs together"]
 */
export function reportNumbers(report: Report): readonly (readonly [name: string, text: string])[] {
  const { balance, cut, floats, inferred, integrity, size } = report;
  return [
    [
      "size",
      `${many(size.ends, "end")} x ${many(size.picks, "pick")}${inferred ? "" : `, ${many(size.units, "unit")} x ${many(size.rows, "row")}`}`,
    ],
    ["warp floats", `on the face ${tally(floats.warpFace)}`],
    ["", `on the back ${tally(floats.warpBack)}`],
    ["weft floats", `on the face ${tally(floats.weftFace)}`],
    ["", `on the back ${tally(floats.weftBack)}`],
    ["cuts", `side edges ${cuts(cut.side)}; top and bottom ${cuts(cut.across)}`],
    ...toldOtherwise(report).map((text) => ["", text] as const),
    [
      "balance",
      `warp on ${percent(balance.warpFaceShare)} of the face; ${percent(balance.drawnShare)} drawn, in ${many(balance.areas.count, "area")}${balance.areas.count === 0 ? "" : `, the largest of ${many(balance.areas.largest, "square")}`}`,
    ],
    [
      "",
      `intersections: ${spread(balance.intersections.ends, "end")}; ${spread(balance.intersections.picks, "pick")}`,
    ],
    ...(inferred ? [["", sureness(inferred)] as const] : []),
    ["integrity", hangs(integrity)],
  ];
}

/** `up to 7 (5120 of 3, 12 of 7)`: how many floats there are of each length, the longest lengths last. */
function tally({ longest, lengths }: FloatTally): string {
  const entries = Object.entries(lengths).sort(([a], [b]) => Number(a) - Number(b));
  if (entries.length === 0) return "none";
  // Two lengths and more are put together; one alone has room of its own.
  const hidden = entries.length > 7 ? entries.length - 6 : 0;
  const shown = entries.slice(hidden).map(([length, number]) => `${number} of ${length}`);
  const shorter = entries.slice(0, hidden).reduce((sum, [, number]) => sum + number, 0);
  return `up to ${longest} (${[...(shorter === 0 ? [] : [`${shorter} shorter`]), ...shown].join(", ")})`;
}

function cuts({ cutting, open }: CutTally): string {
  if (cutting + open === 0) return "none";
  return open === 0 ? `${cutting}, all clean` : `${cutting + open}, ${open} open`;
}

/** Why the rule reports other open pairs than the cloth has in all, where it does. */
function toldOtherwise(report: Report): readonly string[] {
  const { cut } = report;
  const open = openByRule(report);
  if (open === undefined || (open.side === cut.side.open && open.across === cut.across.open)) return [];
  return [
    `these are counted over all picks as they lie in the cloth; open-cut reports ${open.side} open at side edges and ${open.across} at top and bottom:`,
    "it judges each weft by itself, and leaves out picks that move every ground shaft, selvedges, and borders within the limit",
  ];
}

function spread({ least, most, mean }: Spread, thread: "end" | "pick"): string {
  return least === most
    ? `${least} on each ${thread}`
    : `${least} to ${most} on ${thread === "end" ? "an end" : "a pick"}, ${round(mean)} on average`;
}

function hangs({ hangsTogether, layers, looseEnds, loosePicks }: Report["integrity"]): string {
  const loose = [
    ...(looseEnds.length === 0
      ? []
      : [`${many(looseEnds.length, "loose end")}: ${runsOf(looseEnds, 8, " ")}`]),
    ...(loosePicks.length === 0
      ? []
      : [`${many(loosePicks.length, "loose pick")}: ${runsOf(loosePicks, 8, " ")}`]),
  ];
  const cloth = hangsTogether
    ? "the cloth hangs together"
    : `the cloth falls apart into ${many(layers, "layer")}`;
  return [cloth, ...loose].join("; ");
}

/** What is drawn was not told by a plan: how far the numbers above can be relied on. */
function sureness({ sureness: share, tooLarge }: NonNullable<Report["inferred"]>): string {
  if (tooLarge) return "the cloth is too large to infer what is drawn, so cuts and areas are not known";
  if (share === 0) return "what is drawn cannot be told from the cloth, so cuts and areas are not known";
  return `what is drawn is inferred from the face: ${percent(share)} sure, the rest near a border; areas are counted in threads`;
}

function percent(share: number): string {
  return `${round(share * 100)} %`;
}

function round(value: number): string {
  return String(Math.round(value * 10) / 10);
}
