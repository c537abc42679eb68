import { type FormulaTree, printQuantity, type Quantity, setTree } from "@drawcord/yarn";

/** Figures with which numbers enter a working. */
const FIGURES = 6;
/** Figures of a result: as many as a pocket calculator agrees to, but no more than these. */
const MOST_FIGURES = 5;
/** So near to a whole number a factor is one. */
const WHOLE = 1e-9;

/**
 * A number to the figures with which it enters a working.
 * @example entered(5456.6012) // 5456.6
 */
export function entered(value: number): number {
  return Number(value.toPrecision(FIGURES));
}

/**
 * A formula worked out as on a pocket calculator, from the numbers as they are printed; a share enters as hundredths.
 * @param valuesOf the values of a symbol, in the units in which they are printed
 * @example pocketCalculated(["/", "n", "S"], (name) => [{ value: name === "n" ? 324 : 12, unit: "", kind: "number" }]) // 27
 */
export function pocketCalculated(
  tree: FormulaTree,
  valuesOf: (symbol: string) => readonly Quantity[],
): number {
  const numbers = (symbol: string) =>
    valuesOf(symbol).map(({ value, kind }) => (kind === "share" ? value / 100 : value));
  return setTree<number>(tree, {
    number: (value) => value,
    symbol: (name) => (name === "pi" ? Math.PI : numbers(name)[0]!),
    sum: (name) => numbers(name).reduce((sum, one) => sum + one, 0),
    plus: (left, right) => left + right,
    minus: (left, right) => left - right,
    negative: (of) => -of,
    times: (left, right) => left * right,
    over: (above, below) => above / below,
    power: (base, exponent) => base ** exponent,
    root: Math.sqrt,
    call: (name, of) => Math[name](...(of as [number])),
    brackets: (inner) => inner,
    stacked: true,
  });
}

/**
 * What a calculator shows, step by step to the result in its unit: `66.4829 ÷ 2.54 = 26.174 per cm`; the result alone where
 * no change of unit lies between.
 * @param shown what the calculator shows for the numbers as they are printed
 * @param raw the same for the numbers unrounded, so that a change of unit is told exactly
 * @param result in the unit in which it is printed
 */
export function resultSteps(shown: number, raw: number, result: Quantity): string {
  if (Math.abs(result.value) < WHOLE) return printQuantity({ ...result, value: 0 });
  const factor = result.value / raw;
  if (Math.abs(factor - 1) < WHOLE || !Number.isFinite(factor)) return figuresOf(shown, result);
  const first = entered(shown);
  const inverse = 1 / factor;
  const isDivided = factor < 1 && !Number.isInteger(entered(factor));
  const by = entered(isDivided ? inverse : factor);
  const last = figuresOf(isDivided ? first / by : first * by, result);
  return `${first} ${isDivided ? "÷" : "×"} ${by} = ${last}`;
}

/** The result to as many figures as what the calculator shows has right. */
function figuresOf(shown: number, result: Quantity): string {
  const exact = Number.isInteger(result.value) && Math.abs(shown - result.value) < 0.5;
  if (exact) return printQuantity(result);
  let figures = MOST_FIGURES;
  while (figures > 2 && shown.toPrecision(figures) !== result.value.toPrecision(figures)) figures--;
  return printQuantity({ ...result, value: Number(result.value.toPrecision(figures)) });
}
