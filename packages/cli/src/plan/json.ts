import {
  assumptions,
  metric,
  type Plan,
  type PlanFirmness,
  type PlanPiece,
  type PlanPurchase,
  type PlanReed,
  type PlanSample,
  type PlanYarn,
  printReed,
  printSley,
  WASHING_CAUTION,
} from "@drawcord/yarn";
import { type Measure, measure } from "./measures.js";
import { windingJson, windingOf } from "./winding.js";

/** The numbers of a plan by the names of its JSON; what cannot be worked out is left out. */
export function planJson(plan: Plan): Record<string, unknown> {
  const { firmness, reed, warpYarn, weftYarn } = plan;
  const winding = windingOf(plan);
  return {
    ...measures(plan, ["ends", "units", "lingos", "sett"]),
    ...(firmness === undefined ? {} : { firmness: firmnessJson(firmness) }),
    ...(reed === undefined ? {} : { reed: reedJson(reed) }),
    ...measures(plan, ["widthInReed", "clothWidth", "finishedWidth"]),
    ...measures(plan, ["picks", "clothLength", "finishedLength", "warpOfPiece"]),
    ...measures(plan, ["warpLength", "pieces", "leftOver"]),
    ...(winding === undefined ? {} : { winding: windingJson(winding) }),
    ...(warpYarn === undefined ? {} : { warpYarn: yarnJson(warpYarn) }),
    ...(plan.warpYarns.length < 2
      ? {}
      : { warpYarns: plan.warpYarns.map((yarn) => ({ name: yarn.name, ...yarnJson(yarn) })) }),
    weftYarn: weftYarn.map((yarn) => ({ name: yarn.name, ...yarnJson(yarn) })),
    buy: plan.buy.map(purchaseJson),
    woven: plan.woven.map(pieceJson),
    ...measures(plan, ["clothWeight"]),
    ...(plan.own === undefined
      ? {}
      : { own: plan.own.map(({ title, value }) => ({ title, ...measure(value) })) }),
    ...(plan.sample === undefined ? {} : { sample: sampleJson(plan.sample) }),
    assumed: assumptions(plan).map(({ meaning, value, why }) => ({ meaning, ...measure(value), why })),
    goesBy: plan.goesBy,
    missing: plan.missing,
    notes: plan.notes,
    ...(plan.finishedWidth === undefined && plan.sample === undefined ? {} : { caution: WASHING_CAUTION }),
  };
}

type Name = Exclude<
  keyof Plan,
  | "goesBy"
  | "own"
  | "sample"
  | "firmness"
  | "reed"
  | "warpYarn"
  | "warpYarns"
  | "weftYarn"
  | "buy"
  | "woven"
  | "missing"
  | "notes"
>;

function measures(plan: Plan, names: readonly Name[]): Record<string, Measure> {
  return Object.fromEntries(
    names.flatMap((name) => {
      const found = plan[name];
      return found === undefined ? [] : [[name, measure(found)]];
    }),
  );
}

function firmnessJson({ closest, share, together, weft, words }: PlanFirmness) {
  return {
    closest: measure(closest),
    share: measure(share),
    ...(weft === undefined ? {} : { picks: { closest: measure(weft.closest), share: measure(weft.share) } }),
    ...(together === undefined ? {} : { together: measure(together) }),
    words,
  };
}

function reedJson({ dents, dentsUsed, error, others, printed, reed, sett, sley, width }: PlanReed) {
  return {
    ...measure(dents),
    count: printReed(reed),
    sley: printSley(sley),
    sett: measure(sett),
    ...(error === undefined ? {} : { error: { value: percent(error), unit: "%" } }),
    others: others.map((other) => ({
      sley: printSley(other.sley),
      sett: measure(other.sett),
      error: { value: percent(other.error), unit: "%" },
    })),
    dents: dentsUsed,
    width: measure(width),
    ends: printed,
  };
}

/** What the sample tells, and what it moves. */
function sampleJson({ moved, numbers }: PlanSample) {
  return {
    numbers: numbers.map(({ instead, name, title, value }) => ({
      name,
      title,
      ...measure(value),
      ...(instead === undefined ? {} : { instead: measure(instead) }),
    })),
    moved: moved.map(({ after, before, by, name, title }) => ({
      name,
      title,
      before: measure(before),
      after: measure(after),
      by: measure(by),
    })),
  };
}

/** One yarn to have. */
function purchaseJson(purchase: PlanPurchase) {
  const { colour, count, fibre, need, package: one, packages, stock, toBuy, used, yarns } = purchase;
  return {
    yarns,
    ...(count === undefined ? {} : { count }),
    ...(fibre === undefined ? {} : { fibre }),
    ...(colour === undefined ? {} : { colour }),
    used: measure(used),
    need: measure(need),
    ...(stock === undefined ? {} : { stock: measure(stock) }),
    toBuy: measure(toBuy),
    ...(one === undefined ? {} : { package: measure(one) }),
    ...(packages === undefined ? {} : { packages: packages.value }),
  };
}

/** One design of those on the warp. */
function pieceJson({ clothLength, count, finishedLength, more, name, over, picks, rows, wefts }: PlanPiece) {
  return {
    name,
    count: count.value,
    ...(rows === undefined ? {} : { rows }),
    picks: metric(picks).value,
    ...(clothLength === undefined ? {} : { cloth: measure(clothLength) }),
    ...(finishedLength === undefined ? {} : { length: measure(finishedLength) }),
    ...(over === undefined ? {} : { over }),
    ...(more === undefined ? {} : { more: more.value }),
    wefts: wefts.map(({ length, mass, name: weft }) => ({
      name: weft,
      length: measure(length),
      ...(mass === undefined ? {} : { mass: measure(mass) }),
    })),
  };
}

function yarnJson({ colour, length, mass, picks, samples }: PlanYarn) {
  return {
    ...(colour === undefined ? {} : { colour }),
    ...(picks === undefined ? {} : { picks: measure(picks) }),
    length: measure(length),
    ...(mass === undefined ? {} : { mass: measure(mass) }),
    ...(samples === undefined ? {} : { samples: measure(samples) }),
  };
}

/** To a hundredth of a percent; never -0. */
function percent(value: number): number {
  return Number(value.toFixed(2)) + 0;
}
