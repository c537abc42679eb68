import { type FormulaId, formulas } from "@drawcord/yarn";
import { formulaPage } from "../support/formula-page.js";

/** A page a formula, from the formula's own data. */
export default {
  paths: () =>
    (Object.keys(formulas) as FormulaId[]).map((id) => ({
      params: { formula: id },
      content: formulaPage(id),
    })),
};
