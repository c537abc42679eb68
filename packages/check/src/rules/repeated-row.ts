import type { LaidOut } from "../cloth.js";
import { companyOf } from "../company.js";
import { rowEdges } from "../measure/squares.js";
import type { Span } from "../report.js";
import { onTabby } from "./examples.js";
import { planned } from "./needs.js";
import { atRow } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** Where this share of the rows changes with every row, a row held twice stands out. */
const CHANGING = 0.75;

/** A plan shorter than this shows no manner of its own. */
const LEAST_ROWS = 8;

/** What the rule finds. */
export interface RepeatedRowFact extends Fact {
  readonly rows: Span;
}

/** What the page of this rule says. */
export const repeatedRowPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a lift held twice in the middle of a motif",
  meaning:
    "Two neighbouring rows draw the same units, in a lift plan that otherwise changes with every row. The middle of a mirrored figure is left out, and so is what comes again between the same rows.",
  reason:
    "Losing count and weaving a row twice, or writing it twice, makes a step in the outline. It may be meant: then the note can be waived.",
  mend: "Leave one of the two out.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "a lift plan that changes with every row",
        cloth: {
          ...onTabby,
          threading: [[1], [2], [3]],
          lifts: [[1], [2], [3], [1, 2], [2, 3], [1, 3], [1], [2], [3]],
        },
      },
      {
        title: "the middle of a mirrored figure",
        cloth: {
          ...onTabby,
          threading: [[1], [2], [3]],
          lifts: [[1], [2], [3], [1, 2], [2, 3], [2, 3], [1, 2], [3], [2], [1]],
        },
      },
      {
        title: "a lift plan that holds most rows",
        cloth: {
          ...onTabby,
          threading: [[1], [2]],
          lifts: [[1], [1], [2], [2], [1], [1], [2], [2], [1], [1]],
        },
      },
    ],
    fails: [
      {
        title: "one row twice",
        cloth: {
          ...onTabby,
          threading: [[1], [2], [3]],
          lifts: [[1], [2], [3], [1, 2], [1, 2], [2, 3], [1, 3], [1], [2], [3]],
        },
      },
    ],
  },
}))();

/** A lift held for two rows in a motif that otherwise changes with every row. */
export const repeatedRow: Rule<"repeated-row", RepeatedRowFact, LaidOut> = {
  name: "repeated-row",
  severity: "note",
  changes: ["remove-row"],
  of: planned,
  *find({ figure, layout }) {
    const { kindOf } = figure.rowKinds;
    const held = heldRows(kindOf);
    const once = held.filter(({ rows }) => rows === 1).length;
    if (kindOf.length < LEAST_ROWS || once < CHANGING * held.length) return;
    const { first, last } = rowEdges(layout);
    const comesAgain = companyOf(kindOf);
    for (const { row, rows } of held) {
      const [before, after] = [kindOf[row - 1], kindOf[row + 2]];
      if (rows !== 2 || layout.draft.lifts[row]!.length === 0) continue;
      // The edge of the cloth, the middle of a mirrored figure, and what comes again are meant.
      if (before === undefined || after === undefined || before === after || comesAgain(row, row + 1))
        continue;
      yield { rows: [row + 1, row + 2], picks: [first[row]! + 1, last[row + 1]! + 1] };
    }
  },
  say: ({ rows }) =>
    `rows ${rows[0]} and ${rows[1]} are alike in a lift plan that otherwise changes with every row`,
  parts: atRow,
};

/** The first row of each lift and for how many rows it is held. */
function heldRows(kindOf: Int32Array): { readonly row: number; readonly rows: number }[] {
  const held: { row: number; rows: number }[] = [];
  kindOf.forEach((kind, row) => {
    const before = held.at(-1);
    if (before !== undefined && kindOf[before.row] === kind) before.rows++;
    else held.push({ row, rows: 1 });
  });
  return held;
}
