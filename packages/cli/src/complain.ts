import type { Io } from "./io.js";

/** Prints what went wrong, or is to be known besides, as one line on `stderr`: its sentence, and never where in the code it came from. */
export async function complain(io: Io, error: unknown): Promise<void> {
  // Loaded only when something went wrong.
  const { oneLine } = await import("./printable.js");
  await io.stderr.write(`${oneLine(error instanceof Error ? error.message : String(error))}\n`);
}
