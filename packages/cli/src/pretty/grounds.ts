import type { BorderCut, PossibleGround } from "@drawcord/ground";
import type { Paint } from "../paint.js";
import { wrapText } from "../text.js";

/** As many twills are named; of more, their number is enough. */
const MOST_TWILLS = 60;

/** What so many ends allow, best first, in columns. */
export function groundsPage(
  ends: number,
  grounds: readonly PossibleGround[],
  twills: readonly string[] | undefined,
  paint: Paint,
  width: number,
): string {
  const cut = ({ cutting, open }: BorderCut) => `${cutting} of ${cutting + open}`;
  const head = ["weave", "side edges cut", "top and bottom", "touching binding points", "longest float"];
  const rows = grounds.map((ground) => [
    ground.description ?? "irregular pair",
    ...(ground.kind === "two weaves"
      ? [cut(ground.cut.sideways), cut(ground.cut.lengthways), `${ground.touching ?? "-"}`]
      : ["no figure", "", ""]),
    `${ground.longestFloat}`,
  ]);
  const widths = head.map((name, i) => Math.max(name.length, ...rows.map((row) => row[i]!.length)));
  const line = (cells: readonly string[]) =>
    `  ${cells.map((cell, i) => cell.padEnd(widths[i]!)).join("  ")}`.trimEnd();
  const parts = [
    [paint.strong(`Grounds on ${ends} ends, best first`), paint.faint(line(head)), ...rows.map(line)],
    ...grounds.flatMap((ground) =>
      ground.description ? [] : [wrapText(pairSentence(ground), Math.min(width, 80))],
    ),
    ...(twills ? [wrapText(twillSentence(ends, twills), Math.min(width, 80))] : []),
  ];
  return `${parts.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

/** The pair has no description that a recipe could name; its steps are told. */
function pairSentence({ ground: { steps } }: PossibleGround): string {
  const order = (of: "raise" | "sink") => steps.map((step) => step[of].join("+")).join(" ");
  return `The irregular pair, pick by pick, raises ${order("raise")} and sinks ${order("sink")}; a recipe gives it in ground.steps.`;
}

function twillSentence(ends: number, twills: readonly string[]): string {
  if (twills.length === 1) return `The one twill on ${ends} ends is ${twills[0]}.`;
  const all = `There are ${twills.length} twills on ${ends} ends`;
  return twills.length <= MOST_TWILLS ? `${all}: ${twills.join(", ")}.` : `${all}; --format json lists them.`;
}
