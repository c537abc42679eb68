import { COMMON } from "../formula/sources.js";
import type { FormulaSet } from "../formula/types.js";

export const warpingFormulas = {
  "passes-of-warp": {
    title: "passes along the warping board or mill",
    expression: "ceil(n / t)",
    symbols: {
      n: { meaning: "ends", kind: "number", whole: true, positive: true, most: 10_000_000 },
      t: { meaning: "threads wound together", kind: "number", whole: true, positive: true, most: 100 },
    },
    result: { symbol: "p", kind: "number", decimals: 0 },
    source: COMMON,
  },
  "portees-of-passes": {
    title: "portees, a pass down and a pass back",
    expression: "ceil(p / 2)",
    symbols: { p: { meaning: "passes", kind: "number", whole: true, positive: true } },
    result: { symbol: "P", kind: "number", decimals: 0 },
    source: COMMON,
  },
  "bouts-of-portees": {
    title: "bouts",
    expression: "ceil(P / b)",
    symbols: {
      P: { meaning: "portees", kind: "number", whole: true, positive: true },
      b: { meaning: "portees in a bout", kind: "number", whole: true, positive: true },
    },
    result: { symbol: "B", kind: "number", decimals: 0 },
    source: COMMON,
  },
} as const satisfies FormulaSet;
