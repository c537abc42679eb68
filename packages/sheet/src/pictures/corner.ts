import { colourOf, isDark, squaresPath } from "@drawcord/draw";
import { crop, fromCells } from "@drawcord/grid";
import { type CellFrame, type Picture, palette, roomWide, round, type Shape } from "@drawcord/page";
import { letterOf } from "../card/letters.js";
import { ruling } from "../drawing/ruling.js";
import type { Stretch, Woven } from "../woven.js";
import { label } from "./label.js";
import type { ThreadColours } from "./threads.js";
import { tieMarks } from "./tie-up.js";
import { type ClothSpot, type Corner, type Window, windowOf } from "./window.js";

const CELL = 2.8;
const GAP = 2.5;
const LEFT = 14;
/** Ends and picks of a corner, at the most. */
const MOST_ENDS = 40;
const MOST_PICKS = 40;
/** With fewer ends than this there is nothing to see; the picture is then made smaller instead. */
const LEAST_ENDS = 16;
/** Pattern shafts drawn at the most; of a greater harness only those that the corner uses. */
const MOST_SHAFTS = 16;

/** As large a corner as has room on a page beside its treadles and handles. */
function shown(woven: Woven, at: Corner | ClothSpot | undefined) {
  for (let most = MOST_ENDS; ; most--) {
    const { ends, picks } = windowOf(woven, at, most, MOST_PICKS);
    const units = [...woven.expansion.unitOfEnd.slice(ends.start, ends.end)];
    const shafts = patternShaftsOf(woven, units, picks);
    const cells = ends.end - ends.start + woven.treadles.length + shafts.length + 1;
    const width = LEFT + cells * CELL + 3 * GAP + 2;
    if (width <= roomWide || most <= LEAST_ENDS) return { ends, picks, units, shafts };
  }
}

/**
 * A corner of the drawdown with both harnesses beside it: pattern and ground threading above, back of the loom at the
 * top; treadling and handles to the right, one line a pick; the tie-up where treadles and ground shafts meet.
 */
export function cornerPicture(
  woven: Woven,
  at: Corner | ClothSpot | undefined,
  colours: ThreadColours,
): Picture {
  const { draft, expansion, treadles, treadleOfStep } = woven;
  const { ends, picks, units, shafts } = shown(woven, at);
  const columns = ends.end - ends.start;
  const rows = picks.end - picks.start;
  const harness = draft.ground.shafts;

  const patternTop = 4;
  const groundTop = patternTop + (shafts.length === 0 ? 0 : shafts.length * CELL + GAP);
  const clothTop = groundTop + harness * CELL + GAP;
  const weftLeft = LEFT + columns * CELL + GAP;
  const treadleLeft = weftLeft + CELL + GAP;
  const handleLeft = treadleLeft + treadles.length * CELL + GAP;

  const cell = (x: number, y: number): CellFrame => ({ x, y, sx: CELL, sy: CELL });
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
    ...threadLines(columns, rows, clothFrame),
    ...spanLines(woven, { ends, picks }, clothFrame),
    ...wefts(woven, picks, cell(weftLeft, clothTop), colours),
  ];
  const names: Shape[] = [
    ...shafts.map((shaft, i) => side(LEFT - 1, patternTop + (shafts.length - 1 - i) * CELL, `${shaft}`)),
    ...Array.from({ length: harness }, (_, i) =>
      side(LEFT - 1, groundTop + (harness - 1 - i) * CELL, `${i + 1}`),
    ),
    ...within(woven.rowSpans, picks).flatMap(({ index, start, end }) => [
      side(LEFT - 1, clothTop + (picks.end - start - 1) * CELL, `${start + 1}`),
      ...strong(LEFT - 5.5, clothTop + (picks.end - (start + end) / 2) * CELL + 0.8, `${index + 1}`, "end"),
    ]),
    ...within(woven.unitSpans, ends).flatMap(({ index, start, end }) => [
      under(LEFT + (start - ends.start + 0.5) * CELL, clothTop + rows * CELL, `${start + 1}`),
      ...strong(
        LEFT + ((start + end) / 2 - ends.start) * CELL,
        clothTop + rows * CELL + 5.4,
        `${index + 1}`,
        "middle",
      ),
    ]),
    label(
      LEFT,
      clothTop + rows * CELL + 8.4,
      "Small: the first end of each unit and the first pick of each row. Large: unit and row.",
      {
        size: 2,
      },
    ),
    ...treadles.map((_, i) => under(treadleLeft + (i + 0.5) * CELL, clothTop + rows * CELL, `${i + 1}`)),
    ...shafts.map((shaft, i) => under(handleLeft + (i + 0.5) * CELL, clothTop + rows * CELL, `${shaft}`)),
    label(LEFT, 2.6, "pattern harness (behind) above, ground harness (in front) below it", { size: 2.2 }),
    label(treadleLeft, clothTop + rows * CELL + 5.6, "treadles", { size: 2.2 }),
    ...(shafts.length === 0
      ? []
      : [
          label(handleLeft, clothTop + rows * CELL + (treadles.length < 4 ? 11.4 : 5.6), "handles", {
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
    width: Math.max(handleLeft + shafts.length * CELL + 2, treadleLeft + 14, 92),
    height: clothTop + rows * CELL + 12.4,
  };
  const where = `ends ${ends.start + 1} to ${ends.end}, picks ${picks.start + 1} to ${picks.end}`;
  const spots = placesText(woven, { ends, picks });
  return {
    id: "corner-drawdown",
    caption: `Drawdown, ${where} (${spots}): black = the end is raised; beside it the weft of each pick by its letter`,
    alt: `Drawdown of ${where}, first pick at the bottom, with pattern and ground threading above, tie-up, treadling and handles to the right.`,
    drawing: { ...size, shapes: [raised, ...around, ...names] },
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

function strong(x: number, y: number, text: string, anchor: "middle" | "end"): Shape[] {
  return [label(x, y, text, { anchor, size: 2.5, face: "sans-bold", fill: palette.ink })];
}

/** Spans that begin or go on within a stretch, cut to it, with their places in the list. */
function within(spans: readonly Stretch[], { start, end }: Stretch) {
  return spans
    .map((span, index) => ({ index, start: Math.max(start, span.start), end: Math.min(end, span.end) }))
    .filter((span) => span.end > span.start);
}

/** `units 3 to 12, rows 1 to 10` */
function placesText({ unitSpans, rowSpans }: Woven, { ends, picks }: Window): string {
  const units = within(unitSpans, ends).map(({ index }) => index + 1);
  const rows = within(rowSpans, picks).map(({ index }) => index + 1);
  const told = (noun: string, list: readonly number[]) =>
    list.length === 1 ? `${noun} ${list[0]}` : `${noun}s ${list[0]} to ${list.at(-1)}`;
  return [told("unit", units), told("row", rows)].join(", ");
}

/** A thin line at every end and pick. */
function threadLines(columns: number, rows: number, { x, y, sx, sy }: CellFrame): Shape[] {
  const across = Array.from(
    { length: columns + 1 },
    (_, i) => `M${round(x + i * sx)} ${round(y)}v${round(rows * sy)}`,
  );
  const along = Array.from(
    { length: rows + 1 },
    (_, i) => `M${round(x)} ${round(y + i * sy)}h${round(columns * sx)}`,
  );
  return [{ kind: "path", d: [...across, ...along].join(""), stroke: palette.rule, width: 0.1 }];
}

/** A heavier line where a unit or a row begins. */
function spanLines(
  { unitSpans, rowSpans }: Woven,
  { ends, picks }: Window,
  { x, y, sx, sy }: CellFrame,
): Shape[] {
  const edges = (spans: readonly Stretch[], { start, end }: Stretch) =>
    [...new Set([start, end, ...spans.flatMap((span) => [span.start, span.end])])].filter(
      (edge) => edge >= start && edge <= end,
    );
  const [wide, high] = [(ends.end - ends.start) * sx, (picks.end - picks.start) * sy];
  const d = [
    ...edges(unitSpans, ends).map(
      (edge) => `M${round(x + (edge - ends.start) * sx)} ${round(y)}v${round(high)}`,
    ),
    ...edges(rowSpans, picks).map(
      (edge) => `M${round(x)} ${round(y + (picks.end - edge) * sy)}h${round(wide)}`,
    ),
  ].join("");
  return [{ kind: "path", d, stroke: palette.accent, width: 0.35 }];
}

/** The weft of each pick: a square of its colour with its letter. */
function wefts({ weftOfPick }: Woven, picks: Stretch, frame: CellFrame, { weft }: ThreadColours): Shape[] {
  const { x, y, sx, sy } = frame;
  return Array.from({ length: picks.end - picks.start }, (_, i): Shape[] => {
    const pick = picks.start + i;
    const top = round(y + (picks.end - 1 - pick) * sy);
    const colour = weft[pick]!;
    const letter = letterOf(weftOfPick[pick]!);
    return [
      {
        kind: "rect",
        x: round(x),
        y: top,
        width: sx,
        height: sy,
        fill: colourOf(colour),
        stroke: palette.muted,
        strokeWidth: 0.12,
      },
      label(round(x + sx / 2), round(top + sy * 0.75), letter, {
        anchor: "middle",
        size: 2,
        face: "sans-bold",
        fill: isDark(colour) ? palette.paper : palette.ink,
      }),
    ];
  }).flat();
}
