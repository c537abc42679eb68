import type { StatedNumber } from "@drawcord/check";
import type { Recipe, Stated } from "@drawcord/files";
import { draftSize } from "@drawcord/units";
import { convert, type Plan, planNumbers } from "@drawcord/yarn";

type Slip = NonNullable<StatedNumber["slips"]>[number];

/** What known mistakes would have made of a stated number, in the unit of the claim. */
export function slipsOf(recipe: Recipe, plan: Plan | undefined, { claim, name }: Stated): readonly Slip[] {
  return claim.kind === "number" ? countedSlips(recipe, name) : measuredSlips(plan, name, claim.unit);
}

/** Counts taken for one another, with the selvedges or without them. */
function countedSlips({ draft }: Recipe, name: string): readonly Slip[] {
  const { ends, picks, rows, units } = draftSize(draft);
  const selvedges = (draft.selvedge?.left?.length ?? 0) + (draft.selvedge?.right?.length ?? 0);
  const sides: readonly (Slip & { readonly of: string })[] = [
    { of: "ends", value: ends - selvedges, mistake: { mistake: "selvedges-left-out" } },
    { of: "ends", value: ends + selvedges, mistake: { mistake: "selvedges-twice" } },
    { of: "units", value: units + selvedges, mistake: { mistake: "selvedges-counted" } },
    { of: "lingos", value: units + selvedges, mistake: { mistake: "selvedges-counted" } },
  ];
  const counts = { ends, picks, rows, units };
  return [
    ...(selvedges === 0 ? [] : sides.filter(({ of }) => of === name)),
    ...Object.entries(counts).flatMap(([of, value]) =>
      of === name ? [] : [{ value, mistake: { mistake: "other-count", counted: of, meant: name } as const }],
    ),
  ];
}

/** Lengths and weights of the plan taken for one another, and a loss taken twice. */
function measuredSlips(plan: Plan | undefined, name: string, unit: Stated["claim"]["unit"]): readonly Slip[] {
  if (plan === undefined) return [];
  const inUnit = (quantity: Plan["clothWidth"]) =>
    quantity === undefined ? undefined : convert(quantity, unit).value;
  const { kind } = plan.clothWidth ?? { kind: undefined };
  const numbers = planNumbers(plan);
  const own = numbers.find((number) => number.name === name)?.value;
  const others = numbers.flatMap(({ name: of, title, value }) =>
    of === name || own === undefined || value.kind !== own.kind
      ? []
      : [
          {
            value: convert(value, unit).value,
            mistake: { mistake: "other-number", number: of, title } as const,
          },
        ],
  );
  if (own === undefined || own.kind !== kind) return others;
  const [reed, cloth, washed] = [
    inUnit(plan.widthInReed),
    inUnit(plan.clothWidth),
    inUnit(plan.finishedWidth),
  ];
  if (reed === undefined || cloth === undefined || washed === undefined) return others;
  const drawn = cloth / reed;
  const shrunk = washed / cloth;
  const is = convert(own, unit).value;
  const twice: readonly Slip[] = [
    { value: is * drawn, mistake: { mistake: "draw-in-twice" } },
    { value: is / drawn, mistake: { mistake: "draw-in-added-twice" } },
    { value: is * shrunk, mistake: { mistake: "shrinkage-twice" } },
  ];
  return [...others, ...(name.includes("width") ? twice : [])];
}
