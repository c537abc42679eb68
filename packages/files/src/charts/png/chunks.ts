/** The chunks of a PNG file (ISO/IEC 15948): length, type, data and check sum, one after another. */
import { FileError } from "../../error.js";
import { stretchIn } from "../../place.js";
import { crc32 } from "./crc.js";

const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Whether bytes begin as a PNG file does. */
export function looksLikePng(bytes: Uint8Array): boolean {
  return signature.every((byte, i) => bytes[i] === byte);
}

/** One chunk, its data a view of the file. */
interface Chunk {
  readonly type: string;
  readonly data: Uint8Array;
  /** Where its length stands in the file. */
  readonly offset: number;
}

/** The error of a PNG file; its place is the byte, as a column of line 1. */
export function badPng(file: string, sentence: string, offset = 0): FileError {
  // A picture has no lines: the byte is the column.
  return new FileError("bad-chart", sentence, file, stretchIn([0], offset, offset));
}

/**
 * The chunks up to the end mark.
 * @throws {FileError} `bad-chart` when the file is cut short or a check sum does not fit
 */
export function* readChunks(bytes: Uint8Array, file: string): Generator<Chunk> {
  if (!looksLikePng(bytes)) throw badPng(file, "this is no PNG picture");
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let offset = signature.length; ; ) {
    if (offset + 12 > bytes.length) throw badPng(file, "the PNG picture is cut short", bytes.length);
    const length = view.getUint32(offset);
    const end = offset + 12 + length;
    if (end > bytes.length) throw badPng(file, "the PNG picture is cut short", bytes.length);
    const type = String.fromCharCode(...bytes.subarray(offset + 4, offset + 8));
    if (!/^[A-Za-z]{4}$/.test(type)) throw badPng(file, "the PNG picture is damaged here", offset + 4);
    if (crc32(bytes.subarray(offset + 4, end - 4)) !== view.getUint32(end - 4)) {
      throw badPng(
        file,
        `the PNG picture is damaged: the check sum of its part ${type} does not fit`,
        offset,
      );
    }
    yield { type, data: bytes.subarray(offset + 8, end - 4), offset };
    if (type === "IEND") return;
    offset = end;
  }
}

/** A PNG file of chunks, the end mark added. */
export function writeChunks(
  chunks: readonly { readonly type: string; readonly data: Uint8Array }[],
): Uint8Array {
  const all = [...chunks, { type: "IEND", data: new Uint8Array(0) }];
  const bytes = new Uint8Array(all.reduce((sum, { data }) => sum + 12 + data.length, signature.length));
  const view = new DataView(bytes.buffer);
  bytes.set(signature);
  let offset = signature.length;
  for (const { type, data } of all) {
    view.setUint32(offset, data.length);
    for (let i = 0; i < 4; i++) bytes[offset + 4 + i] = type.charCodeAt(i);
    bytes.set(data, offset + 8);
    const end = offset + 8 + data.length;
    view.setUint32(end, crc32(bytes.subarray(offset + 4, end)));
    offset = end + 4;
  }
  return bytes;
}
