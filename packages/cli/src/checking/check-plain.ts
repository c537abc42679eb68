import { checkGrid, checkShaftDraft, type RuleName } from "@drawcord/check";
import { draftPlaces, drawdownIn, read, titleIn } from "@drawcord/files";
import { placeInDraft } from "@drawcord/review";
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
    places: report.findings.map((finding) => (places && placeInDraft(finding, places)) ?? null),
    ignored: ignoredIn(reading),
  };
}
