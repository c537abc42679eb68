import {
  type CheckOptions,
  check,
  checkGrid,
  checkShaftDraft,
  drawdownOfDraft,
  type Example,
  type Finding,
  type Report,
} from "@drawcord/check";
import { type BitGrid, fromCells, fromText } from "@drawcord/grid";
import { expand, type UnitDraft } from "@drawcord/units";

/** An example of a rule, as it is drawn. */
export interface ExampleCloth {
  /** Rows are picks, or rows of the lifts where only the plan matters; columns are ends, or units. */
  readonly grid: BitGrid;
  /** What is counted across and along. */
  readonly of: "ends and picks" | "units and rows";
  /** What stands over each column and beside each row, where only the plan matters. */
  readonly over?: readonly string[];
  readonly beside?: readonly string[];
}

/**
 * The cloth of an example; where its ground moves every shaft on every pick, so that only the plan matters, its units and
 * rows.
 */
export function exampleCloth({ cloth }: Example): ExampleCloth {
  if (typeof cloth === "string") return { grid: fromText(cloth), of: "ends and picks" };
  if ("shafts" in cloth) return { grid: drawdownOfDraft(cloth), of: "ends and picks" };
  return isPlanOnly(cloth) ? groundPlanOf(cloth) : { grid: expand(cloth).drawdown, of: "ends and picks" };
}

function isPlanOnly({ ground: { shafts, steps } }: UnitDraft): boolean {
  return steps.every(({ raise, sink }) => raise.length + sink.length === shafts);
}

function groundPlanOf({ threading, lifts }: UnitDraft): ExampleCloth {
  return {
    grid: fromCells(lifts.length, threading.length, (row, unit) =>
      threading[unit]!.some((shaft) => lifts[row]!.includes(shaft)),
    ),
    of: "units and rows",
    over: threading.map((shafts) => shafts.join("+") || "X"),
    beside: lifts.map((lift) => lift.join(" ") || "none"),
  };
}

/** What one rule finds in an example. */
export function exampleFindings(rule: string, example: Example): readonly Finding[] {
  return exampleReport(example).findings.filter((finding) => finding.rule === rule);
}

function exampleReport({ cloth, ...example }: Example): Report {
  // An example names its rules by any text; they are all of this checker.
  const options = example.options as CheckOptions | undefined;
  if (typeof cloth === "string") return checkGrid(fromText(cloth), options);
  return "shafts" in cloth ? checkShaftDraft(cloth, options) : check(cloth, options);
}
