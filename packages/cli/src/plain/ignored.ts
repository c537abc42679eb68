import type { Reading } from "@drawcord/files";
import type { Io } from "../io.js";
import { oneLine } from "../printable.js";

/** Says on `stderr` which sections of a draft were not used, for someone may have meant them to be. */
export async function sayIgnored(reading: Reading, name: string, io: Io): Promise<void> {
  if (reading.kind !== "draft" || reading.ignored.length === 0) return;
  const sections = reading.ignored.map((section) => `[${section}]`).join(", ");
  await io.stderr.write(`${oneLine(`${name}: not used: ${sections}`)}\n`);
}
