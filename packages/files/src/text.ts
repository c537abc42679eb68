import { FileError } from "./error.js";
import { lineStarts, placeIn, top } from "./place.js";
import { codeName, findControl } from "./printable.js";

/** The largest file that is read, in bytes: a recipe is a few kilobytes, a scanned chart a few hundred. */
export const largestFile = 16 * 2 ** 20;

/** @throws {FileError} `too-large` when the file is over 16 MiB */
export function checkFileSize(length: number, file: string): void {
  if (length <= largestFile) return;
  const size = (length / 2 ** 20).toFixed(1);
  throw new FileError("too-large", `the file has ${size} MiB; files up to 16 MiB are read`, file, top);
}

/**
 * The text of a file that must be UTF-8, without its byte order mark.
 * @throws {FileError} `too-large` over 16 MiB, `not-text` when it is binary or in another encoding, `empty` when there is
 * nothing but blanks in it
 */
export function readText(source: Uint8Array | string, file: string): string {
  checkFileSize(source.length, file);
  const text = (typeof source === "string" ? source : decodeUtf8(source, file)).replace(/^\uFEFF/, "");
  const control = findControl(text);
  if (control >= 0) {
    const code = codeName(text.charCodeAt(control));
    throw new FileError(
      "not-text",
      `this is not a text file: it holds the control character ${code}`,
      file,
      placeIn(lineStarts(text), control),
    );
  }
  if (text.trim() === "") throw new FileError("empty", "the file is empty", file, top);
  return text;
}

function decodeUtf8(bytes: Uint8Array, file: string): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw new FileError("not-text", "the file is saved as UTF-16; save it as UTF-8", file, top);
  }
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    const rough = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
    const place = placeIn(lineStarts(rough), Math.max(0, rough.indexOf("\uFFFD")));
    throw new FileError(
      "not-text",
      "this is not a text file in UTF-8: a byte here is no character",
      file,
      place,
    );
  }
}
