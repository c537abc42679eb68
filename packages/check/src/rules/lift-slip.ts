import { runsOf } from "@drawcord/base";
import { mirror } from "@drawcord/grid";
import type { Figure, LaidOut } from "../cloth.js";
import { rowEdges } from "../measure/squares.js";
import type { Span } from "../report.js";
import { findSlip, mirrorsRound, type SymmetrySlip } from "../symmetry.js";
import { onTabby } from "./examples.js";
import { planned } from "./needs.js";
import { atRow } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** Of this many rows, one may break a symmetry that all the others keep and be a slip. */
const ROWS_TO_A_SLIP = 8;

/** For the examples: five units, each on a shaft of its own. */
const fiveUnits = { ...onTabby, threading: [[1], [2], [3], [4], [5]] };

/** For the examples: rows that are the same left and right, and rows of which the third alone is not. */
const evenRows = [[3], [2, 3, 4], [1, 2, 3, 4, 5], [2, 4]];
const rowsButOne = [[3], [1, 2, 3, 4, 5], [2, 3], [1, 3, 5], [2, 4]];

/** What the rule finds. */
export interface LiftSlipFact extends Fact {
  readonly rows: Span;
  /** The row that this one would have to be like, or beside which one is missing; either may be the wrong one. */
  readonly counterpart?: number;
}

/** What the page of this rule says. */
export const liftSlipPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a lift plan that is one row away from its own symmetry",
  meaning:
    "Except for one row, the lift plan reads the same from the first row as from the last, or repeats all along, or every row draws the left half as the right: one row draws otherwise than its counterpart, or one is too many or too few.",
  reason:
    "A shaft forgotten in one row of a symmetric figure is the commonest slip in lifting, and the eye finds it at once in the cloth.",
  mend: "Draw in the row what its counterpart draws, or add or leave out the one that is odd. Where it is meant, waive it.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "a lozenge",
        cloth: {
          ...fiveUnits,
          lifts: [[3], [2, 3, 4], [1, 2, 3, 4, 5], [2, 4], [2, 4], [1, 2, 3, 4, 5], [2, 3, 4], [3]],
        },
      },
      {
        title: "two rows of ten that are not the same left and right: so many are meant",
        cloth: {
          ...fiveUnits,
          lifts: [...evenRows, [1, 2], ...rowsButOne],
        },
      },
    ],
    fails: [
      {
        title: "a lozenge that lacks shaft 4 in one row",
        cloth: {
          ...fiveUnits,
          lifts: [[3], [2, 3, 4], [1, 2, 3, 4, 5], [2, 4], [2, 4], [1, 2, 3, 4, 5], [2, 3], [3]],
        },
      },
      {
        title: "a row that is held once too often",
        cloth: {
          ...fiveUnits,
          lifts: [...evenRows, [1, 5], [2, 4], [1, 2, 3, 4, 5], [2, 3, 4], [2, 3, 4], [3]],
        },
      },
      {
        title: "a row that is not the same left and right, where all others are",
        cloth: {
          ...fiveUnits,
          lifts: [...evenRows, [1, 5], ...rowsButOne],
        },
      },
    ],
  },
}))();

/** A lift plan that is one row away from its own symmetry. */
export const liftSlip: Rule<"lift-slip", LiftSlipFact, LaidOut> = {
  name: "lift-slip",
  severity: "warning",
  changes: ["lift", "remove-row"],
  of: planned,
  *find(cloth) {
    const { options, layout, figure } = cloth;
    const { first, last } = rowEdges(layout);
    const slip = slipOfLifts(figure);
    const repeated = options.repeat === "picks" || options.repeat === "both";
    if (slip !== undefined && repeated && mirrorsRound([...figure.rowKinds.kindOf])) return;
    const rows = slip === undefined ? lopsided(figure) : [slip.at];
    for (const row of rows) {
      yield {
        rows: [row + 1, row + 1],
        picks: [first[row]! + 1, last[row]! + 1],
        ...(slip && { counterpart: slip.other + 1 }),
      };
    }
  },
  say({ rows = [1, 1] }, { figure }) {
    const slip = figure && slipOfLifts(figure);
    const row = rows[0];
    if (figure === undefined) return "";
    if (slip === undefined) {
      return `row ${row} is not the same on the left as on the right, in ${unlike(figure, row - 1)}`;
    }
    if (slip.kind === "odd-one") {
      return `the lift plan is symmetrical except for row ${row}: it is one too many, or its counterpart beside row ${slip.other + 1} is missing`;
    }
    const differ = `which differ in ${unlike(figure, slip.at, slip.other)}`;
    return slip.symmetry === "mirror"
      ? `the lift plan is symmetrical except for one pair: rows ${slip.at + 1} and ${slip.other + 1}, ${differ}`
      : `the lift plan repeats every ${slip.period} rows but for one: row ${slip.at + 1} is not row ${slip.other + 1}, ${differ}`;
  },
  parts: atRow,
};

/** The slip in the lift plan of a figure. */
function slipOfLifts({ rowKinds }: Figure): SymmetrySlip | undefined {
  return findSlip([...rowKinds.kindOf]);
}

/** The rows that are not the same from both sides, when they are few and the others, of several kinds, all are. */
function lopsided({ squares, rowKinds }: Figure): number[] {
  const back = mirror(squares);
  const rows: number[] = [];
  const even = new Set<number>();
  rowKinds.kindOf.forEach((kind, row) => {
    if (sameRow(squares, back, row)) even.add(kind);
    else rows.push(row);
  });
  return even.size >= 3 && rows.length * ROWS_TO_A_SLIP <= squares.rows ? rows : [];
}

function sameRow(a: Figure["squares"], b: Figure["squares"], row: number): boolean {
  for (let i = row * a.stride; i < (row + 1) * a.stride; i++) if (a.words[i] !== b.words[i]) return false;
  return true;
}

/** The units (from 0) in which a row differs from another, or from its own mirror. */
function unlikeUnits({ squares }: Figure, row: number, other?: number): number[] {
  const last = squares.columns - 1;
  return Array.from({ length: squares.columns }, (_, unit) => unit).filter(
    (unit) =>
      squares.get(row, unit) !==
      (other === undefined ? squares.get(row, last - unit) : squares.get(other, unit)),
  );
}

function unlike(figure: Figure, row: number, other?: number): string {
  const units = unlikeUnits(figure, row, other);
  return `${units.length === 1 ? "unit" : "units"} ${runsOf(units.map((unit) => unit + 1))}`;
}
