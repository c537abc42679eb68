import { type ShaftDraft, type Shedding, settOf, type ThreadLook } from "@drawcord/check";
import type { Project, ProjectWeft } from "@drawcord/yarn";
import { quantity } from "@drawcord/yarn";

/**
 * What a plain shaft draft says of its project, for `plan` of `@drawcord/yarn`: ends, picks by colour, and the setts where
 * the draft gives the spacing of its threads (their mean, where it changes). Yarns and lengths a draft does not know.
 * @param draft a draft as `soundWif` gives it
 * @example projectOfDraft(draft).ends // 4
 */
export function projectOfDraft(draft: ShaftDraft): Project {
  const picks = picksOf(draft.shedding);
  const { endsPerCm, picksPerCm } = settOf(draft);
  return {
    ends: draft.threading.length,
    picks,
    wefts: weftsByColour(draft.weft, picks),
    ...(endsPerCm === undefined ? {} : { sett: quantity(endsPerCm, "per cm") }),
    ...(picksPerCm === undefined ? {} : { pickSett: quantity(picksPerCm, "per cm") }),
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
