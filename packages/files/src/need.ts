import { ArgumentError } from "@drawcord/base";

/**
 * Refuses what is neither the text of a file nor its bytes; a `Buffer` of Node's is bytes.
 * @throws {ArgumentError} `wrong-argument`
 * @example needSource(7) // throws wrong-argument
 */
export function needSource(source: unknown): asserts source is Uint8Array | string {
  if (typeof source === "string" || source instanceof Uint8Array) return;
  const found = source === null ? "null" : typeof source;
  throw new ArgumentError(
    "wrong-argument",
    `a file must be a text or bytes (Uint8Array); ${found} was given`,
    {
      found,
    },
  );
}

/**
 * Refuses what is no bytes.
 * @throws {ArgumentError} `wrong-argument`
 * @example needBytes("P1 1 1 0") // throws wrong-argument
 */
export function needBytes(bytes: unknown): asserts bytes is Uint8Array {
  if (bytes instanceof Uint8Array) return;
  const found = bytes === null ? "null" : typeof bytes;
  throw new ArgumentError("wrong-argument", `a picture must be bytes (Uint8Array); ${found} was given`, {
    found,
  });
}
