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
  "double-passes-of-passes": {
    title: "double passes, each once down and back",
    expression: "ceil(p / 2)",
    symbols: { p: { meaning: "passes", kind: "number", whole: true, positive: true } },
    result: { symbol: "P", kind: "number", decimals: 0 },
    source: COMMON,
  },
  "chains-of-double-passes": {
    title: "chains",
    expression: "ceil(P / b)",
    symbols: {
      P: { meaning: "double passes", kind: "number", whole: true, positive: true },
      b: { meaning: "double passes in a chain", kind: "number", whole: true, positive: true },
    },
    result: { symbol: "B", kind: "number", decimals: 0 },
    source: COMMON,
  },
} as const satisfies FormulaSet;
