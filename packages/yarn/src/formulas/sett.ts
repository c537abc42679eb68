import { BY_DEFINITION, COMMON, GATE, PEIRCE, TAYLOR } from "../formula/sources.js";
import type { FormulaSet, ResultSpec, SymbolSpec } from "../formula/types.js";
import { texCount, texResult } from "./counts.js";

const sett = { symbol: "S", kind: "sett", decimals: 2 } as const satisfies ResultSpec;
const settSymbol = { meaning: "sett", kind: "sett", positive: true } as const satisfies SymbolSpec;
const repeat = {
  meaning: "threads in the repeat of the weave",
  kind: "number",
  positive: true,
} as const satisfies SymbolSpec;
const crossings = { meaning: "intersections in the repeat", kind: "number" } as const satisfies SymbolSpec;
const weight = {
  meaning: "weight of the cloth",
  kind: "area-weight",
  positive: true,
} as const satisfies SymbolSpec;

export const settFormulas = {
  "sett-of-weave": {
    title: "closest sett of a weave",
    expression: "D R / (R + I)",
    symbols: {
      D: { meaning: "yarns (or wraps) that lie side by side", kind: "sett", positive: true },
      R: repeat,
      I: crossings,
    },
    result: sett,
    source: `${TAYLOR}, p. 338; with wraps for D: ${COMMON}`,
    validity: "like yarns and setts in warp and weft",
  },
  "sett-by-brierley": {
    title: "closest sett by Brierley",
    expression: "F^m sqrt(K N)",
    symbols: {
      F: { meaning: "mean float", kind: "number", least: 1, most: 1000 },
      m: {
        meaning: "exponent of the kind of weave",
        kind: "number",
        most: 1,
        usual: { value: 0.39, unit: "", kind: "number", assumed: "a twill" },
      },
      K: {
        meaning: "constant of the yarn",
        kind: "number",
        positive: true,
        usual: { value: 200, unit: "", kind: "number", assumed: "cotton counts" },
      },
      N: { meaning: "count of the yarn", kind: "number", positive: true },
    },
    result: { ...sett, bare: "per inch" },
    source: `S. Brierley, as set in ${GATE}, 2006, question 66`,
    validity: "square cloths; m = 0.39 is for twills",
  },
  "sett-in-another-weave": {
    title: "sett in another weave",
    expression: "S_1 * (1 + I_1 / R_1) / (1 + I_2 / R_2)",
    symbols: {
      S_1: { ...settSymbol, meaning: "known good sett" },
      I_1: { ...crossings, meaning: "intersections in the known weave" },
      R_1: { ...repeat, meaning: "threads in the repeat of the known weave" },
      I_2: { ...crossings, meaning: "intersections in the other weave" },
      R_2: { ...repeat, meaning: "threads in the repeat of the other weave" },
    },
    result: { ...sett, symbol: "S_2" },
    source: `${TAYLOR}, pp. 339-344`,
    validity: "the same yarn",
  },
  "sett-in-another-yarn": {
    title: "sett in another yarn",
    expression: "S_1 sqrt(T_1 / T_2)",
    symbols: {
      S_1: { ...settSymbol, meaning: "known good sett" },
      T_1: { ...texCount, meaning: "known yarn in tex" },
      T_2: { ...texCount, meaning: "other yarn in tex" },
    },
    result: { ...sett, symbol: "S_2" },
    source: `${TAYLOR}, pp. 339-344`,
    validity: "the same weave and fibre",
  },
  "yarn-for-another-sett": {
    title: "yarn for another sett",
    expression: "T_1 * (S_1 / S_2)^2",
    symbols: {
      T_1: { ...texCount, meaning: "known yarn in tex" },
      S_1: { ...settSymbol, meaning: "known good sett" },
      S_2: { ...settSymbol, meaning: "other sett" },
    },
    result: { ...texResult, symbol: "T_2" },
    source: `${TAYLOR}, pp. 339-344`,
    validity: "the same weave and fibre",
  },
  "sett-at-another-weight": {
    title: "sett for another weight of cloth, as firm",
    expression: "S_1 w_1 / w_2",
    symbols: {
      S_1: { ...settSymbol, meaning: "known good sett" },
      w_1: { ...weight, meaning: "known weight of cloth" },
      w_2: { ...weight, meaning: "other weight of cloth" },
    },
    result: { ...sett, symbol: "S_2" },
    source: `${TAYLOR}, pp. 339-344`,
    validity: "the yarn changes too, see yarn-at-another-weight",
  },
  "yarn-at-another-weight": {
    title: "yarn for another weight of cloth, as firm",
    expression: "T_1 * (w_2 / w_1)^2",
    symbols: {
      T_1: { ...texCount, meaning: "known yarn in tex" },
      w_2: { ...weight, meaning: "other weight of cloth" },
      w_1: { ...weight, meaning: "known weight of cloth" },
    },
    result: { ...texResult, symbol: "T_2" },
    source: `${TAYLOR}, pp. 339-344`,
    validity: "the sett changes too, see sett-at-another-weight",
  },
  "working-sett": {
    title: "sett to weave at",
    expression: "p S_m",
    symbols: {
      p: {
        meaning: "share of the closest sett",
        kind: "share",
        positive: true,
        most: 200,
        usual: { value: 80, unit: "%", kind: "share", assumed: "a working sett, common practice" },
      },
      S_m: { ...settSymbol, meaning: "closest sett" },
    },
    result: sett,
    source: COMMON,
  },
  "share-of-closest-sett": {
    title: "share of the closest sett",
    expression: "S / S_m",
    symbols: { S: settSymbol, S_m: { ...settSymbol, meaning: "closest sett" } },
    result: { symbol: "p", kind: "share", decimals: 1 },
    source: BY_DEFINITION,
  },
  "share-of-both-setts": {
    title: "firmness of the cloth: mean of the shares of warp and weft",
    expression: "(p_1 + p_2) / 2",
    symbols: {
      p_1: { meaning: "share that the sett of the warp is of its closest", kind: "share" },
      p_2: { meaning: "share that the picks are of their closest", kind: "share" },
    },
    result: { symbol: "p", kind: "share", decimals: 1 },
    source: "Drawcord's own",
    validity: "a rough guide: what one system leaves open the other may fill, as in a rug",
  },
  "cover-factor": {
    title: "cover factor",
    expression: "S / sqrt(N)",
    symbols: {
      S: { ...settSymbol, bare: "per inch" },
      N: { meaning: "cotton count", kind: "number", positive: true },
    },
    result: { symbol: "K", kind: "number", decimals: 2 },
    source: PEIRCE,
    validity: "28 is full cover of a cotton yarn",
  },
  "cover-factor-in-tex": {
    title: "cover factor, metric",
    expression: "S sqrt(T) / 10",
    symbols: { S: { ...settSymbol, bare: "per cm" }, T: { ...texCount, bare: "tex" } },
    result: { symbol: "K_t", kind: "number", decimals: 2 },
    source: "derived from the cover factor: 0.956734 times that of cotton counts and inches",
  },
  "cover-of-threads": {
    title: "share of the width that the threads of one system cover",
    expression: "S d",
    symbols: { S: settSymbol, d: { meaning: "diameter of the yarn", kind: "length", positive: true } },
    result: { symbol: "c", kind: "share", decimals: 1 },
    source: PEIRCE,
  },
  "cover-of-cloth": {
    title: "share of the cloth that is covered",
    expression: "c_1 + c_2 - c_1 c_2",
    symbols: {
      c_1: { meaning: "cover of the warp", kind: "share", most: 100 },
      c_2: { meaning: "cover of the weft", kind: "share", most: 100 },
    },
    result: { symbol: "c", kind: "share", decimals: 1 },
    source: PEIRCE,
  },
  "pitch-of-jammed-plain": {
    title: "closest pitch of a square plain weave",
    expression: "sqrt(3) d / 2",
    symbols: { d: { meaning: "diameter of the yarn", kind: "length", positive: true } },
    result: { symbol: "p", kind: "length", decimals: 3 },
    source: `derived from ${PEIRCE}`,
    validity: "round yarns of one diameter that touch and do not flatten",
  },
  "crimp-of-jammed-plain": {
    title: "crimp of the closest square plain weave",
    expression: "pi d / (3 p) - 1",
    symbols: {
      d: { meaning: "diameter of the yarn", kind: "length", positive: true },
      p: { meaning: "pitch of the threads", kind: "length", positive: true },
    },
    result: { symbol: "k", kind: "share", decimals: 2, least: 0 },
    source: `derived from ${PEIRCE}`,
    validity: "each thread lies on arcs of a sixth of a turn around those that it crosses",
  },
  "sett-from-width": {
    title: "sett of the cloth",
    expression: "n / W",
    symbols: {
      n: { meaning: "ends", kind: "number", positive: true },
      W: { meaning: "width", kind: "length", positive: true },
    },
    result: sett,
    source: BY_DEFINITION,
  },
} as const satisfies FormulaSet;
