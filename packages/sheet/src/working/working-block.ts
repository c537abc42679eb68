import type { Text, TypesetFormula, WorkingBlock } from "@drawcord/page";
import {
  explain,
  formulaOf,
  printQuantity,
  type Quantity,
  type UnitSystem,
  type WorkingValue,
} from "@drawcord/yarn";
import { operator, quantityLetters, row, symbolLetters, typeset } from "../formula/typeset.js";
import { printIn } from "../numbers/say.js";
import { inWorkingUnits, type WorkingUnits, workingUnits } from "./in-sheet-units.js";
import type { NumberedResult, NumberedResults } from "./numbered.js";
import { entered, pocketCalculated, resultSteps } from "./pocket.js";

/** One working in the units of the sheet: every step of it agrees with a pocket calculator to the last figure that is printed. */
export function workingBlock(
  { number, result, what, yarn }: NumberedResult,
  all: NumberedResults,
  system: UnitSystem,
): WorkingBlock {
  const { data } = explain(result);
  const { tree } = formulaOf(result);
  const units = workingUnits([...data.values.flatMap(({ values }) => values), data.result], system);
  const exact = (symbol: string) =>
    data.values.find((value) => value.symbol === symbol)!.values.map((one) => inWorkingUnits(one, units));
  const printed = (symbol: string) => exact(symbol).map((one) => ({ ...one, value: entered(one.value) }));
  const left = symbolLetters(data.symbol);
  const equal = operator("=");
  const general = typeset(tree, {
    symbol: symbolLetters,
    sum: (name) => row([operator("∑"), symbolLetters(name)]),
  });
  const substituted = typeset(tree, {
    symbol: (name) => quantityLetters(printed(name)[0]!),
    sum: (name) => sumOf(printed(name).map(quantityLetters)),
    signs: true,
  });
  const end = inWorkingUnits(data.result, units);
  const steps = resultSteps(pocketCalculated(tree, printed), pocketCalculated(tree, exact), end);
  const said = sayIn(system, result);
  const more = what ?? yarn;
  const isSame = more === undefined || data.title.toLowerCase() === more.toLowerCase();
  return {
    kind: "working",
    id: `working-${number}`,
    title: `${number}. ${capital(data.title)}${isSame ? "" : `: ${more}`}`,
    formula: row([left, equal, general]),
    substitution: row([left, equal, substituted]),
    result:
      said === undefined || steps === said || steps.endsWith(` = ${said}`)
        ? steps
        : `${steps}, said as ${said}`,
    symbols: data.values.map((value) => symbolText(value, result.given[value.symbol], units, all)),
    source: data.validity === undefined ? data.source : `${data.source}. Holds for: ${data.validity}`,
  };
}

/** How a result is said elsewhere on the sheet; counts of yarn and bare numbers are said nowhere else. */
function sayIn(system: UnitSystem, result: Quantity): string | undefined {
  const isSaid = result.value !== 0 && result.kind !== "number" && result.kind !== "linear-density";
  return isSaid ? printIn(system)(result) : undefined;
}

/** Values added up, in brackets. */
function sumOf(values: readonly TypesetFormula[]): TypesetFormula {
  const added = values.flatMap((value, i) => (i === 0 ? [value] : [operator("+"), value]));
  return row([operator("("), ...added, operator(")")]);
}

/** `T = 90.9091 tex (4): yarn count`: a letter, its values, the workings that they are from, and what it means. */
function symbolText(
  { symbol, meaning, values, assumed }: WorkingValue,
  given: Quantity | readonly Quantity[] | undefined,
  units: WorkingUnits,
  all: NumberedResults,
): Text {
  const sources =
    given === undefined ? [] : Array.isArray(given) ? (given as readonly Quantity[]) : [given as Quantity];
  const written = values.map((value, i) => {
    const number = sources[i] === undefined ? undefined : all.numberOf(sources[i]);
    return number === undefined ? valueText(value, units) : `${shownText(value, units)} (from ${number})`;
  });
  const why = assumed === undefined ? "" : ` (assumed: ${assumed})`;
  const [letter, index] = symbol.split("_") as [string, string?];
  return [
    { text: letter },
    ...(index === undefined ? [] : [{ text: index, low: true }]),
    { text: " = " },
    { text: written.join(", ") },
    { text: `: ${meaning}${why}` },
  ];
}

/** As it enters the working; before it as it was given, where that is in another unit. */
function valueText(value: Quantity, units: WorkingUnits): string {
  const shown = shownText(value, units);
  const own = printQuantity({ ...value, value: entered(value.value) });
  return own === shown || METRIC.includes(value.unit) ? shown : `${own} = ${shown}`;
}

function shownText(value: Quantity, units: WorkingUnits): string {
  const shown = inWorkingUnits(value, units);
  return printQuantity({ ...shown, value: entered(shown.value) });
}

/** Units in which numbers are kept, so that nobody has written them. */
const METRIC: readonly string[] = ["mm", "g", "per cm", "g/m2"];

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
