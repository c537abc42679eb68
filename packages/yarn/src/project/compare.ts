import { YarnError } from "../error.js";
import { convert } from "../quantity/convert.js";
import { type Quantity, quantity } from "../quantity/units.js";
import { planNumbers } from "./numbers.js";
import { plan } from "./plan.js";
import type { Project } from "./types.js";

/** A number before and after a change. */
export interface ChangedNumber {
  /** Its name, as in `stated` of a recipe. */
  readonly name: string;
  /** What it is, in a few words. */
  readonly title: string;
  /** What it was. */
  readonly before: Quantity;
  /** What it becomes. */
  readonly after: Quantity;
  /** After less before, in the unit of both. */
  readonly difference: Quantity;
}

/** What stays as it is when the sett changes. */
export interface SettChangeOptions {
  /** `width`: as many ends as fill the width in the reed. `ends`: the cloth becomes wider or narrower. Default: `width`. */
  readonly keep?: "width" | "ends";
}

/**
 * What another sett does to every number of a project that changes. A sley of the old sett is given up.
 * @param project the project as it stands
 * @param sett the new sett of the warp
 * @param options whether ends or width stay, where that may be chosen
 * @throws {YarnError} `missing` when the project has no sett; as `plan`
 * @example changeSett({ ends: 100, picks: 10, sett: parseQuantity("10 per cm") }, parseQuantity("12 per cm"))[0].after.value // 120
 */
export function changeSett(
  project: Project,
  sett: Quantity,
  options: SettChangeOptions = {},
): ChangedNumber[] {
  const before = plan(project);
  const { sley: _, ...rest } = project;
  const { sett: old } = before;
  if (old === undefined)
    throw new YarnError("missing", "the project has no sett to change; expected one such as 10 per cm");
  const factor = convert(sett, "per cm").value / convert(old, "per cm").value;
  const ends = options.keep === "ends" ? project.ends : Math.round(project.ends * factor);
  const after = plan({ ...rest, sett, ends });
  const then = new Map(planNumbers(after).map((one) => [one.name, one.value]));
  return planNumbers(before).flatMap(({ name, title, value }) => {
    const now = then.get(name);
    if (now === undefined) return [];
    const same = convert(now, value.unit);
    const difference = quantity(same.value - value.value, value.unit);
    // Less than a rounding error is no change.
    if (Math.abs(difference.value) <= 1e-9 * Math.abs(value.value)) return [];
    return [{ name, title, before: bare(value), after: bare(same), difference }];
  });
}

function bare({ value, unit, kind }: Quantity): Quantity {
  return { value, unit, kind };
}
