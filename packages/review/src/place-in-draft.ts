import type { Range } from "@drawcord/base";
import type { Finding } from "@drawcord/check";
import type { DraftPlaces } from "@drawcord/files";

/**
 * Where in the text of a plain draft a finding can be mended: at the first treadle, end or pick that it is about.
 * @param finding of `checkShaftDraft`
 * @param places of the draft in its text
 * @returns undefined where nothing is written for it
 * @example placeInDraft({ rule: "layers", severity: "error", message: "", ends: [2, 2] }, draftPlaces("[WIF]\n[THREADING]\n1=1\n2=12\n", "towel.wif")).line // 4
 */
export function placeInDraft(finding: Finding, places: DraftPlaces): Range | undefined {
  if ("treadles" in finding) return places.treadle(finding.treadles[0]);
  const { ends, picks } = finding;
  const end = ends && places.end(ends[0]);
  const pick = picks && places.pick(picks[0]);
  const ofWeft = "system" in finding && finding.system === "weft";
  return ofWeft ? (pick ?? end) : (end ?? pick);
}
