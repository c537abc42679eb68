import { BY_DEFINITION, COMMON } from "../formula/sources.js";
import type { FormulaSet } from "../formula/types.js";
import { shrinkageSymbol } from "./crimp.js";

/** From a finished length to its picks: all that the reading of a recipe needs of lengths. */
export const pieceFormulas = {
  "cloth-of-a-piece": {
    title: "cloth woven for one piece",
    expression: "(f + h) / (1 - s)",
    symbols: {
      f: { meaning: "finished length", kind: "length", positive: true },
      h: {
        meaning: "hems of a piece, both ends together",
        kind: "length",
        usual: { value: 0, unit: "mm", kind: "length", assumed: "no hems" },
      },
      s: shrinkageSymbol,
    },
    result: { symbol: "c", kind: "length", decimals: 0 },
    source: COMMON,
  },
  "picks-in-length": {
    title: "picks woven in a length of cloth",
    expression: "round(P c)",
    symbols: {
      P: { meaning: "picks", kind: "sett", positive: true },
      c: { meaning: "length of cloth on the loom", kind: "length" },
    },
    result: { symbol: "p", kind: "number", unit: "picks", decimals: 0 },
    source: BY_DEFINITION,
  },
} as const satisfies FormulaSet;
