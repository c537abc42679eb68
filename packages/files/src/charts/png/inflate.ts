import { Unzlib } from "fflate";
import { badPng } from "./chunks.js";

/** Compressed bytes taken at a time: deflate grows a byte to 1032 at most, so that no step grows past 4 MiB. */
const step = 4096;

/**
 * Decompresses to exactly `length` bytes; what would grow past it is given up at once.
 * @throws {FileError} `bad-chart` when the data are damaged, too short or too long
 */
export function inflate(parts: readonly Uint8Array[], length: number, file: string): Uint8Array {
  const out = new Uint8Array(length);
  let filled = 0;
  let over = false;
  const stream = new Unzlib((chunk) => {
    over ||= filled + chunk.length > length;
    if (!over) out.set(chunk, filled);
    filled += chunk.length;
  });
  const push = (bytes: Uint8Array, last: boolean) => {
    try {
      stream.push(bytes, last);
    } catch {
      throw badPng(file, "the PNG picture is damaged: its squares cannot be unpacked");
    }
    if (over) throw badPng(file, "the PNG picture unpacks to more than its width and height");
  };
  for (const part of parts) {
    for (let at = 0; at < part.length; at += step) push(part.slice(at, at + step), false);
  }
  push(new Uint8Array(0), true);
  if (filled < length) throw badPng(file, "the PNG picture unpacks to less than its width and height");
  return out;
}
