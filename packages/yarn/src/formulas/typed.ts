import { countFormulas } from "./counts.js";
import { crimpFormulas } from "./crimp.js";
import { diameterFormulas } from "./diameter.js";
import { firmnessFormulas } from "./firmness.js";
import { lengthFormulas } from "./length.js";
import { pieceFormulas } from "./piece.js";
import { reedFormulas } from "./reed.js";
import { sampleFormulas } from "./sample.js";
import { settFormulas } from "./sett.js";
import { warpingFormulas } from "./warping.js";
import { weightFormulas } from "./weight.js";

/** Every formula with the types of its symbols, for those who work it out. */
export const typedFormulas = {
  ...countFormulas,
  ...diameterFormulas,
  ...settFormulas,
  ...firmnessFormulas,
  ...reedFormulas,
  ...crimpFormulas,
  ...pieceFormulas,
  ...lengthFormulas,
  ...weightFormulas,
  ...sampleFormulas,
  ...warpingFormulas,
} as const;

/** A formula, by its name. */
export type FormulaId = keyof typeof typedFormulas;
