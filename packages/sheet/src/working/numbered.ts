import { listed } from "@drawcord/base";
import {
  explain,
  formulaOf,
  isResult,
  type Plan,
  planNumbers,
  type Quantity,
  type Result,
  steps,
} from "@drawcord/yarn";

/** A result with its number on the sheet. */
export interface NumberedResult {
  readonly number: number;
  readonly result: Result;
  /** What it is of the project, where it is one of its numbers: `weight of the warp`. */
  readonly what: string | undefined;
  /** The yarn that it is worked out for: `warp`, or all of those that are alike. */
  readonly yarn: string | undefined;
}

/** Every result that the numbers of a plan rest on, each once and after what it rests on itself. */
export interface NumberedResults {
  readonly list: readonly NumberedResult[];
  /** The number of the working of a quantity; none for one that was given. */
  numberOf(quantity: Quantity): number | undefined;
}

/** The workings of a plan in their order. */
export function numberedResults(plan: Plan): NumberedResults {
  const named = planNumbers(plan);
  const titles = new Map<string, string>();
  for (const { title, value } of named) {
    if (isResult(value) && !titles.has(keyOf(value))) titles.set(keyOf(value), title);
  }
  const yarns = yarnsOf(plan);
  const found = new Map<string, NumberedResult>();
  for (const { value } of named) {
    if (!isResult(value)) continue;
    for (const result of steps(value)) {
      const key = keyOf(result);
      if (found.has(key)) continue;
      const of = new Set(steps(result).flatMap((step) => yarns.get(keyOf(step)) ?? []));
      found.set(key, {
        number: found.size + 1,
        result,
        what: titles.get(key),
        yarn: of.size === 0 ? undefined : listed([...of]),
      });
    }
  }
  return {
    list: [...found.values()],
    numberOf: (quantity) => (isResult(quantity) ? found.get(keyOf(quantity))?.number : undefined),
  };
}

/** Which yarns the working of a count or of a length of yarn is of. */
function yarnsOf({ warpYarns, weftYarn }: Plan): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { name, length, mass } of [...warpYarns, ...weftYarn]) {
    for (const step of [length, ...(mass === undefined ? [] : [mass])].flatMap(steps)) {
      if (step.kind !== "linear-density" && !/yarn/i.test(formulaOf(step).title)) continue;
      const names = found.get(keyOf(step)) ?? [];
      if (!names.includes(name)) names.push(name);
      found.set(keyOf(step), names);
    }
  }
  return found;
}

function keyOf(result: Result): string {
  return JSON.stringify(explain(result).data);
}
