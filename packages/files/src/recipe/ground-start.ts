import type { GroundBegin, GroundStartOption } from "@drawcord/check";
import type { Ground } from "@drawcord/ground";
import { picksOfEachRow } from "@drawcord/units";
import { commonStep } from "./ground.js";
import { groundNamed, namedGround, sameGround } from "./named-ground.js";
import type { Recipe } from "./types.js";

/**
 * How the ground of a recipe, given by its name, is begun where rows of unlike picks move its start, for the option
 * `groundStart` of a check.
 * @param recipe a recipe as it was read
 * @returns undefined where its ground is given step by step, or is begun as most of its rows alone would have it
 * @example groundStartOf(soundRecipe(text, "least")) // undefined
 */
export function groundStartOf({
  draft,
  weave,
}: Pick<Recipe, "draft" | "weave">): GroundStartOption | undefined {
  const step = commonStep(draft.picksPerRow);
  const picks = picksOfEachRow(draft);
  const usual = mostOften(picks);
  if (step === usual) return undefined;
  const name = namedGround(weave, draft);
  if (name === undefined) return undefined;
  const alone = groundNamed(name, { unitEnds: commonStep(draft.unitEnds), picksPerRow: usual });
  if (alone === undefined || sameGround(draft.ground, alone)) return undefined;
  return {
    weave: name.weave,
    rowPicks: [...new Set(picks)].sort((a, b) => a - b),
    step,
    usual,
    begins: beginOf(draft.ground),
    wouldBegin: beginOf(alone),
  };
}

function beginOf({ steps }: Ground): GroundBegin {
  const { raise = [], sink = [] } = steps[0] ?? {};
  return { raise, sink };
}

function mostOften(counts: readonly number[]): number {
  const times = new Map<number, number>();
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1);
  return [...times].reduce((best, one) => (one[1] > best[1] ? one : best))[0];
}
