import type { Cause } from "@drawcord/causes";
import type { Recipe } from "@drawcord/files";
import type { Change } from "@drawcord/units";
import { SLIP } from "./rule-names.js";

/** A cause that a recipe may accept. */
type Accepted = Cause & { readonly waived?: string };

/**
 * The causes as the recipe wants them: slips of the plan, of which no finding tells, at the level that it gives them, and
 * those that it accepts with its reason. A cause that accounts for findings goes with them.
 */
export function acceptedSlips({ levels, waive }: Recipe, causes: readonly Cause[]): readonly Accepted[] {
  const level = levels[SLIP];
  const waivers = waive.filter(({ rule }) => rule === SLIP);
  return causes.flatMap((cause): Accepted[] => {
    if (cause.explains.length > 0) return [cause];
    if (level === "off") return [];
    const slip = level === undefined ? cause : { ...cause, severity: level };
    const waiver = waivers.find((one) => cause.changes.every((change) => isWithin(change, one)));
    return [waiver === undefined ? slip : { ...slip, sure: false, waived: waiver.reason }];
  });
}

/** The waivers of slips, by their place in the recipe's list from 0, that accept one. */
export function slipWaiversUsed({ waive }: Recipe, causes: readonly Cause[]): ReadonlySet<number> {
  const slips = causes.filter(({ explains }) => explains.length === 0);
  const accepts = (waiver: Recipe["waive"][number]) =>
    waiver.rule === SLIP && slips.some(({ changes }) => changes.every((change) => isWithin(change, waiver)));
  return new Set(waive.flatMap((waiver, i) => (accepts(waiver) ? [i] : [])));
}

/** Whether a change is made within the places that a waiver names. */
function isWithin(change: Change, { rows, units }: Recipe["waive"][number]): boolean {
  const [ofRows, ofUnits] = placesOf(change);
  const within = (places: readonly number[], span: typeof rows) =>
    span === undefined ||
    (places.length > 0 && places.every((place) => place >= span[0] && place <= span[1]));
  return within(ofRows, rows) && within(ofUnits, units);
}

/** The rows and the units that a change is about. */
function placesOf(change: Change): readonly [rows: readonly number[], units: readonly number[]] {
  if ("row" in change) return [[change.row], []];
  if ("rows" in change) return [change.rows, []];
  if ("unit" in change) return [[], [change.unit]];
  return "units" in change ? [[], change.units] : [[], []];
}
