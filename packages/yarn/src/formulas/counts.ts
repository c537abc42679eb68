import { BY_DEFINITION, D2260, TAYLOR } from "../formula/sources.js";
import type { FormulaSet, ResultSpec, SymbolSpec } from "../formula/types.js";

/** Finer than the finest silk and heavier than the heaviest rug yarn lie outside. */
export const texResult = {
  symbol: "T",
  kind: "linear-density",
  decimals: 2,
  least: 0.5,
  most: 5000,
} as const satisfies ResultSpec;

export const texCount = {
  meaning: "yarn count in tex",
  kind: "linear-density",
  least: 0.5,
  most: 5000,
} as const satisfies SymbolSpec;

const count = { meaning: "count", kind: "number", positive: true } as const satisfies SymbolSpec;
const plies = {
  meaning: "plies",
  kind: "number",
  whole: true,
  positive: true,
  most: 200,
} as const satisfies SymbolSpec;
const length = { meaning: "length", kind: "length", positive: true } as const satisfies SymbolSpec;
const mass = { meaning: "mass of that length", kind: "mass", positive: true } as const satisfies SymbolSpec;

const twist = {
  meaning: "twist take-up, on the length of the plies",
  kind: "share",
  most: 50,
  usual: { value: 0, unit: "%", kind: "share", assumed: "twist neglected" },
} as const satisfies SymbolSpec;

export const countFormulas = {
  "tex-of-indirect-count": {
    title: "yarn in tex from a count of lengths in a weight",
    expression: "m / (N h)",
    symbols: {
      N: count,
      h: { ...length, meaning: "length of one hank" },
      m: { ...mass, meaning: "weight that N hanks make up" },
    },
    result: texResult,
    source: D2260,
  },
  "tex-of-direct-count": {
    title: "yarn in tex from a count of weights of a length",
    expression: "N m / l",
    symbols: {
      N: count,
      m: { ...mass, meaning: "unit of weight" },
      l: { ...length, meaning: "length weighed" },
    },
    result: texResult,
    source: D2260,
  },
  "indirect-count-of-tex": {
    title: "count of lengths in a weight",
    expression: "m / (T h)",
    symbols: {
      T: texCount,
      h: { ...length, meaning: "length of one hank" },
      m: { ...mass, meaning: "weight that the hanks make up" },
    },
    result: { symbol: "N", kind: "number", decimals: 3 },
    source: D2260,
  },
  "direct-count-of-tex": {
    title: "count of weights of a length",
    expression: "T l / m",
    symbols: {
      T: texCount,
      l: { ...length, meaning: "length weighed" },
      m: { ...mass, meaning: "unit of weight" },
    },
    result: { symbol: "N", kind: "number", decimals: 3 },
    source: D2260,
  },
  "tex-of-like-plies": {
    title: "plied yarn of like singles",
    expression: "n T_1 / (1 - c)",
    symbols: { n: plies, T_1: { ...texCount, meaning: "one single in tex" }, c: twist },
    result: texResult,
    source: `${TAYLOR}, pp. 308-310`,
  },
  "tex-of-unlike-plies": {
    title: "plied yarn of unlike singles",
    expression: "sum(T_i) / (1 - c)",
    symbols: { T_i: { ...texCount, meaning: "the singles in tex", list: true }, c: twist },
    result: texResult,
    source: `${TAYLOR}, pp. 308-310`,
    validity: "the plies lie at the same length; a wrapped or slubbed yarn is weighed instead",
  },
  "tex-of-one-ply": {
    title: "one single of a plied yarn",
    expression: "T_R * (1 - c) / n",
    symbols: { T_R: { ...texCount, meaning: "plied yarn in tex" }, n: plies, c: twist },
    result: texResult,
    source: BY_DEFINITION,
  },
  "tex-of-weighed-length": {
    title: "yarn in tex from a weighed length",
    expression: "m / l",
    symbols: { m: mass, l: { ...length, meaning: "length weighed" } },
    result: texResult,
    source: `${TAYLOR}, pp. 329-331`,
  },
  "mass-of-length": {
    title: "weight of yarn",
    expression: "T l",
    symbols: { T: texCount, l: { meaning: "length of yarn", kind: "length" } },
    result: { symbol: "m", kind: "mass", decimals: 1 },
    source: BY_DEFINITION,
  },
  "length-of-mass": {
    title: "length of yarn in a weight",
    expression: "m / T",
    symbols: { m: { meaning: "weight of yarn", kind: "mass" }, T: texCount },
    result: { symbol: "l", kind: "length", unit: "m", decimals: 1 },
    source: BY_DEFINITION,
  },
} as const satisfies FormulaSet;
