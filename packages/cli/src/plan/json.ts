import {
  assumptions,
  type Plan,
  type PlanFirmness,
  type PlanReed,
  type PlanYarn,
  writeReed,
  writeSley,
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
    weftYarn: weftYarn.map((yarn) => ({ name: yarn.name, ...yarnJson(yarn) })),
    ...measures(plan, ["clothWeight"]),
    assumed: assumptions(plan).map(({ meaning, value, why }) => ({ meaning, ...measure(value), why })),
    missing: plan.missing,
    notes: plan.notes,
  };
}

type Name = Exclude<keyof Plan, "firmness" | "reed" | "warpYarn" | "weftYarn" | "missing" | "notes">;

function measures(plan: Plan, names: readonly Name[]): Record<string, Measure> {
  return Object.fromEntries(
    names.flatMap((name) => {
      const found = plan[name];
      return found === undefined ? [] : [[name, measure(found)]];
    }),
  );
}

function firmnessJson({ closest, share, words }: PlanFirmness) {
  return { closest: measure(closest), share: measure(share), words };
}

function reedJson({ dents, dentsUsed, error, others, printed, reed, sett, sley, width }: PlanReed) {
  return {
    ...measure(dents),
    count: writeReed(reed),
    sley: writeSley(sley),
    sett: measure(sett),
    ...(error === undefined ? {} : { error: { value: percent(error), unit: "%" } }),
    others: others.map((other) => ({
      sley: writeSley(other.sley),
      sett: measure(other.sett),
      error: { value: percent(other.error), unit: "%" },
    })),
    dents: dentsUsed,
    width: measure(width),
    ends: printed,
  };
}

function yarnJson({ colour, enough, length, mass, packages, picks }: PlanYarn) {
  return {
    ...(colour === undefined ? {} : { colour }),
    ...(picks === undefined ? {} : { picks: measure(picks) }),
    length: measure(length),
    ...(mass === undefined ? {} : { mass: measure(mass) }),
    ...(packages === undefined ? {} : { packages: packages.value }),
    ...(enough === undefined ? {} : { enough }),
  };
}

/** To a hundredth of a percent; never -0. */
function percent(value: number): number {
  return Number(value.toFixed(2)) + 0;
}
