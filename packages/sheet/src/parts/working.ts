import type { Block, Text, TypesetFormula, WorkingBlock } from "@drawcord/page";
import {
  assumptions,
  explain,
  formulaOf,
  inUnits,
  isResult,
  planNumbers,
  printQuantity,
  type Quantity,
  type Result,
  steps,
  type WorkingValue,
} from "@drawcord/yarn";
import { operator, quantityLetters, row, symbolLetters, typeset } from "../formula/typeset.js";
import { printIn } from "../numbers/say.js";
import type { SheetPart } from "../part-names.js";
import type { Context } from "./context.js";
import { given } from "./given.js";
import { projectNumbersTable } from "./project-numbers.js";

/** The working of every number of the project, each after those it rests on; a part without blocks where there is none. */
export function workingPart(context: Context): SheetPart {
  const { plan, options, print } = context;
  const results = allSteps(planNumbers(plan).map(({ value }) => value));
  const workings = results.map((result, i): WorkingBlock => working(result, i + 1, options.units));
  const lead: Block = {
    kind: "paragraph",
    tone: "lead",
    text: "Each number of the project: the formula, the formula with its numbers, the result as it is printed, and where the formula is from. Shares such as take-up enter as hundredths.",
  };
  return {
    name: "working",
    title: "How each number was found",
    blocks:
      workings.length === 0
        ? []
        : [lead, given(context), projectNumbersTable(plan, print), ...assumed(context), ...workings],
  };
}

/** What the recipe does not say and the trade has a usual value for. */
function assumed({ plan, print }: Context): Block[] {
  const list = assumptions(plan).map(({ meaning, value, why }) => `${meaning}, ${print(value)} (${why})`);
  return list.length === 0 ? [] : [{ kind: "paragraph", tone: "note", text: `Assumed: ${list.join("; ")}.` }];
}

/** Every result that the numbers rest on, each once, what it rests on before it. */
function allSteps(numbers: readonly Quantity[]): Result[] {
  const told = new Map<string, Result>();
  for (const number of numbers) {
    if (!isResult(number)) continue;
    for (const step of steps(number)) {
      const key = JSON.stringify(explain(step).data);
      if (!told.has(key)) told.set(key, step);
    }
  }
  return [...told.values()];
}

/** The substitution is metric, as its formula is: where the sheet is not, the result stands in both. */
function working(result: Result, number: number, units: Context["options"]["units"]): WorkingBlock {
  const { data } = explain(result);
  const { tree } = formulaOf(result);
  const left = symbolLetters(data.symbol);
  const general = typeset(tree, {
    symbol: symbolLetters,
    sum: (name) => row([operator("∑"), symbolLetters(name)]),
  });
  const substituted = typeset(tree, {
    symbol: (name) => valuesOf(data.values, name)[0]!,
    sum: (name) => sumOf(valuesOf(data.values, name)),
    signs: true,
  });
  const equal = operator("=");
  return {
    kind: "working",
    id: `working-${number}`,
    title: `${number}. ${data.title.charAt(0).toUpperCase()}${data.title.slice(1)}`,
    formula: row([left, equal, general]),
    substitution: row([left, equal, substituted]),
    result: resultText(result, units),
    symbols: data.values.map(symbolText),
    source: data.validity === undefined ? data.source : `${data.source}. Holds for: ${data.validity}`,
  };
}

/** The values of a symbol as they stand in a formula. */
function valuesOf(values: readonly WorkingValue[], symbol: string): TypesetFormula[] {
  return values.find((value) => value.symbol === symbol)!.values.map(quantityLetters);
}

/** Values added up, in brackets. */
function sumOf(values: readonly TypesetFormula[]): TypesetFormula {
  const added = values.flatMap((value, i) => (i === 0 ? [value] : [operator("+"), value]));
  return row([operator("("), ...added, operator(")")]);
}

/** The result to the digits of its formula, then as it is said elsewhere on the sheet where that is otherwise. */
function resultText(result: Result, units: Context["options"]["units"]): string {
  const exact = inUnits(result, "metric");
  const said = printIn(units)(result);
  return said === exact ? exact : `${exact}, said as ${said}`;
}

function symbolText({ symbol, meaning, values, assumed }: WorkingValue): Text {
  const written = values.map(({ value, ...rest }) =>
    printQuantity({ ...rest, value: Number(value.toPrecision(6)) }),
  );
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
