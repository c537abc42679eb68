import { COMMON, ISO_CRIMP } from "../formula/sources.js";
import type { FormulaSet, SymbolSpec } from "../formula/types.js";

const yarn = {
  meaning: "length of the yarn taken out of the cloth",
  kind: "length",
  positive: true,
} as const satisfies SymbolSpec;
const cloth = {
  meaning: "length of the cloth",
  kind: "length",
  positive: true,
} as const satisfies SymbolSpec;

/** Take-up as crimp. Cloth that takes up its own length again is the most that is woven. */
export const crimpSymbol = {
  meaning: "take-up, on the length of the cloth (crimp)",
  kind: "share",
  most: 100,
  usual: { value: 10, unit: "%", kind: "share", assumed: "handweaver's allowance, common practice" },
} as const satisfies SymbolSpec;

export const shrinkageSymbol = {
  meaning: "shrinkage in the wash",
  kind: "share",
  most: 75,
  usual: { value: 10, unit: "%", kind: "share", assumed: "handweaver's allowance, common practice" },
} as const satisfies SymbolSpec;

const contraction = {
  meaning: "contraction, on the length of the yarn",
  kind: "share",
  most: 75,
} as const satisfies SymbolSpec;
const drawIn = {
  meaning: "draw-in, on the width in the reed",
  kind: "share",
  most: 75,
  usual: { value: 5, unit: "%", kind: "share", assumed: "common practice" },
} as const satisfies SymbolSpec;

export const crimpFormulas = {
  crimp: {
    title: "crimp",
    expression: "(L_y - L_c) / L_c",
    symbols: { L_y: yarn, L_c: cloth },
    result: { symbol: "k", kind: "share", decimals: 2, least: 0 },
    source: ISO_CRIMP,
  },
  contraction: {
    title: "contraction",
    expression: "(L_y - L_c) / L_y",
    symbols: { L_y: yarn, L_c: cloth },
    result: { symbol: "a", kind: "share", decimals: 3, least: 0 },
    source: COMMON,
  },
  "crimp-of-contraction": {
    title: "crimp from contraction",
    expression: "a / (1 - a)",
    symbols: { a: contraction },
    result: { symbol: "k", kind: "share", decimals: 2 },
    source: "derived from the definitions of crimp and contraction",
  },
  "contraction-of-crimp": {
    title: "contraction from crimp",
    expression: "k / (1 + k)",
    symbols: { k: { meaning: "crimp, on the length of the cloth", kind: "share", most: 300 } },
    result: { symbol: "a", kind: "share", decimals: 3 },
    source: "derived from the definitions of crimp and contraction",
  },
  "yarn-in-cloth": {
    title: "yarn in a length of cloth",
    expression: "L_c * (1 + k)",
    symbols: { L_c: cloth, k: crimpSymbol },
    result: { symbol: "L_y", kind: "length", decimals: 0 },
    source: COMMON,
  },
  "cloth-of-yarn": {
    title: "cloth from a length of yarn",
    expression: "L_y / (1 + k)",
    symbols: { L_y: yarn, k: crimpSymbol },
    result: { symbol: "L_c", kind: "length", decimals: 0 },
    source: COMMON,
  },
  "size-before-shrinkage": {
    title: "size before the wash",
    expression: "f / (1 - s)",
    symbols: { f: { meaning: "finished size", kind: "length" }, s: shrinkageSymbol },
    result: { symbol: "b", kind: "length", decimals: 1 },
    source: COMMON,
  },
  "size-after-shrinkage": {
    title: "size after the wash",
    expression: "b * (1 - s)",
    symbols: { b: { meaning: "size before the wash", kind: "length" }, s: shrinkageSymbol },
    result: { symbol: "f", kind: "length", decimals: 1 },
    source: COMMON,
  },
  "width-before-draw-in": {
    title: "width in the reed for a width on the loom",
    expression: "b / (1 - d)",
    symbols: {
      b: { meaning: "width of the cloth on the loom", kind: "length", positive: true },
      d: drawIn,
    },
    result: { symbol: "W", kind: "length", decimals: 1 },
    source: COMMON,
  },
  "width-after-draw-in": {
    title: "width of the cloth on the loom",
    expression: "W * (1 - d)",
    symbols: {
      W: { meaning: "width in the reed", kind: "length", positive: true },
      d: drawIn,
    },
    result: { symbol: "b", kind: "length", decimals: 1 },
    source: COMMON,
  },
} as const satisfies FormulaSet;
