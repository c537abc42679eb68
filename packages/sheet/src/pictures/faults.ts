import type { Finding, Severity, Span } from "@drawcord/check";
import { squaresPath } from "@drawcord/draw";
import { fromCells } from "@drawcord/grid";
import {
  type CellFrame,
  type Picture,
  palette,
  roomHigh,
  round,
  type Shape,
  textWidth,
} from "@drawcord/page";
import type { Stretch, Woven } from "../woven.js";
import type { ThreadsPerCm } from "./cloth.js";
import { label } from "./label.js";
import { type Area, placer } from "./spread.js";

/** Marks without a number on a picture at the most; the list counts them all. */
const MOST_MARKS = 300;

/** How far from its place a number may stand where others crowd there, in mm; a line leads back to the place. */
const REACH = 40;

/** A finding and its number in the list, where it stands there by itself. */
export interface NumberedFinding {
  readonly finding: Finding;
  readonly number?: number;
}

/** Each severity has a colour, a mark and a line of its own, so that none of them speaks alone. */
const dress: Readonly<
  Record<Severity, { readonly colour: string; readonly mark: string; readonly dash?: readonly number[] }>
> = {
  error: { colour: palette.error, mark: "triangle" },
  warning: { colour: palette.warning, mark: "square", dash: [1.2, 0.6] },
  note: { colour: palette.note, mark: "circle", dash: [0.3, 0.6] },
};

/** The sign of a severity in running text: the same shape as its mark. */
export const severitySign: Readonly<Record<Severity, string>> = { error: "▲", warning: "■", note: "●" };

/**
 * The findings on the figure: drawn units in grey, each finding framed and marked with its number in the list. None when no
 * finding has a place in the cloth.
 */
export function faultsPicture(
  woven: Woven,
  findings: readonly NumberedFinding[],
  { endsPerCm = 1, picksPerCm = endsPerCm }: ThreadsPerCm,
): Picture | undefined {
  const placed = findings.filter(({ finding: { ends, picks } }) => ends !== undefined || picks !== undefined);
  if (placed.length === 0) return undefined;
  const scale = Math.min(
    (MOST_WIDE * endsPerCm) / woven.ends,
    ((roomHigh - 2 * MARGIN - LEGEND) * picksPerCm) / woven.picks,
  );
  const frame: CellFrame = { x: MARGIN, y: MARGIN, sx: scale / endsPerCm, sy: scale / picksPerCm };
  const width = woven.ends * frame.sx;
  const height = woven.picks * frame.sy;
  const { x, y } = frame;
  const edge: Shape = { kind: "rect", x, y, width, height, stroke: palette.rule, strokeWidth: 0.15 };
  const size = { width: width + 2 * MARGIN, height: height + 2 * MARGIN };
  const marks = marksOf(placed, (finding) => area(woven, frame, finding.ends, finding.picks), {
    x: 0,
    y: 0,
    ...size,
  });
  return {
    id: "findings-picture",
    caption:
      "The findings on the figure (drawn units grey), numbered as in the list; a line leads from a number to its place where others crowd there",
    alt: "The figure with the findings framed and numbered on it. The list of findings names each place in ends and picks.",
    drawing: {
      width: Math.max(size.width, 66),
      height: size.height + LEGEND,
      shapes: [...figure(woven, frame), edge, ...marks, ...legend(size.height + LEGEND - 1.5)],
    },
  };
}

/** Room around the figure for numbers, and below it for the legend, in mm. */
const MARGIN = 5;
const LEGEND = 5;

/** As wide as keeps numbers apart and leaves the page some of the list. */
const MOST_WIDE = 145;

/**
 * Frames around the numbered findings, the gravest on top; their numbers, set apart; and small marks for those without a
 * number, where there is room.
 */
function marksOf(
  findings: readonly NumberedFinding[],
  areaOf: (finding: Finding) => Area,
  bounds: Area,
): Shape[] {
  const { place } = placer(bounds);
  const numbered = findings.filter(({ number }) => number !== undefined);
  const badges = numbered.flatMap(({ finding, number }): { lead: Shape[]; badge: Shape[] }[] => {
    const at = areaOf(finding);
    const badge = place(badgeSize(number!), at, REACH);
    return badge === undefined ? [] : [badgeOf(finding.severity, number!, at, badge)];
  });
  const small: Shape[] = [];
  for (const { finding, number } of findings) {
    if (number !== undefined) continue;
    if (small.length === MOST_MARKS) break;
    const at = place({ width: 1.8, height: 1.8 }, areaOf(finding), 0);
    if (at !== undefined) small.push(mark(finding.severity, at.x + 0.9, at.y + 0.9, 0.9));
  }
  return [
    ...[...numbered].reverse().flatMap(({ finding }) => framed(finding.severity, areaOf(finding))),
    ...small,
    ...badges.flatMap(({ lead }) => lead),
    ...badges.flatMap(({ badge }) => badge),
  ];
}

/** Units that are drawn, in grey, as blocks of units and rows. */
function figure({ expansion, unitSpans, rowSpans, ends, picks }: Woven, frame: CellFrame): Shape[] {
  const { drawn } = expansion;
  const firsts = rowSpans.map(({ start }) => start);
  const grid = fromCells(rowSpans.length, unitSpans.length, (row, unit) =>
    drawn.get(firsts[row]!, unitSpans[unit]!.start),
  );
  const even = (spans: readonly Stretch[]) => new Set(spans.map(({ start, end }) => end - start)).size === 1;
  if (even(unitSpans) && even(rowSpans)) {
    const unit = unitSpans[0]!;
    const row = rowSpans[0]!;
    const cells: CellFrame = {
      x: frame.x + unit.start * frame.sx,
      y: frame.y,
      sx: (unit.end - unit.start) * frame.sx,
      sy: (row.end - row.start) * frame.sy,
    };
    return [{ kind: "path", d: squaresPath(grid), fill: palette.hair, frame: cells, role: "drawn" }];
  }
  const all = fromCells(picks, ends, (pick, end) => drawn.get(pick, end));
  return [{ kind: "path", d: squaresPath(all), fill: palette.hair, frame, role: "drawn" }];
}

/** A place in mm; a side that a finding does not name is the whole side. */
function area(
  { ends, picks }: Woven,
  { x, y, sx, sy }: CellFrame,
  inEnds: Span = [1, ends],
  inPicks: Span = [1, picks],
): Area {
  return {
    x: x + (inEnds[0] - 1) * sx,
    y: y + (picks - inPicks[1]) * sy,
    width: (inEnds[1] - inEnds[0] + 1) * sx,
    height: (inPicks[1] - inPicks[0] + 1) * sy,
  };
}

/** A frame in the colour and line of its severity, edged with ink: the colours alone are pale on the paper and on grey. */
function framed(severity: Severity, { x, y, width, height }: Area): Shape[] {
  const { colour, dash } = dress[severity];
  const box = { kind: "rect", x: x - 0.3, y: y - 0.3, width: width + 0.6, height: height + 0.6 } as const;
  const line = dash === undefined ? {} : { dash };
  return [
    { ...box, stroke: palette.ink, strokeWidth: 0.65, ...line },
    { ...box, stroke: colour, strokeWidth: 0.35, ...line },
  ];
}

/** A mark with its number beside it. */
function badgeSize(number: number): { width: number; height: number } {
  return { width: 4.6 + textWidth(`${number}`, NUMBER.size, NUMBER.face), height: 3.6 };
}

const NUMBER = { size: 2.4, face: "sans-bold", fill: palette.ink } as const;

function badgeOf(
  severity: Severity,
  number: number,
  at: Area,
  badge: Area,
): { lead: Shape[]; badge: Shape[] } {
  const from = { x: at.x + at.width / 2, y: at.y + at.height / 2 };
  const to = { x: badge.x + badge.width / 2, y: badge.y + badge.height / 2 };
  const away = Math.hypot(to.x - from.x, to.y - from.y) > 0.1;
  const d = `M${round(from.x)} ${round(from.y)}L${round(to.x)} ${round(to.y)}`;
  return {
    lead: away ? [{ kind: "path", d, stroke: palette.ink, width: 0.15 }] : [],
    badge: [
      { kind: "rect", ...badge, fill: palette.paper, stroke: palette.ink, strokeWidth: 0.12 },
      mark(severity, badge.x + 2, badge.y + 1.8, 1.3),
      label(badge.x + 3.9, badge.y + 2.65, `${number}`, NUMBER),
    ],
  };
}

function mark(severity: Severity, x: number, y: number, r: number): Shape {
  const { colour: fill, mark: shape } = dress[severity];
  // An edge of ink keeps the shape plain where its colour is pale on the paper.
  const around = { stroke: palette.ink, width: 0.18 };
  const f = round;
  if (shape === "triangle") {
    return {
      kind: "path",
      d: `M${f(x)} ${f(y - r)}L${f(x + r)} ${f(y + 0.8 * r)}L${f(x - r)} ${f(y + 0.8 * r)}z`,
      fill,
      ...around,
    };
  }
  if (shape === "square") {
    const s = f(1.6 * r);
    return { kind: "path", d: `M${f(x - 0.8 * r)} ${f(y - 0.8 * r)}h${s}v${s}h${-s}z`, fill, ...around };
  }
  return {
    kind: "path",
    d: `M${f(x - r)} ${f(y)}a${f(r)} ${f(r)} 0 1 1 ${f(2 * r)} 0a${f(r)} ${f(r)} 0 1 1 ${f(-2 * r)} 0z`,
    fill,
    ...around,
  };
}

function legend(y: number): Shape[] {
  return (["error", "warning", "note"] as const).flatMap((severity, i) => [
    mark(severity, 6 + i * 22, y - 0.8, 1.5),
    label(9 + i * 22, y, severity, { size: 2.4 }),
  ]);
}
