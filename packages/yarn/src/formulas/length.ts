import { BROOKS, BY_DEFINITION, COMMON, TAYLOR } from "../formula/sources.js";
import type { FormulaSet, SymbolSpec } from "../formula/types.js";
import { crimpSymbol, shrinkageSymbol } from "./crimp.js";

const none = (assumed: string) => ({ value: 0, unit: "mm", kind: "length", assumed }) as const;

const pieces = {
  meaning: "pieces",
  kind: "number",
  whole: true,
  positive: true,
} as const satisfies SymbolSpec;
const ends = { meaning: "ends", kind: "number", whole: true, positive: true } as const satisfies SymbolSpec;
const warpOfPiece = {
  meaning: "warp of one piece",
  kind: "length",
  positive: true,
} as const satisfies SymbolSpec;
const warpOfDesigns = {
  meaning: "warp of all pieces of each design",
  kind: "length",
  list: true,
} as const satisfies SymbolSpec;
const warp = { meaning: "length of the warp", kind: "length", positive: true } as const satisfies SymbolSpec;
const gap = {
  meaning: "warp left unwoven between two pieces",
  kind: "length",
  usual: none("no gaps"),
} as const satisfies SymbolSpec;
const sampling = {
  meaning: "warp for samples",
  kind: "length",
  usual: none("no samples"),
} as const satisfies SymbolSpec;

const waste = {
  meaning: "loom waste",
  kind: "length",
  usual: { value: 36, unit: "in", kind: "length", assumed: "a floor loom, common practice" },
} as const satisfies SymbolSpec;

export const lengthFormulas = {
  "finished-length": {
    title: "finished length of a piece",
    expression: "c * (1 - s) - h",
    symbols: {
      c: { meaning: "cloth woven for one piece", kind: "length", positive: true },
      s: shrinkageSymbol,
      h: { meaning: "hems of a piece, both ends together", kind: "length", usual: none("no hems") },
    },
    result: { symbol: "f", kind: "length", decimals: 0, least: 0 },
    source: COMMON,
  },
  "warp-of-a-piece": {
    title: "warp of one piece",
    expression: "c * (1 + k) + r",
    symbols: {
      c: { meaning: "cloth woven for one piece", kind: "length", positive: true },
      k: crimpSymbol,
      r: { meaning: "fringes of a piece, both ends together", kind: "length", usual: none("no fringe") },
    },
    result: { symbol: "p", kind: "length", decimals: 0 },
    source: COMMON,
  },
  "warp-length": {
    title: "length of the warp",
    expression: "N p + (N - 1) g + q + w",
    symbols: { N: pieces, p: warpOfPiece, g: gap, q: sampling, w: waste },
    result: { symbol: "L", kind: "length", decimals: 0 },
    source: COMMON,
  },
  "warp-of-like-pieces": {
    title: "warp of all pieces of one design",
    expression: "N p",
    symbols: { N: pieces, p: warpOfPiece },
    result: { symbol: "P", kind: "length", decimals: 0 },
    source: BY_DEFINITION,
  },
  "warp-of-designs": {
    title: "length of a warp for several designs",
    expression: "sum(P_i) + (N - 1) g + q + w",
    symbols: { P_i: warpOfDesigns, N: pieces, g: gap, q: sampling, w: waste },
    result: { symbol: "L", kind: "length", decimals: 0 },
    source: COMMON,
  },
  "warp-left-of-designs": {
    title: "warp left over after several designs",
    expression: "L - sum(P_i) - (N - 1) g - q - w",
    symbols: { L: warp, P_i: warpOfDesigns, N: pieces, g: gap, q: sampling, w: waste },
    result: { symbol: "o", kind: "length", decimals: 0, least: 0 },
    source: COMMON,
  },
  "more-pieces": {
    title: "pieces that the warp left over would give",
    expression: "floor(o / (p + g))",
    symbols: { o: { meaning: "warp left over", kind: "length" }, p: warpOfPiece, g: gap },
    result: { symbol: "M", kind: "number", unit: "pieces", decimals: 0 },
    source: COMMON,
  },
  "pieces-of-warp": {
    title: "pieces from a warp",
    expression: "max(0, floor((L - q - w + g) / (p + g)))",
    symbols: { L: warp, q: sampling, w: waste, g: gap, p: warpOfPiece },
    result: { symbol: "N", kind: "number", unit: "pieces", decimals: 0 },
    source: COMMON,
  },
  "warp-left-over": {
    title: "warp left over",
    expression: "L - N p - max(0, N - 1) g - q - w",
    symbols: {
      L: warp,
      N: { meaning: "pieces", kind: "number", whole: true },
      p: warpOfPiece,
      g: gap,
      q: sampling,
      w: waste,
    },
    result: { symbol: "o", kind: "length", decimals: 0, least: 0 },
    source: COMMON,
  },
  "warp-yarn": {
    title: "warp yarn",
    expression: "n L",
    symbols: { n: ends, L: warp },
    result: { symbol: "Y", kind: "length", unit: "m", decimals: 0 },
    source: `${TAYLOR}, p. 312; ${BROOKS}`,
  },
  "yarns-together": {
    title: "yarn of several parts",
    expression: "sum(Y_i)",
    symbols: { Y_i: { meaning: "yarn of each part", kind: "length", list: true } },
    result: { symbol: "Y", kind: "length", unit: "m", decimals: 0 },
    source: BY_DEFINITION,
  },
  "cloth-of-samples": {
    title: "cloth woven on the warp for samples",
    expression: "q / (1 + k)",
    symbols: { q: { ...sampling, usual: none("no samples") }, k: crimpSymbol },
    result: { symbol: "c", kind: "length", decimals: 0 },
    source: COMMON,
  },
  "length-of-picks": {
    title: "length of cloth woven with a number of picks",
    expression: "p / P",
    symbols: {
      p: { meaning: "picks woven", kind: "number", positive: true },
      P: { meaning: "picks", kind: "sett", positive: true },
    },
    result: { symbol: "c", kind: "length", decimals: 0 },
    source: BY_DEFINITION,
  },
  "picks-of-a-weft": {
    title: "picks of one weft in a piece",
    expression: "P a / b",
    symbols: {
      P: { meaning: "picks in a piece", kind: "number" },
      a: { meaning: "picks of this weft in the draft", kind: "number" },
      b: { meaning: "picks in the draft", kind: "number", positive: true },
    },
    result: { symbol: "p", kind: "number", unit: "picks", decimals: 1 },
    source: BY_DEFINITION,
    validity: "the draft is woven over and over",
  },
  "weft-yarn": {
    title: "weft yarn",
    expression: "N p W",
    symbols: {
      N: { ...pieces, usual: { value: 1, unit: "", kind: "number", assumed: "one piece" } },
      p: { meaning: "picks woven with this weft in a piece", kind: "number" },
      W: { meaning: "width in the reed", kind: "length", positive: true },
    },
    result: { symbol: "Y", kind: "length", unit: "m", decimals: 0 },
    source: `${TAYLOR}, pp. 312-313`,
    validity:
      "a pick lies in the reed at its width there; what it takes up and what the cloth draws in are one",
  },
} as const satisfies FormulaSet;
