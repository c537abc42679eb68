import { listed } from "@drawcord/base";
import {
  bordersOf,
  type ChangedBlock,
  changedLifts,
  type LiftChange,
  printShafts,
  printWovenBlock,
  type UnitDraft,
} from "@drawcord/units";
import type { LaidOut } from "../cloth.js";
import type { WovenOrder } from "../put-together.js";
import { picksOfRows } from "../regions.js";
import { withPlace } from "../words.js";
import { onTabby } from "./examples.js";
import { planned } from "./needs.js";
import { spansOfLines } from "./order-lines.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface ScrambledBorderFact extends Fact {
  /** The line of the weaving order. */
  readonly orderLine: string;
  /** The change that mixes them: `turned`. */
  readonly change: string;
  /** The shafts of the border that it takes in. */
  readonly shafts: readonly number[];
  /** The shafts of the figure that it names, or means where it names none. */
  readonly figure: readonly number[];
}

const bordered: UnitDraft = {
  ...onTabby,
  threading: [[9], [1], [2], [3], [4], [3], [2], [1], [2], [3], [4], [9]],
  lifts: [[1], [2]],
};

/** What the page of this rule says. */
export const scrambledBorderPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a change of a block mixes the shafts of a border with those of the figure",
  meaning:
    "A block is mirrored, turned or moved by half on shafts of which some draw a border along both sides of the cloth and some the figure, and the rows then draw the border's shafts where the figure's are meant, or the other way round. A border is units at both sides, on shafts that have none in the middle half of the threading.",
  reason:
    "The border is torn up where the changed block is woven, and bits of the figure stand at the edges.",
  mend: "Name the shafts of the figure alone, such as `turned on 1-8`; without `on` all pattern shafts are meant.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "a block turned on the shafts of the figure",
        cloth: bordered,
        options: { woven: turnedOn([1, 2, 3, 4]) },
      },
    ],
    fails: [
      {
        title: "a block turned on the shafts of figure and border",
        cloth: bordered,
        options: { woven: turnedOn([1, 2, 3, 4, 9]) },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(({ change, figure, orderLine, shafts }: ScrambledBorderFact) => {
  const [those, these] = [shafts, figure].map((set) => listed(printShafts(set).split(" ")));
  return `the line "${orderLine}" mixes the border with the figure: ${change} takes in the border's shafts ${those} with the figure's ${these}`;
});

/** The sentence of what it finds, under its name. */
export const scrambledBorderSentence = { "scrambled-border": say };

/** A block that is turned, mirrored or bricked on shafts of the figure and of a border together. */
export const scrambledBorder: Rule<"scrambled-border", ScrambledBorderFact, LaidOut> = {
  name: "scrambled-border",
  severity: "warning",
  changes: [],
  of: planned,
  *find({ options: { woven }, layout }) {
    if (woven === undefined) return;
    const border = new Set(bordersOf(layout.draft.threading).shafts);
    if (border.size === 0) return;
    const all = layout.draft.threading.reduce((most, unit) => Math.max(most, ...unit), 0);
    const lines = spansOfLines(woven);
    const rows = layout.draft.lifts.length;
    for (const [i, line] of woven.order.entries()) {
      for (const part of [line, ...(line.beside ?? [])]) {
        const mixed = mixedIn(part, woven, border, all);
        if (mixed === undefined) continue;
        const span = lines[i]!;
        const known = span[1] <= rows ? { rows: span, picks: picksOfRows(layout, span) } : {};
        yield { ...known, orderLine: printWovenBlock(line), ...mixed };
      }
    }
  },
  say,
  parts: ({ rows }) => [{ piece: ["lifts", "order"] }, ...(rows === undefined ? [] : [{ row: rows[0] }])],
};

/** The first change of a block that draws shafts of the border for those of the figure, or the other way round. */
function mixedIn(
  { block, changes }: ChangedBlock,
  { blocks }: WovenOrder,
  border: ReadonlySet<number>,
  all: number,
): Pick<ScrambledBorderFact, "change" | "shafts" | "figure"> | undefined {
  let rows = blocks[block] ?? [];
  for (const change of changes) {
    const moved = change.change === "alternating" || change.change === "filled" ? change.every : change;
    if (moved?.change === "mirrored" || moved?.change === "turned" || moved?.change === "brick") {
      const on = moved.on ?? Array.from({ length: all }, (_, i) => i + 1);
      const mirrored = moved.change !== "brick";
      const half = Math.floor(on.length / 2);
      const becomes = new Map(
        on.map((shaft, i) => [shaft, mirrored ? on.at(-1 - i)! : on[(i + half) % on.length]!]),
      );
      const drawn = new Set([...new Set(rows)].flat());
      const isMixed = [...becomes].some(
        ([from, to]) => drawn.has(from) && border.has(from) !== border.has(to),
      );
      if (isMixed) {
        return {
          change: moved.change,
          shafts: on.filter((shaft) => border.has(shaft)),
          figure: on.filter((shaft) => !border.has(shaft)),
        };
      }
    }
    // Rows that come again draw nothing new.
    if (change.change !== "repeated" && change.change !== "fitted") {
      rows = changedLifts(rows, onceOf(change), all, (name) => blocks[name]);
    }
  }
  return undefined;
}

/** A change that draws the same rows as another, each as seldom as can be. */
function onceOf(change: LiftChange): LiftChange {
  if (change.change === "alternating") return { ...change, times: Math.min(2, change.times) };
  if (change.change !== "filled") return change;
  return change.every === undefined
    ? { change: "repeated", times: 1 }
    : { change: "alternating", times: 2, every: change.every };
}

/** For the examples: a block of the figure and its border. */
function turnedOn(on: readonly number[]): WovenOrder {
  return {
    order: [{ block: "moth", changes: [{ change: "turned", on }] }],
    blocks: { moth: [[2], [1, 9]] },
    over: 0,
  };
}
