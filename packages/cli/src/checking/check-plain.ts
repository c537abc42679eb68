import type { Range } from "@drawcord/base";
import { checkGrid, checkShaftDraft, type Finding, type RuleName } from "@drawcord/check";
import { type DraftPlaces, draftPlaces, read } from "@drawcord/files";
import { drawdownIn, titleIn } from "../plain/drawdown.js";
import { ignoredIn } from "../plain/ignored.js";
import type { KeptCheck } from "./kept.js";

/**
 * Reads a plain draft, or a chart of interlacements, and checks it by the rules asked for.
 * @throws {FileError} with its place, for what cannot be read
 */
export function checkPlain(bytes: Uint8Array, file: string, only: readonly RuleName[]): KeptCheck {
  const reading = read(bytes, file);
  const places = reading.kind === "draft" ? draftPlaces(bytes, file) : undefined;
  const report =
    reading.kind === "draft"
      ? checkShaftDraft(reading.draft, { only })
      : checkGrid(drawdownIn(reading), { only });
  return {
    title: titleIn(reading) ?? null,
    report,
    places: report.findings.map((finding) => (places && placeOf(finding, places)) ?? null),
    ignored: ignoredIn(reading),
  };
}

/** Where in the text of a draft a finding can be mended: at the first treadle, end or pick that it is about. */
function placeOf(finding: Finding, places: DraftPlaces): Range | undefined {
  if ("treadles" in finding) return places.treadle(finding.treadles[0]);
  const { ends, picks } = finding;
  const end = ends && places.end(ends[0]);
  const pick = picks && places.pick(picks[0]);
  const ofWeft = "system" in finding && finding.system === "weft";
  return ofWeft ? (pick ?? end) : (end ?? pick);
}
