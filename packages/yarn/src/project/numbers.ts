import { listed } from "@drawcord/base";
import { formulaOf, isResult } from "../formula/calculate.js";
import { steps } from "../formula/explain.js";
import type { Given } from "../formula/input.js";
import type { Result } from "../formula/work-out.js";
import type { Quantity } from "../quantity/units.js";
import { calledYarn } from "./called.js";
import type { Plan } from "./types.js";

/** A number of a plan, by the name that recipes state it under. */
export interface PlanNumber {
  /** Its name, as in `stated` of a recipe. */
  readonly name: string;
  /** What it is, in a few words. */
  readonly title: string;
  /** The number with its unit, and why it was assumed where it was. */
  readonly value: Given;
}

/**
 * The numbers of a plan in the order in which a weaver needs them.
 * @param plan what `plan` gave
 * @example planNumbers(plan({ ends: 540, picks: 960 })).map(({ name }) => name) // ["ends", "picks", "pieces"]
 */
export function planNumbers(plan: Plan): PlanNumber[] {
  const list: readonly (readonly [name: string, title: string, value: Given | undefined])[] = [
    ["ends", "ends", plan.ends],
    ["units", "units", plan.units],
    ["lingos", "lingos", plan.lingos],
    ["sett", "sett", plan.sett],
    ["closest-sett", "closest sett in the ground weave", plan.firmness?.closest],
    ["share-of-closest-sett", "share of the closest sett", plan.firmness?.share],
    ["closest-picks", "closest picks in the ground weave", plan.firmness?.weft?.closest],
    ["share-of-closest-picks", "share of the closest picks", plan.firmness?.weft?.share],
    ["firmness", "firmness of the cloth", plan.firmness?.together],
    ["reed", "reed", plan.reed?.dents],
    ["width-in-reed", "width in the reed", plan.widthInReed],
    ["cloth-width", "width of the cloth on the loom", plan.clothWidth],
    ["finished-width", "finished width", plan.finishedWidth],
    ["picks", "picks in a piece", plan.picks],
    ["cloth-length", "cloth woven for a piece", plan.clothLength],
    ["finished-length", "finished length of a piece", plan.finishedLength],
    ["warp-of-piece", "warp of a piece", plan.warpOfPiece],
    ["warp-length", "length of the warp", plan.warpLength],
    ["pieces", "pieces", plan.pieces],
    ["left-over", "warp left over", plan.leftOver],
    ...[plan.warpYarn, ...(plan.warpYarns.length > 1 ? plan.warpYarns : []), ...plan.weftYarn].flatMap(
      (yarn) =>
        yarn === undefined
          ? []
          : ([
              [`${yarn.name}-yarn-length`, `yarn of the ${calledYarn(yarn.name)}`, yarn.length],
              [`${yarn.name}-yarn-mass`, `weight of the ${calledYarn(yarn.name)}`, yarn.mass],
            ] as const),
    ),
    ...plan.buy.flatMap(({ packages, toBuy, yarns }) => {
      const name = yarns.join("-and-");
      const called = listed(yarns.map(calledYarn));
      return [
        [`${name}-to-buy`, `${called} to buy`, toBuy],
        [`${name}-packages`, `packages of ${called} to buy`, packages],
      ] as const;
    }),
    ...(plan.woven.length < 2
      ? []
      : plan.woven.flatMap(
          ({ clothLength, finishedLength, name, picks, warpOfPiece }) =>
            [
              [`${name}-picks`, `picks in a piece of ${name}`, picks],
              [`${name}-cloth-length`, `cloth woven for a piece of ${name}`, clothLength],
              [`${name}-finished-length`, `finished length of ${name}`, finishedLength],
              [`${name}-warp-of-piece`, `warp of a piece of ${name}`, warpOfPiece],
            ] as const,
        )),
    ["cloth-weight", "weight of the finished cloth", plan.clothWeight],
    ...(plan.own ?? []).map(({ name, title, value }) => [name, title, value] as const),
  ];
  return list.flatMap(([name, title, value]) => (value === undefined ? [] : [{ name, title, value }]));
}

/** A value that was taken because nothing was given. */
export interface Assumption {
  /** What it is, as the formula calls it. */
  readonly meaning: string;
  /** What was taken. */
  readonly value: Quantity;
  /** Why. */
  readonly why: string;
}

/**
 * What a plan, or a list of results, assumes, each once.
 * @param of a plan, or results of any formulas
 * @example assumptions(plan({ ends: 540, picks: 960 })).map(({ why }) => why) // ["one piece"]
 */
export function assumptions(of: Plan | readonly Result[]): Assumption[] {
  const found = new Map<string, Assumption>();
  const add = (meaning: string, { assumed, value, unit, kind }: Given): void => {
    if (assumed !== undefined)
      found.set(`${meaning} ${assumed}`, { meaning, value: { value, unit, kind }, why: assumed });
  };
  if (!isList(of)) add("pieces", of.pieces);
  for (const value of isList(of) ? of : planNumbers(of).map((number) => number.value)) {
    if (!isResult(value)) continue;
    for (const step of steps(value)) {
      for (const [symbol, given] of Object.entries(step.given)) {
        for (const one of Array.isArray(given) ? (given as readonly Given[]) : [given as Given]) {
          add(formulaOf(step).symbols[symbol]!.meaning, one);
        }
      }
    }
  }
  return [...found.values()];
}

function isList(of: Plan | readonly Result[]): of is readonly Result[] {
  return Array.isArray(of);
}
