import { BROOKS, BY_DEFINITION, GATE, WOLFENSBERGER } from "../formula/sources.js";
import type { FormulaSet, SymbolSpec } from "../formula/types.js";
import { texCount } from "./counts.js";

const sett = {
  meaning: "sett of the finished cloth",
  kind: "sett",
  positive: true,
} as const satisfies SymbolSpec;
const crimp = { meaning: "crimp", kind: "share", most: 300 } as const satisfies SymbolSpec;
const size = { kind: "length", positive: true } as const;

/** What is spared for mistakes. */
const spare = {
  meaning: "yarn spared for mistakes, knots and the weaver's hand",
  kind: "share",
  most: 100,
  usual: { value: 5, unit: "%", kind: "share", assumed: "common practice" },
} as const satisfies SymbolSpec;

export const weightFormulas = {
  "yarn-with-waste": {
    title: "yarn needed, waste allowed for",
    expression: "m * (1 + a)",
    symbols: {
      m: { meaning: "weight of yarn used", kind: "mass" },
      a: spare,
    },
    result: { symbol: "b", kind: "mass", decimals: 1 },
    source: `${WOLFENSBERGER}, pp. 76-77`,
  },
  "length-with-waste": {
    title: "length of yarn needed, waste allowed for",
    expression: "l * (1 + a)",
    symbols: { l: { meaning: "length of yarn used", kind: "length" }, a: spare },
    result: { symbol: "b", kind: "length", unit: "m", decimals: 0 },
    source: `${WOLFENSBERGER}, pp. 76-77`,
  },
  "yarn-to-buy": {
    title: "yarn to buy beside the stock",
    expression: "m - min(m, s)",
    symbols: {
      m: { meaning: "weight of yarn needed", kind: "mass" },
      s: { meaning: "weight of the stock", kind: "mass" },
    },
    result: { symbol: "b", kind: "mass", decimals: 1 },
    source: BY_DEFINITION,
  },
  "length-to-buy": {
    title: "length of yarn to buy beside the stock",
    expression: "l - min(l, s)",
    symbols: {
      l: { meaning: "length of yarn needed", kind: "length" },
      s: { meaning: "length of the stock", kind: "length" },
    },
    result: { symbol: "b", kind: "length", unit: "m", decimals: 0 },
    source: BY_DEFINITION,
  },
  "weights-together": {
    title: "weight of several yarns alike",
    expression: "sum(m_i)",
    symbols: { m_i: { meaning: "weight of each", kind: "mass", list: true } },
    result: { symbol: "m", kind: "mass", decimals: 1 },
    source: BY_DEFINITION,
  },
  "packages-by-mass": {
    title: "packages to buy, by weight",
    expression: "ceil(m / q)",
    symbols: {
      m: { meaning: "weight of yarn", kind: "mass" },
      q: { meaning: "weight of one package", kind: "mass", positive: true },
    },
    result: { symbol: "b", kind: "number", decimals: 0 },
    source: BY_DEFINITION,
  },
  "packages-by-length": {
    title: "packages to buy, by length",
    expression: "ceil(l / q)",
    symbols: {
      l: { meaning: "length of yarn", kind: "length" },
      q: { ...size, meaning: "length on one package" },
    },
    result: { symbol: "b", kind: "number", decimals: 0 },
    source: BY_DEFINITION,
  },
  "hanks-of-length": {
    title: "hanks",
    expression: "l / h",
    symbols: {
      l: { meaning: "length of yarn", kind: "length" },
      h: { ...size, meaning: "length of one hank" },
    },
    result: { symbol: "H", kind: "number", decimals: 3 },
    source: BROOKS,
  },
  "cloth-weight": {
    title: "weight of the cloth from its setts",
    expression: "S_1 T_1 * (1 + k_1) + S_2 T_2 * (1 + k_2)",
    symbols: {
      S_1: { ...sett, meaning: "ends of the finished cloth" },
      T_1: { ...texCount, meaning: "warp in tex" },
      k_1: { ...crimp, meaning: "crimp of the warp, on the length of the finished cloth" },
      S_2: { ...sett, meaning: "picks of the finished cloth" },
      T_2: { ...texCount, meaning: "weft in tex" },
      k_2: { ...crimp, meaning: "crimp of the weft, on the width of the finished cloth" },
    },
    result: { symbol: "G", kind: "area-weight", decimals: 0 },
    source: `${GATE}, 2009, question 37`,
  },
  "cloth-weight-of-piece": {
    title: "weight of the cloth",
    expression: "(m_1 + sum(m_2)) / (w l)",
    symbols: {
      m_1: { meaning: "warp yarn in the piece", kind: "mass" },
      m_2: { meaning: "weft yarns in the piece", kind: "mass", list: true },
      w: { ...size, meaning: "finished width" },
      l: { ...size, meaning: "finished length, hems with it" },
    },
    result: { symbol: "G", kind: "area-weight", decimals: 0 },
    source: BY_DEFINITION,
  },
} as const satisfies FormulaSet;
