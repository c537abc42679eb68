import { many } from "@drawcord/base";
import type { BitGrid } from "@drawcord/grid";
import type { Figure, LaidOut } from "../cloth.js";
import { companyOf } from "../company.js";
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
    "An area of the figure, or a gap in it, of a few squares is one unit wide or one row high, and stands alone between areas of the other kind. Areas that repeat between the same rows and the same units are left out, and so are areas of one shape in more than six rows: that is how the figure is drawn.",
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
    const rowsComeAgain = companyOf(figure.rowKinds.kindOf);
    const unitsComeAgain = companyOf(figure.columnKinds.kindOf);
    const units = unitEdges(layout);
    const rows = rowEdges(layout);
    const rare = rareAreas(figure, most);
    const regions = joinFaults(cloth, (visit) => {
      for (let area = 0; area < count; area++) {
        const [bottom, top] = [firstRow[area]!, lastRow[area]!];
        const [left, right] = [firstColumn[area]!, lastColumn[area]!];
        if (squares[area]! > most || (top > bottom && right > left)) continue;
        if (!standsAlone(figure.squares, left, right, bottom, top)) continue;
        if (!rare(area) || (rowsComeAgain(bottom, top) && unitsComeAgain(left, right))) continue;
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

/** Tells whether small areas of the shape and state of one stand alone in few rows only. */
function rareAreas({ areas, squares: grid }: Figure, most: number): (area: number) => boolean {
  const { count, firstColumn, firstRow, lastColumn, lastRow, squares, state } = areas;
  const shape = (area: number) =>
    `${state[area]} ${lastColumn[area]! - firstColumn[area]!} ${lastRow[area]! - firstRow[area]!}`;
  const rows = new Map<string, Set<number>>();
  for (let area = 0; area < count; area++) {
    const [left, right] = [firstColumn[area]!, lastColumn[area]!];
    const [bottom, top] = [firstRow[area]!, lastRow[area]!];
    if (squares[area]! > most || (left !== right && bottom !== top)) continue;
    if (!standsAlone(grid, left, right, bottom, top)) continue;
    const known = rows.get(shape(area)) ?? new Set();
    rows.set(shape(area), known.add(bottom));
  }
  return (area) => (rows.get(shape(area))?.size ?? 0) <= MOST_ROWS;
}
