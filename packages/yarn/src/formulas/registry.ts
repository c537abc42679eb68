import type { FormulaTree } from "../formula/tree.js";
import { countFormulas } from "./counts.js";
import { crimpFormulas } from "./crimp.js";
import { diameterFormulas } from "./diameter.js";
import { firmnessFormulas } from "./firmness.js";
import { lengthFormulas } from "./length.js";
import { reedFormulas } from "./reed.js";
import { sampleFormulas } from "./sample.js";
import { settFormulas } from "./sett.js";
import {
  countTrees,
  crimpTrees,
  diameterTrees,
  firmnessTrees,
  lengthTrees,
  reedTrees,
  sampleTrees,
  settTrees,
  warpingTrees,
  weightTrees,
} from "./trees.js";
import { warpingFormulas } from "./warping.js";
import { weightFormulas } from "./weight.js";

/** Every formula of the package by its id. */
export const formulas = {
  ...countFormulas,
  ...diameterFormulas,
  ...settFormulas,
  ...firmnessFormulas,
  ...reedFormulas,
  ...crimpFormulas,
  ...lengthFormulas,
  ...weightFormulas,
  ...sampleFormulas,
  ...warpingFormulas,
} as const;

/** A formula, by its name. */
export type FormulaId = keyof typeof formulas;

/** The expression of every formula, read. */
export const trees: Readonly<Record<FormulaId, FormulaTree>> = {
  ...countTrees,
  ...diameterTrees,
  ...settTrees,
  ...firmnessTrees,
  ...reedTrees,
  ...crimpTrees,
  ...lengthTrees,
  ...weightTrees,
  ...sampleTrees,
  ...warpingTrees,
};
