import type { Io } from "./io.js";

/**
 * Prints what went wrong, or is to be known besides, on `stderr`: a line with its sentence, or one for each problem of a
 * text, and never where in the code it came from.
 */
export async function complain(io: Io, error: unknown): Promise<void> {
  // Loaded only when something went wrong.
  const [{ oneLine }, { reasonLines }] = await Promise.all([
    import("./printable.js"),
    import("./reasons.js"),
  ]);
  for (const { message } of reasonLines(error)) await io.stderr.write(`${oneLine(message)}\n`);
}
