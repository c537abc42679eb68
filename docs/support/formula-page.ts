import { type Formula, type FormulaId, formulas, kinds } from "@drawcord/yarn";
import { capital, escaped } from "./text.js";
import { workingOf } from "./typed-values.js";
import { workedValues } from "./worked-values.js";

/**
 * The page of a formula: what it says, what its symbols stand for, where it holds, where it is from, an example worked out,
 * and fields for other numbers.
 * @param id of the formula
 */
export function formulaPage(id: FormulaId): string {
  const { title, expression, symbols, result, source, validity }: Formula = formulas[id];
  const rows = Object.entries(symbols).map(([symbol, { meaning, kind, bare, usual }]) => {
    const taken = usual === undefined ? "" : `${usual.value} ${usual.unit} (${usual.assumed})`;
    return `| \`${symbol}\` | ${meaning} | ${bare ?? kinds[kind].asked} | ${taken} |`;
  });
  return [
    `# ${capital(title)}`,
    `\`\`\`text\n${result.symbol} = ${expression}\n\`\`\``,
    [
      "| symbol | what it stands for | given as | taken where nothing is given |",
      "| --- | --- | --- | --- |",
      ...rows,
    ].join("\n"),
    ...(validity === undefined ? [] : ["## Where it holds", capital(validity)]),
    "## Source",
    capital(source),
    "## Worked out",
    `\`\`\`text\n${workingOf(id, workedValues[id])}\n\`\`\``,
    "## With your own numbers",
    `<TryFormula id="${id}" values="${escaped(JSON.stringify(workedValues[id]))}" />`,
  ].join("\n\n");
}
