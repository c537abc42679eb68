import { crop, fromCells } from "@drawcord/grid";
import { type Frame, type Picture, palette, roomWide, type Shape } from "@drawcord/page";
import { ruling } from "../drawing/ruling.js";
import { squaresPath } from "../drawing/squares.js";
import type { Stretch, Woven } from "../woven.js";
import { label } from "./label.js";
import { tieMarks } from "./tie-up.js";

/** Which corner of the cloth, as it is drawn. */
export type Corner = "bottom-left" | "bottom-right" | "top-left" | "top-right";

/** The part of a cloth that a drawdown shows, in whole units and rows where they are not too large. */
interface Window {
  readonly ends: Stretch;
  readonly picks: Stretch;
}

const CELL = 2.8;
const GAP = 2.5;
const LEFT = 7;
/** Ends and picks of a corner, at the most. */
const MOST_ENDS = 40;
const MOST_PICKS = 40;
/** With fewer ends than this there is nothing to see; the picture is then made smaller instead. */
const LEAST_ENDS = 16;
/** Pattern shafts drawn at the most; of a greater harness only those that the corner uses. */
const MOST_SHAFTS = 16;

/** The part of the cloth at a corner. */
function cornerWindow(woven: Woven, corner: Corner, mostEnds: number): Window {
  const { ends, picks, unitSpans, rowSpans } = woven;
  const edges = (spans: readonly Stretch[]) => spans.flatMap(({ start, end }) => [start, end]);
  return {
    ends: corner.endsWith("left")
      ? { start: 0, end: last(edges(unitSpans), Math.min(mostEnds, ends), ends) }
      : {
          start:
            ends -
            last(
              edges(unitSpans).map((e) => ends - e),
              Math.min(mostEnds, ends),
              ends,
            ),
          end: ends,
        },
    picks: corner.startsWith("bottom")
      ? { start: 0, end: last(edges(rowSpans), Math.min(MOST_PICKS, picks), picks) }
      : {
          start:
            picks -
            last(
              edges(rowSpans).map((e) => picks - e),
              Math.min(MOST_PICKS, picks),
              picks,
            ),
          end: picks,
        },
  };
}

/** As large a corner as has room on a page beside its treadles and handles. */
function shown(woven: Woven, corner: Corner) {
  for (let most = MOST_ENDS; ; most--) {
    const { ends, picks } = cornerWindow(woven, corner, most);
    const units = [...woven.expansion.unitOfEnd.slice(ends.start, ends.end)];
    const shafts = patternShaftsOf(woven, units, picks);
    const cells = ends.end - ends.start + woven.treadles.length + shafts.length;
    const width = LEFT + cells * CELL + 2 * GAP + 2;
    if (width <= roomWide || most <= LEAST_ENDS) return { ends, picks, units, shafts };
  }
}

/** The greatest edge that is not past `most`; all where all fits, `most` itself where no edge comes before it. */
function last(edges: readonly number[], most: number, all: number): number {
  if (all <= most) return all;
  return edges.filter((edge) => edge > 0 && edge <= most).reduce((a, b) => Math.max(a, b), 0) || most;
}

/**
 * A corner of the drawdown with both harnesses beside it: pattern and ground threading above, back of the loom at the
 * top; treadling and handles to the right, one line a pick; the tie-up where treadles and ground shafts meet.
 */
export function cornerPicture(woven: Woven, corner: Corner): Picture {
  const { draft, expansion, treadles, treadleOfStep } = woven;
  const { ends, picks, units, shafts } = shown(woven, corner);
  const columns = ends.end - ends.start;
  const rows = picks.end - picks.start;
  const harness = draft.ground.shafts;

  const patternTop = 4;
  const groundTop = patternTop + (shafts.length === 0 ? 0 : shafts.length * CELL + GAP);
  const clothTop = groundTop + harness * CELL + GAP;
  const treadleLeft = LEFT + columns * CELL + GAP;
  const handleLeft = treadleLeft + treadles.length * CELL + GAP;

  const cell = (x: number, y: number): Frame => ({ x, y, sx: CELL, sy: CELL });
  const cloth = crop(expansion.drawdown, { row: picks.start, column: ends.start, rows, columns });
  const shaftAt = (column: number) => woven.shaftOfEnd[ends.start + column]!;
  const onPattern = fromCells(shafts.length, columns, (at, column) => {
    const unit = units[column]!;
    return unit >= 0 && draft.threading[unit]!.includes(shafts[at]!);
  });
  const onGround = fromCells(harness, columns, (at, column) => shaftAt(column) === at + 1);
  const treadled = fromCells(
    rows,
    treadles.length,
    (row, treadle) => treadleOfStep[expansion.stepOfPick[picks.start + row]!] === treadle,
  );
  const pulled = fromCells(rows, shafts.length, (row, at) =>
    draft.lifts[expansion.rowOfPick[picks.start + row]!]!.includes(shafts[at]!),
  );
  const straight = fromCells(shafts.length, shafts.length, (row, column) => row === column);

  const boxes = [
    { grid: onPattern, frame: cell(LEFT, patternTop), role: "pattern-threading" },
    { grid: onGround, frame: cell(LEFT, groundTop), role: "ground-threading" },
    { grid: treadled, frame: cell(treadleLeft, clothTop), role: "treadling" },
    { grid: straight, frame: cell(handleLeft, patternTop), role: "handles" },
    { grid: pulled, frame: cell(handleLeft, clothTop), role: "lifts" },
  ].filter(({ grid }) => grid.columns > 0 && grid.rows > 0);
  const tieFrame = cell(treadleLeft, groundTop);
  const clothFrame = cell(LEFT, clothTop);
  const around: Shape[] = [
    ...boxes.flatMap(({ grid, frame, role }): Shape[] => [
      { kind: "path", d: squaresPath(grid), fill: palette.ink, frame, role },
      ...ruling({ columns: grid.columns, rows: grid.rows, frame }),
    ]),
    ...tieMarks(treadles, harness, tieFrame),
    ...ruling({ columns: treadles.length, rows: harness, frame: tieFrame }),
    ...ruling({ columns, rows, frame: clothFrame }),
  ];
  const names: Shape[] = [
    ...shafts.map((shaft, i) => side(LEFT - 1, patternTop + (shafts.length - 1 - i) * CELL, `${shaft}`)),
    ...Array.from({ length: harness }, (_, i) =>
      side(LEFT - 1, groundTop + (harness - 1 - i) * CELL, `${i + 1}`),
    ),
    ...every5(picks).map((pick) => side(LEFT - 1, clothTop + (picks.end - pick) * CELL, `${pick}`)),
    ...every5(ends).map((end) =>
      under(LEFT + (end - ends.start - 0.5) * CELL, clothTop + rows * CELL, `${end}`),
    ),
    ...treadles.map((_, i) => under(treadleLeft + (i + 0.5) * CELL, clothTop + rows * CELL, `${i + 1}`)),
    ...shafts.map((shaft, i) => under(handleLeft + (i + 0.5) * CELL, clothTop + rows * CELL, `${shaft}`)),
    label(LEFT, 2.6, "pattern harness (behind) above, ground harness (in front) below it", { size: 2.2 }),
    label(treadleLeft, clothTop + rows * CELL + 5.8, "treadles", { size: 2.2 }),
    ...(shafts.length === 0
      ? []
      : [
          label(handleLeft, clothTop + rows * CELL + (treadles.length < 4 ? 8.6 : 5.8), "handles", {
            size: 2.2,
          }),
        ]),
  ];
  const raised: Shape = {
    kind: "path",
    d: squaresPath(cloth),
    fill: palette.ink,
    frame: clothFrame,
    role: "raised",
  };
  const size = {
    width: Math.max(handleLeft + shafts.length * CELL + 2, treadleLeft + 14, 86),
    height: clothTop + rows * CELL + 10,
  };
  const where = `ends ${ends.start + 1} to ${ends.end}, picks ${picks.start + 1} to ${picks.end}`;
  return {
    id: "corner-drawdown",
    caption: `Drawdown of the ${corner.replace("-", " ")} corner, ${where}: black = the end is raised`,
    alt: `Drawdown of ${where}, first pick at the bottom, with pattern and ground threading above, tie-up, treadling and handles to the right.`,
    drawing: { ...size, shapes: [raised, ...around, ...names] },
    blank: { ...size, shapes: [...around, ...names] },
  };
}

/** The pattern shafts that a corner shows, ascending. */
function patternShaftsOf(
  { draft, expansion, patternShafts }: Woven,
  units: readonly number[],
  picks: Stretch,
): number[] {
  const all = Array.from({ length: patternShafts }, (_, i) => i + 1);
  if (patternShafts <= MOST_SHAFTS) return all;
  const used = new Set(units.flatMap((unit) => (unit < 0 ? [] : draft.threading[unit]!)));
  const drawn = new Set(
    [...expansion.rowOfPick.slice(picks.start, picks.end)].flatMap((row) => draft.lifts[row]!),
  );
  return all
    .filter((shaft) => used.has(shaft) && (used.size <= MOST_SHAFTS || drawn.has(shaft)))
    .slice(0, MOST_SHAFTS);
}

function side(x: number, top: number, text: string): Shape {
  return label(x, top + CELL / 2 + 0.7, text, { anchor: "end", size: 1.9 });
}

function under(x: number, bottom: number, text: string): Shape {
  return label(x, bottom + 2.6, text, { anchor: "middle", size: 1.9 });
}

/** The first of a stretch and every fifth, counted from 1. */
function every5({ start, end }: Stretch): number[] {
  const numbers = [start + 1];
  for (let n = start + 2; n <= end; n++) if (n % 5 === 0 && n - start > 2) numbers.push(n);
  return numbers;
}
