import type { RecipeValue, Revision } from "@drawcord/files";
import { type Plan, planNumbers, type Quantity } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { both } from "../plan/measures.js";

/**
 * A change as it is written on the command line: `cloth.sett: 14 per cm`.
 * @throws {CliError} `bad-change` when it has no key or no value
 */
export function parseChange(text: string): Revision {
  const found = /^\s*([\w-]+(?:\.[\w-]+)*)\s*:\s*(.+?)\s*$/.exec(text);
  if (found === null) {
    throw new CliError("bad-change", `"${text}" is no change; expected one such as 'cloth.sett: 14 per cm'`, {
      change: text,
    });
  }
  const [, path, value] = found;
  const steps = path!.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) - 1 : step));
  return { path: steps, value: readValue(value!) };
}

function readValue(text: string): RecipeValue {
  return /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
}

/** A number of the plan before and after. */
export interface Difference {
  readonly name: string;
  readonly title: string;
  /** Left out where it was not known. */
  readonly before?: Quantity;
  readonly after?: Quantity;
}

/** The numbers in which two plans differ as they are printed, in the order of the plan. */
export function differences(before: Plan, after: Plan): Difference[] {
  const then = new Map(planNumbers(before).map((one) => [one.name, one]));
  const now = new Map(planNumbers(after).map((one) => [one.name, one]));
  return [...new Set([...then.keys(), ...now.keys()])].flatMap((name) => {
    const [old, young] = [then.get(name), now.get(name)];
    if (old !== undefined && young !== undefined && both(old.value) === both(young.value)) return [];
    return [
      {
        name,
        title: (old ?? young)!.title,
        ...(old === undefined ? {} : { before: old.value }),
        ...(young === undefined ? {} : { after: young.value }),
      },
    ];
  });
}
