import type { Reading } from "@drawcord/files";
import type { Io } from "../io.js";
import { oneLine } from "../printable.js";

/** The sections of a draft that were not used; a recipe and a chart have none. */
export function ignoredIn(reading: Reading): readonly string[] {
  return reading.kind === "draft" ? reading.ignored : [];
}

/** Says which sections of a draft were not used, for someone may have meant them to be. */
export function notUsed(name: string, sections: readonly string[]): string {
  return oneLine(`${name}: not used: ${sections.map((section) => `[${section}]`).join(", ")}`);
}

/** Says so on `stderr`, where there are any. */
export async function sayIgnored(reading: Reading, name: string, io: Io): Promise<void> {
  const sections = ignoredIn(reading);
  if (sections.length > 0) await io.stderr.write(`${notUsed(name, sections)}\n`);
}
