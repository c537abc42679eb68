import { BY_DEFINITION, COMMON, PEIRCE, TAYLOR } from "../formula/sources.js";
import type { FormulaSet, ResultSpec } from "../formula/types.js";
import { texCount } from "./counts.js";

const diameter = { symbol: "d", kind: "length", decimals: 3 } as const satisfies ResultSpec;

export const diameterFormulas = {
  "diameters-by-root": {
    title: "yarns that lie side by side in an inch, by the root rule",
    expression: "k sqrt(Y)",
    symbols: {
      k: {
        meaning: "fibre constant",
        kind: "number",
        positive: true,
        most: 2,
        usual: { value: 0.9, unit: "", kind: "number", assumed: "a firm yarn" },
      },
      Y: { meaning: "yards in a pound", kind: "number", positive: true },
    },
    result: { symbol: "D", kind: "sett", bare: "per inch", decimals: 2 },
    source: `${TAYLOR}, p. 337`,
    validity:
      "k is 0.95 for cotton by Taylor; 0.90 for firm yarns and 0.84 for soft ones are common practice",
  },
  "diameter-by-peirce": {
    title: "diameter of a cotton yarn",
    expression: "1 / (28 sqrt(N))",
    symbols: { N: { meaning: "cotton count", kind: "number", positive: true } },
    result: { ...diameter, bare: "in" },
    source: PEIRCE,
    validity: "cotton yarn of a specific volume of 1.1 cm3/g",
  },
  "diameter-by-packing": {
    title: "diameter of a yarn from fibre density and packing",
    expression: "sqrt(4 T / (pi phi rho))",
    symbols: {
      T: texCount,
      phi: {
        meaning: "share of the yarn's section that is fibre",
        kind: "share",
        positive: true,
        most: 100,
        usual: {
          value: 60,
          unit: "%",
          kind: "share",
          assumed: "a ring-spun yarn of middling twist, from memory",
        },
      },
      rho: { meaning: "density of the fibre", kind: "density", positive: true, most: 25 },
    },
    result: diameter,
    source: "derived: mass of a round yarn of unit length",
    validity: "the densities of fibres by name are from memory, to the second decimal",
  },
  "wraps-of-diameter": {
    title: "wraps side by side",
    expression: "1 / d",
    symbols: { d: { meaning: "diameter of the yarn", kind: "length", positive: true } },
    result: { symbol: "w", kind: "sett", decimals: 2 },
    source: BY_DEFINITION,
  },
  "diameter-of-wraps": {
    title: "diameter of a yarn from wraps side by side",
    expression: "1 / w",
    symbols: { w: { meaning: "wraps side by side", kind: "sett", positive: true } },
    result: diameter,
    source: COMMON,
    validity: "wraps that touch and are not pressed",
  },
} as const satisfies FormulaSet;
