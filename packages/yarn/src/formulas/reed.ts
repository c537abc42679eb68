import { BY_DEFINITION, COMMON, SETT_SYSTEMS, TAYLOR, WOLFENSBERGER } from "../formula/sources.js";
import type { FormulaSet, SymbolSpec } from "../formula/types.js";

const sett = { meaning: "ends in the reed", kind: "sett", positive: true } as const satisfies SymbolSpec;
const ends = { meaning: "ends", kind: "number", whole: true, positive: true } as const satisfies SymbolSpec;
const dents = { meaning: "dents", kind: "sett", positive: true } as const satisfies SymbolSpec;

export const reedFormulas = {
  "dents-of-reed-count": {
    title: "dents of a reed",
    expression: "N d / l",
    symbols: {
      N: { meaning: "reed count", kind: "number", positive: true, most: 2000 },
      d: { meaning: "dents to one of the count", kind: "number", positive: true },
      l: { meaning: "width over which they are counted", kind: "length", positive: true },
    },
    result: { symbol: "D", kind: "sett", decimals: 3 },
    source: `${TAYLOR}, p. 310; ${SETT_SYSTEMS}`,
  },
  "sett-in-reed": {
    title: "sett in the reed",
    expression: "D e",
    symbols: { D: dents, e: { meaning: "mean ends in a dent", kind: "number", positive: true } },
    result: { symbol: "S", kind: "sett", decimals: 3 },
    source: COMMON,
  },
  "ends-in-a-dent": {
    title: "mean ends in a dent",
    expression: "S / D",
    symbols: { S: sett, D: dents },
    result: { symbol: "e", kind: "number", decimals: 4 },
    source: COMMON,
  },
  "width-in-reed": {
    title: "width in the reed",
    expression: "n / S",
    symbols: { n: ends, S: sett },
    result: { symbol: "W", kind: "length", decimals: 1 },
    source: BY_DEFINITION,
  },
  "ends-in-width": {
    title: "ends for a width in the reed",
    expression: "round(W S)",
    symbols: { W: { meaning: "width in the reed", kind: "length", positive: true }, S: sett },
    result: { symbol: "n", kind: "number", unit: "ends", decimals: 0 },
    source: BY_DEFINITION,
  },
  "width-of-dents": {
    title: "width of the dents used",
    expression: "d / D",
    symbols: { d: { meaning: "dents used", kind: "number", whole: true, positive: true }, D: dents },
    result: { symbol: "W", kind: "length", decimals: 1 },
    source: BY_DEFINITION,
  },
  "heddles-on-a-shaft": {
    title: "heddles on each shaft",
    expression: "S / s",
    symbols: {
      S: sett,
      s: { meaning: "shafts, threaded alike", kind: "number", whole: true, positive: true },
    },
    result: { symbol: "h", kind: "sett", decimals: 2 },
    source: `${WOLFENSBERGER}, p. 71`,
  },
  "units-of-ends": {
    title: "units",
    expression: "ceil(n / e)",
    symbols: { n: ends, e: { ...ends, meaning: "ends in a unit" } },
    result: { symbol: "u", kind: "number", unit: "units", decimals: 0 },
    source: BY_DEFINITION,
    validity: "units of one size; the last may be smaller",
  },
  "lingos-of-units": {
    title: "lingos",
    expression: "u g",
    symbols: {
      u: { meaning: "units", kind: "number", whole: true },
      g: { ...ends, meaning: "lingos on a unit" },
    },
    result: { symbol: "l", kind: "number", unit: "lingos", decimals: 0 },
    source: BY_DEFINITION,
  },
} as const satisfies FormulaSet;
