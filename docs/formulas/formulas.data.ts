import { type Formula, formulas } from "@drawcord/yarn";

/** A line a formula, for the list of them. */
export interface FormulaLine {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

declare const data: readonly FormulaLine[];

export { data };

/** Read when the site is built, so that the list does not carry the formulas. */
export default {
  load: (): readonly FormulaLine[] =>
    Object.entries<Formula>(formulas).map(([id, { title, expression, result }]) => ({
      id,
      title,
      text: `${result.symbol} = ${expression}`,
    })),
};
