import { many } from "@drawcord/base";
import type { Cloth, LaidOut } from "../cloth.js";
import { rowEdges, unitEdges } from "../measure/squares.js";
import { allowedLength } from "../measured-length.js";
import { unitsAndRows } from "../regions.js";
import type { Span } from "../report.js";
import { figureBeyond, figure as inFigures, withPlace } from "../words.js";
import { cleanTwill } from "./examples.js";
import { NO_LIMIT, planned } from "./needs.js";
import { inFigure } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface LargeAreaFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "squares" | "mm";
  /** Whether the area is drawn, or undrawn. */
  readonly drawn: boolean;
}

/** What the page of this rule says. */
export const largeAreaPage: RulePage = {
  summary: "an area too large to lie flat",
  meaning:
    "A patch of units and rows that are all drawn, or all undrawn, has more squares than the limit, or its longer side is longer.",
  reason:
    "A large warp-faced area in weft-faced cloth, or the other way round, draws in by a different amount from what surrounds it, and cockles.",
  mend: "Scatter small figures over the area, or break it up with lines of the other face. Drawcord proposes up to eight squares to change; more than that would be another figure, and that is yours to draw.",
  limit:
    "`area: 400` (squares) or `area: 12 cm` (the longer side) in `limits`, or apart: `area: { drawn: 12 cm, undrawn: 900 }`. There is no usual one, and without it the rule does not look: the ground round a figure is one area as long as the cloth, and what lies flat in linen may cockle in wool. The report tells the largest area of a cloth that lay flat: begin with that.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "6 squares where 6 are allowed",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[1], [1], [1], [1], [1], [1]],
          lifts: [[1], []],
          picksPerRow: 4,
        },
        options: { limits: { area: { squares: 6 } } },
      },
      {
        title: "a band of 16 ends at 20 a cm, where 8 mm are allowed",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[1], [1], [1], [1]],
          lifts: [[1], []],
          picksPerRow: 4,
        },
        options: { limits: { area: { mm: 8 } }, sett: { endsPerCm: 20, picksPerCm: 20 } },
      },
    ],
    fails: [
      {
        title: "7 squares where 6 are allowed",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[1], [1], [1], [1], [1], [1], [1]],
          lifts: [[1], []],
          picksPerRow: 4,
        },
        options: { limits: { area: { squares: 6 } } },
      },
      {
        title: "a band of 16 ends at 19 a cm, where 8 mm are allowed",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[1], [1], [1], [1]],
          lifts: [[1], []],
          picksPerRow: 4,
        },
        options: { limits: { area: { mm: 8 } }, sett: { endsPerCm: 19, picksPerCm: 20 } },
      },
    ],
  },
};

const say = /* @__PURE__ */ withPlace(({ drawn, measured, limit, unit }: LargeAreaFact) => {
  const area = drawn ? "a drawn area" : "an undrawn area";
  return unit === "mm"
    ? `${area} is ${figureBeyond(measured, limit)} mm long, where ${inFigures(limit)} mm are allowed`
    : `${area} has ${many(measured, "square")}, where ${limit} are allowed`;
});

/** The sentence of what it finds, under its name. */
export const largeAreaSentence = { "large-area": say };

/** An area of one drawn state that is too large to lie flat. */
export const largeArea: Rule<"large-area", LargeAreaFact, LaidOut> = {
  name: "large-area",
  severity: "warning",
  changes: ["draw", "leave"],
  mends: ["squares"],
  of: (cloth) => {
    const on = planned(cloth);
    const { area, drawnArea, undrawnArea } = cloth.options.limits ?? {};
    const none = (area ?? drawnArea ?? undrawnArea) === undefined;
    return typeof on !== "string" && none ? NO_LIMIT : on;
  },
  *find(cloth) {
    const { figure, layout } = cloth;
    const { area: both, drawnArea = both, undrawnArea = both } = cloth.options.limits ?? {};
    const { count, squares, state, firstRow, lastRow, firstColumn, lastColumn } = figure.areas;
    const units = unitEdges(layout);
    const rows = rowEdges(layout);
    for (let area = 0; area < count; area++) {
      const drawn = state[area] === 1;
      const { squares: most = Number.POSITIVE_INFINITY, mm } = (drawn ? drawnArea : undrawnArea) ?? {};
      const ends: Span = [units.first[firstColumn[area]!]! + 1, units.last[lastColumn[area]!]! + 1];
      const picks: Span = [rows.first[firstRow[area]!]! + 1, rows.last[lastRow[area]!]! + 1];
      const place = { ends, picks, ...unitsAndRows(cloth, ends, picks), drawn };
      const side = longerSide(cloth, ends[1] + 1 - ends[0], picks[1] + 1 - picks[0]);
      if (squares[area]! > most) yield { ...place, measured: squares[area]!, limit: most, unit: "squares" };
      else if (mm !== undefined && side > mm + 1e-9)
        yield { ...place, measured: side, limit: mm, unit: "mm" };
    }
  },
  say,
  parts: inFigure,
};

/** The longer side in mm of a stretch of ends by picks. */
function longerSide({ options }: Cloth, ends: number, picks: number): number {
  const across = allowedLength(options, "end", {}).perCm;
  const along = allowedLength(options, "pick", {}).perCm;
  return Math.max((ends * 10) / across, (picks * 10) / along);
}
