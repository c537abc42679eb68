import { FileError } from "./error.js";
import { needSource } from "./need.js";
import { lineStarts, stretchIn, type TextStretch, top } from "./place.js";
import { codeName, findControl } from "./printable.js";

/** The largest file that is read, in bytes: a recipe is a few kilobytes, a scanned chart a few hundred. */
export const largestFile = 16 * 2 ** 20;

/** @throws {FileError} `too-large` when the file is over 16 MiB */
export function checkFileSize(length: number, file: string): void {
  if (length <= largestFile) return;
  const sentence = `the file is larger than ${largestFile / 2 ** 20} MiB, the most that is read`;
  throw new FileError("too-large", sentence, file, top);
}

/** What a text may be besides UTF-8. */
export interface TextOptions {
  /**
   * Whether bytes that are no UTF-8 are read as Latin-1, with the letters that Windows adds to it, and the end marks of old
   * systems are dropped; default false.
   */
  readonly latin1?: boolean;
}

/**
 * The text of a file, UTF-8 without its byte order mark.
 * @throws {FileError} `too-large` over 16 MiB, `not-text` when it is binary or in another encoding, `empty` when there is
 * nothing but blanks in it
 */
export function readText(source: Uint8Array | string, file: string, options: TextOptions = {}): string {
  needSource(source);
  checkFileSize(source.length, file);
  const all = (typeof source === "string" ? source : decode(source, file, options)).replace(/^\uFEFF/, "");
  const text = options.latin1 ? withoutEndMark(all) : all;
  const control = findControl(text);
  if (control >= 0) {
    const code = codeName(text.charCodeAt(control));
    throw new FileError(
      "not-text",
      `this is not a text file: it holds the control character ${code}`,
      file,
      stretchIn(lineStarts(text), control, control + 1),
    );
  }
  if (text.trim() === "") throw new FileError("empty", "the file is empty", file, top);
  return text;
}

/** A text without the signs that old systems set at the end of a file, or fill its last block with. */
function withoutEndMark(text: string): string {
  let end = text.length;
  while (end > 0 && (text[end - 1] === "\u001A" || text[end - 1]!.trim() === "")) end--;
  return text.slice(0, end);
}

/** What Windows has from 0x80 to 0x9F, where Latin-1 has control characters; of five of these it has none. */
const windowsLetters = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ";

/** Latin-1 with the letters that Windows adds. The decoders of browsers and Node do not agree on these. */
function decodeLatin1(bytes: Uint8Array): string {
  const text = new TextDecoder("latin1").decode(bytes);
  return text.replace(/[\u0080-\u009F]/g, (char) => windowsLetters[char.charCodeAt(0) - 0x80]!);
}

function decode(bytes: Uint8Array, file: string, { latin1 = false }: TextOptions): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw new FileError("not-text", "the file is saved as UTF-16; save it as UTF-8", file, top);
  }
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    if (latin1) return decodeLatin1(bytes);
    const rough = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
    const place = placeOfFirst(rough, "\uFFFD");
    throw new FileError(
      "not-text",
      "this is not a text file in UTF-8: a byte here is no character",
      file,
      place,
    );
  }
}

/** Where a text has a character first. */
function placeOfFirst(text: string, char: string): TextStretch {
  const at = Math.max(0, text.indexOf(char));
  return stretchIn(lineStarts(text), at, at + char.length);
}
