import { BY_DEFINITION, MORINO } from "../formula/sources.js";
import type { FormulaSet, SymbolSpec } from "../formula/types.js";

const ends = { meaning: "ends in the repeat", kind: "number", positive: true } as const satisfies SymbolSpec;
const picks = {
  meaning: "picks in the repeat",
  kind: "number",
  positive: true,
} as const satisfies SymbolSpec;

export const firmnessFormulas = {
  "mean-float": {
    title: "mean float",
    expression: "R / I",
    symbols: {
      R: { meaning: "interlacements along the threads", kind: "number", positive: true },
      I: { meaning: "intersections along the threads", kind: "number", positive: true },
    },
    result: { symbol: "F", kind: "number", decimals: 3 },
    source: BY_DEFINITION,
  },
  "crossing-over-firmness": {
    title: "crossing-over firmness factor",
    expression: "c / (R_1 R_2)",
    symbols: {
      c: { meaning: "intersections of all threads of both systems", kind: "number" },
      R_1: ends,
      R_2: picks,
    },
    result: { symbol: "CFF", tex: "\\mathit{CFF}", kind: "number", decimals: 3 },
    source: MORINO,
  },
  "floating-yarn-factor": {
    title: "floating-yarn factor",
    expression: "f / (R_1 R_2)",
    symbols: {
      f: { meaning: "sum over all floats of both systems and faces of their length less 1", kind: "number" },
      R_1: ends,
      R_2: picks,
    },
    result: { symbol: "FYF", tex: "\\mathit{FYF}", kind: "number", decimals: 3 },
    source: MORINO,
  },
} as const satisfies FormulaSet;
