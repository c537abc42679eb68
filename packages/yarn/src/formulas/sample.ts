import { BY_DEFINITION } from "../formula/sources.js";
import type { FormulaSet } from "../formula/types.js";

const size = { kind: "length", positive: true } as const;

/** What a sample tells, measured before and after it came off the loom and out of the wash. */
export const sampleFormulas = {
  "draw-in-of-sample": {
    title: "draw-in of the sample",
    expression: "(W - b) / W",
    symbols: {
      W: { ...size, meaning: "width of the sample in the reed" },
      b: { ...size, meaning: "width of the sample on the loom" },
    },
    result: { symbol: "d", kind: "share", decimals: 2, least: 0 },
    source: BY_DEFINITION,
  },
  "take-up-of-sample": {
    title: "take-up of the sample",
    expression: "(L_y - L_c) / L_c",
    symbols: {
      L_y: { ...size, meaning: "length of warp that the sample took" },
      L_c: { ...size, meaning: "length of the sample on the loom" },
    },
    result: { symbol: "k", kind: "share", decimals: 2, least: 0 },
    source: BY_DEFINITION,
  },
  "shrinkage-of-sample": {
    title: "shrinkage of the sample",
    expression: "(b - f) / b",
    symbols: {
      b: { ...size, meaning: "size of the sample on the loom" },
      f: { ...size, meaning: "size of the sample washed" },
    },
    result: { symbol: "s", kind: "share", decimals: 2, least: 0 },
    source: BY_DEFINITION,
  },
  "picks-of-sample": {
    title: "picks of the sample",
    expression: "n / l",
    symbols: {
      n: { meaning: "picks counted in the sample", kind: "number" },
      l: { ...size, meaning: "length over which they were counted, on the loom" },
    },
    result: { symbol: "P", kind: "sett", decimals: 2 },
    source: BY_DEFINITION,
  },
  "weight-of-sample": {
    title: "weight of the washed sample",
    expression: "m / a^2",
    symbols: {
      m: { meaning: "weight of the washed square", kind: "mass", positive: true },
      a: {
        ...size,
        meaning: "side of the washed square",
        usual: { value: 10, unit: "cm", kind: "length", assumed: "a square of 10 cm, common practice" },
      },
    },
    result: { symbol: "G", kind: "area-weight", decimals: 0 },
    source: BY_DEFINITION,
  },
} as const satisfies FormulaSet;
