import { many } from "@drawcord/base";
import type { BitGrid } from "@drawcord/grid";
import type { Figure, LaidOut } from "../cloth.js";
import { thinAreaLimit } from "../limits/thin-area.js";
import { rowEdges, unitEdges } from "../measure/squares.js";
import { joinFaults } from "../regions.js";
import { withPlace } from "../words.js";
import { cleanTwill } from "./examples.js";
import { planned } from "./needs.js";
import { inFigure } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the page of this rule says. */
export const thinAreaPage: RulePage = {
  summary: "a single unit or row standing alone",
  meaning:
    "An area of the figure, or a gap in it, of a few squares is one unit wide or one row high, and stands alone between areas of the other kind. An area that stands in the design again with the same squares about it, as it is or mirrored, is left out, and so are areas of one shape in more than six rows: that is how the figure is drawn.",
  reason:
    "So thin an area is bound so little in its own weave that it breaks up, and a square standing alone most often was missed or set by mistake. What touches its own kind by a corner, as in a diagonal line, does not stand alone.",
  mend: "Draw its neighbour too, or leave it out.",
  limit: "`thin-area: 1` in `limits`: areas of up to so many squares are reported. Usual: 3.",
  source: "common practice; the limit is Drawcord's own",
  examples: {
    passes: [
      {
        title: "a figure of two units by two rows",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[], [], [1], [1], [], []],
          lifts: [[], [], [1], [1], [], []],
          picksPerRow: 4,
        },
      },
      {
        title: "a line of four units by one row: so long a line is drawn on purpose",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[], [], [1], [1], [1], [1], [], []],
          lifts: [[], [], [1], [], []],
          picksPerRow: 4,
        },
      },
    ],
    fails: [
      {
        title: "one square alone",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[], [], [1], [], []],
          lifts: [[], [], [1], [], []],
          picksPerRow: 4,
        },
      },
      {
        title: "a line of three units by one row",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[], [], [1], [1], [1], [], []],
          lifts: [[], [], [1], [], []],
          picksPerRow: 4,
        },
      },
    ],
  },
};

const say = /* @__PURE__ */ withPlace(({ count = 1 }: Fact) =>
  count === 1
    ? "an area that is one unit wide or one row high stands alone"
    : `${many(count, "area")} beside each other are each one unit wide or one row high`,
);

/** The sentence of what it finds, under its name. */
export const thinAreaSentence = { "thin-area": say };

/** A small area that is one unit wide or one row high. */
export const thinArea: Rule<"thin-area", Fact, LaidOut> = {
  name: "thin-area",
  severity: "note",
  changes: ["draw", "leave"],
  of: planned,
  *find(cloth) {
    const { figure, layout } = cloth;
    const { firstRow, lastRow, firstColumn, lastColumn, squares, count } = figure.areas;
    const most = cloth.options.limits?.thinArea ?? thinAreaLimit.usual;
    const units = unitEdges(layout);
    const rows = rowEdges(layout);
    const standsOnce = areasThatStandOnce(figure, most);
    const regions = joinFaults(cloth, (visit) => {
      for (let area = 0; area < count; area++) {
        const [bottom, top] = [firstRow[area]!, lastRow[area]!];
        const [left, right] = [firstColumn[area]!, lastColumn[area]!];
        if (squares[area]! > most || (top > bottom && right > left)) continue;
        if (!standsAlone(figure.squares, left, right, bottom, top)) continue;
        if (!standsOnce(area)) continue;
        visit(units.first[left]!, units.last[right]!, rows.first[bottom]!, rows.last[top]!, 1);
      }
    });
    for (const { measured: _, ...region } of regions) yield region;
  },
  say,
  parts: inFigure,
};

/** Whether an area lies inside the cloth and touches none of its own kind by a corner, as diagonal lines do. */
function standsAlone(squares: BitGrid, left: number, right: number, bottom: number, top: number): boolean {
  if (left === 0 || bottom === 0 || right === squares.columns - 1 || top === squares.rows - 1) return false;
  const own = squares.get(bottom, left);
  return [bottom - 1, top + 1].every((row) =>
    [left - 1, right + 1].every((unit) => squares.get(row, unit) !== own),
  );
}

/** In more rows than this, areas of one shape are a texture, and the manner of the figure (Drawcord's own). */
const MOST_ROWS = 6;

/** How far about an area its company reaches, in squares: a motif that comes again is alike so far at least. */
const ABOUT = 3;

/**
 * Tells whether a small area stands in the design once: areas of its shape in few rows, and none of them in the same company,
 * as it is or mirrored. What is drawn again, by a threading that comes again or turns, or by a motif that does, is meant.
 */
function areasThatStandOnce({ areas, squares: grid }: Figure, most: number): (area: number) => boolean {
  const { count, firstColumn, firstRow, lastColumn, lastRow, squares, state } = areas;
  const shapes = new Map<string, number[]>();
  for (let area = 0; area < count; area++) {
    const [left, right] = [firstColumn[area]!, lastColumn[area]!];
    const [bottom, top] = [firstRow[area]!, lastRow[area]!];
    if (squares[area]! > most || (left !== right && bottom !== top)) continue;
    if (!standsAlone(grid, left, right, bottom, top)) continue;
    const shape = `${state[area]} ${right - left} ${top - bottom}`;
    const same = shapes.get(shape);
    if (same === undefined) shapes.set(shape, [area]);
    else same.push(area);
  }
  const once = new Set<number>();
  for (const same of shapes.values()) {
    if (new Set(same.map((area) => firstRow[area])).size > MOST_ROWS) continue;
    const companies = same.map((area) =>
      companyAbout(grid, firstColumn[area]!, lastColumn[area]!, firstRow[area]!, lastRow[area]!),
    );
    const times = new Map<string, number>();
    for (const company of companies) times.set(company, (times.get(company) ?? 0) + 1);
    same.forEach((area, i) => {
      if (times.get(companies[i]!) === 1) once.add(area);
    });
  }
  return (area) => once.has(area);
}

/** The squares about an area, the same for one that is as it is or mirrored either way. */
function companyAbout(grid: BitGrid, left: number, right: number, bottom: number, top: number): string {
  const inside = (row: number, unit: number) =>
    row >= 0 && unit >= 0 && row < grid.rows && unit < grid.columns;
  const lines = Array.from({ length: top - bottom + 1 + 2 * ABOUT }, (_, y) =>
    Array.from({ length: right - left + 1 + 2 * ABOUT }, (_, x) => {
      const [row, unit] = [bottom - ABOUT + y, left - ABOUT + x];
      return inside(row, unit) ? (grid.get(row, unit) ? "#" : ".") : " ";
    }),
  );
  const turned = lines.map((line) => line.toReversed());
  return [lines, lines.toReversed(), turned, turned.toReversed()]
    .map((way) => way.map((line) => line.join("")).join("/"))
    .sort()[0]!;
}
