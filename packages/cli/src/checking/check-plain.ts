import { checkGrid, checkShaftDraft, type RuleName } from "@drawcord/check";
import { read } from "@drawcord/files";
import { drawdownIn, titleIn } from "../plain/drawdown.js";
import { ignoredIn } from "../plain/ignored.js";
import type { Kept } from "./kept.js";

/**
 * Reads a plain draft, or a chart of interlacements, and checks it by the rules asked for.
 * @throws {FileError} with its place, for what cannot be read
 */
export function checkPlain(bytes: Uint8Array, file: string, only: readonly RuleName[]): Kept {
  const reading = read(bytes, file);
  const report =
    reading.kind === "draft"
      ? checkShaftDraft(reading.draft, { only })
      : checkGrid(drawdownIn(reading), { only });
  return {
    title: titleIn(reading) ?? null,
    report,
    places: report.findings.map(() => null),
    ignored: ignoredIn(reading),
  };
}
