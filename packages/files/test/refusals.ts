import { FileError, readRecipe } from "../src/index.js";

/** The error that reading gives; a test fails when there is none, or one of another class. */
export function refusal(read: () => unknown): FileError {
  try {
    read();
  } catch (error) {
    if (error instanceof FileError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}

/** All that is said of a recipe that cannot be read, with its places, a line each: `line:column: sentence`. */
export function answerTo(source: Uint8Array | string): string {
  const { problems } = readRecipe(source, "runner");
  return problems.map(({ column, line, sentence }) => `${line}:${column}: ${sentence}`).join("\n");
}
