import { kindOf, readPbm, readPng, writeTextChart } from "@drawcord/files";

/** The letters of Windows, which old drafts are written in. */
const OLD_LETTERS = "windows-1252";

/**
 * A file of any kind as the text that stands on the bench: recipes, drafts and charts as they are written, pictures as the
 * chart that is read in them.
 * @param bytes of the file
 * @param name of the file
 * @throws {FileError} for a picture that cannot be read
 */
export function opened(bytes: Uint8Array, name: string): string {
  const kind = kindOf(bytes);
  if (kind === "png") return writeTextChart(readPng(bytes, name));
  if (kind === "pbm") return writeTextChart(readPbm(bytes, name));
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder(OLD_LETTERS).decode(bytes);
  }
}
