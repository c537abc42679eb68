import { explain, isResult, type Quantity, type Result, steps, type Working } from "@drawcord/yarn";

/** Every result that the numbers rest on, each once, what it rests on before it. Two alike are one. */
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

/** The working of all numbers as text, a blank line between two. */
export function workingText(numbers: readonly Quantity[]): string {
  return allSteps(numbers)
    .map((step) => `${explain(step).text}\n`)
    .join("\n");
}

/** The working of all numbers as data, each with its TeX. */
export function workingJson(numbers: readonly Quantity[]): (Working & { readonly tex: string })[] {
  return allSteps(numbers).map((step) => {
    const { data, tex } = explain(step);
    return { ...data, tex };
  });
}
