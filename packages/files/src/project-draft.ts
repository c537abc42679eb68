import type { Project, ProjectWeft } from "@drawcord/yarn";
import { type Quantity, quantity } from "@drawcord/yarn/quantity";
import type { ShaftDraft, Shedding, ThreadLook } from "./draft/types.js";

/** Decipoints in an inch. */
const DECIPOINTS = 720;

/**
 * What a plain shaft draft says of its project, for `plan` of `@drawcord/yarn`: ends, picks by colour, and the setts where
 * the draft gives the spacing of its threads (their mean, where it changes). Yarns and lengths a draft does not know.
 * @example projectOfDraft(draft).ends // 4
 */
export function projectOfDraft(draft: ShaftDraft): Project {
  const picks = picksOf(draft.shedding);
  const sett = settOf(draft.warp);
  const pickSett = settOf(draft.weft);
  return {
    ends: draft.threading.length,
    picks,
    wefts: weftsByColour(draft.weft, picks),
    ...(sett === undefined ? {} : { sett }),
    ...(pickSett === undefined ? {} : { pickSett }),
  };
}

function picksOf(shedding: Shedding): number {
  return shedding.kind === "tie-up" ? shedding.treadling.length : shedding.liftPlan.length;
}

/** The wefts in the order in which their colours are first woven; one weft where no colours are given. */
function weftsByColour({ colours }: ThreadLook, picks: number): ProjectWeft[] {
  const counts = new Map<string, number>();
  for (const colour of colours?.slice(0, picks) ?? []) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  if (counts.size < 2) {
    const [colour] = counts.keys();
    return [{ name: "weft", picks, ...(colour === undefined ? {} : { colour }) }];
  }
  return [...counts].map(([colour, woven]) => ({ name: colour, colour, picks: woven }));
}

/** Threads side by side, from how far they lie apart; undefined where that is not told, or told as nothing. */
function settOf({ spacing, unit }: ThreadLook): Quantity | undefined {
  if (spacing === undefined) return undefined;
  const { all, each } = spacing;
  const apart = each === undefined ? all : each.reduce((sum, one) => sum + one, 0) / each.length;
  if (apart === undefined || !(apart > 0) || !Number.isFinite(apart)) return undefined;
  switch (unit) {
    case "centimeters":
      return quantity(1 / apart, "per cm");
    case "inches":
      return quantity(1 / apart, "per inch");
    default:
      return quantity(DECIPOINTS / apart, "per inch");
  }
}
