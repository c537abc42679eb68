import type { Finding, Severity, Span } from "@drawcord/check";
import { fromCells } from "@drawcord/grid";
import type { Picture } from "../document/types.js";
import { palette } from "../drawing/palette.js";
import { round } from "../drawing/round.js";
import type { Frame, Shape } from "../drawing/shape.js";
import { squaresPath } from "../drawing/squares.js";
import type { Stretch, Woven } from "../woven.js";
import type { Closeness } from "./cloth.js";
import { label } from "./label.js";

/** Findings marked on a picture at the most; the list holds them all. */
const MOST_MARKS = 300;

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
  { endsPerCm = 1, picksPerCm = endsPerCm }: Closeness,
): Picture | undefined {
  const placed = findings
    .filter(({ finding: { ends, picks } }) => ends !== undefined || picks !== undefined)
    .slice(0, MOST_MARKS);
  if (placed.length === 0) return undefined;
  const scale = Math.min((120 * endsPerCm) / woven.ends, (185 * picksPerCm) / woven.picks);
  const frame: Frame = { x: 4, y: 4, sx: scale / endsPerCm, sy: scale / picksPerCm };
  const width = woven.ends * frame.sx;
  const height = woven.picks * frame.sy;
  const { x, y } = frame;
  const edge: Shape = { kind: "rect", x, y, width, height, stroke: palette.rule, strokeWidth: 0.15 };
  const shapes: Shape[] = [
    ...figure(woven, frame),
    edge,
    ...[...placed]
      .reverse()
      .flatMap(({ finding: { severity, ends, picks }, number }) =>
        marked(severity, number, area(woven, frame, ends, picks)),
      ),
    ...legend(height + 9),
  ];
  return {
    id: "findings-picture",
    caption: "The findings on the figure (drawn units grey), numbered as in the list",
    alt: `The figure with ${placed.length} marked places. The list of findings names each place in ends and picks.`,
    drawing: { width: Math.max(width + 8, 66), height: height + 14, shapes },
    blank: { width: width + 8, height: height + 8, shapes: [edge] },
  };
}

/** Units that are drawn, in grey, as blocks of units and rows. */
function figure({ expansion, unitSpans, rowSpans, ends, picks }: Woven, frame: Frame): Shape[] {
  const { drawn } = expansion;
  const firsts = rowSpans.map(({ start }) => start);
  const grid = fromCells(rowSpans.length, unitSpans.length, (row, unit) =>
    drawn.get(firsts[row]!, unitSpans[unit]!.start),
  );
  const even = (spans: readonly Stretch[]) => new Set(spans.map(({ start, end }) => end - start)).size === 1;
  if (even(unitSpans) && even(rowSpans)) {
    const unit = unitSpans[0]!;
    const row = rowSpans[0]!;
    const cells: Frame = {
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

interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A place in mm; a side that a finding does not name is the whole side. */
function area(
  { ends, picks }: Woven,
  { x, y, sx, sy }: Frame,
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

/** A numbered finding is framed; one that the list leaves out is only a small mark. */
function marked(severity: Severity, number: number | undefined, { x, y, width, height }: Area): Shape[] {
  const { colour: stroke, dash } = dress[severity];
  const middle = { x: x + width / 2, y: y + height / 2 };
  if (number === undefined) return [mark(severity, middle.x, middle.y, 0.9)];
  const frame = { x: x - 0.3, y: y - 0.3, width: width + 0.6, height: height + 0.6 };
  const bold = { size: 2.4, face: "sans-bold", fill: palette.ink } as const;
  return [
    { kind: "rect", ...frame, stroke, strokeWidth: 0.45, ...(dash === undefined ? {} : { dash }) },
    mark(severity, middle.x, middle.y, 1.7),
    label(middle.x + 2, middle.y - 0.8, `${number}`, bold),
  ];
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
