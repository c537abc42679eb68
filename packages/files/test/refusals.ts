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

/** What is said of a recipe that cannot be read, with its place: `line:column: sentence`. */
export function answerTo(source: Uint8Array | string): string {
  const { message } = refusal(() => readRecipe(source, "runner"));
  return message.slice("runner:".length);
}
