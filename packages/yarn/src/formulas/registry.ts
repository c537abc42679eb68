import type { FormulaTree } from "../formula/tree.js";
import type { Formula } from "../formula/types.js";
import {
  countTrees,
  crimpTrees,
  diameterTrees,
  firmnessTrees,
  lengthTrees,
  pieceTrees,
  reedTrees,
  sampleTrees,
  settTrees,
  warpingTrees,
  weightTrees,
} from "./trees.js";
import { type FormulaId, typedFormulas } from "./typed.js";

/** Every formula of the package by its id. */
export const formulas: Readonly<Record<FormulaId, Formula>> = typedFormulas;

/** The expression of every formula, read. */
export const trees: Readonly<Record<FormulaId, FormulaTree>> = {
  ...countTrees,
  ...diameterTrees,
  ...settTrees,
  ...firmnessTrees,
  ...reedTrees,
  ...crimpTrees,
  ...pieceTrees,
  ...lengthTrees,
  ...weightTrees,
  ...sampleTrees,
  ...warpingTrees,
};
