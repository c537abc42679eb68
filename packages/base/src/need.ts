import { DrawcordError } from "./error.js";

/**
 * Why a function cannot begin.
 * - `wrong-argument`: a function was given an argument of the wrong kind; the message says what it takes and what was given
 */
export type ArgumentErrorCode = "wrong-argument";

/** A caller's mistake that the types would have told: a value that is not at all what a function takes. */
export class ArgumentError extends DrawcordError<ArgumentErrorCode> {
  /** The name of the class. */
  override readonly name = "ArgumentError";
}

/**
 * Refuses what is no text.
 * @param value what was given
 * @param what what it is to be, as a sentence begins with it: `the threading`
 * @throws {ArgumentError} `wrong-argument`
 * @example needText(7, "the threading") // throws wrong-argument
 */
export function needText(value: unknown, what: string): asserts value is string {
  if (typeof value !== "string") throw wrong(value, `${what} must be a text`);
}

/**
 * Refuses what is no object, or lacks a key that it must have.
 * @param value what was given
 * @param what what it is to be, as a sentence begins with it: `the draft`
 * @param keys the keys that it must have, each with what its value must be
 * @throws {ArgumentError} `wrong-argument`
 * @example needKeys({ lifts: 7 }, "the draft", { lifts: "list" }) // throws wrong-argument
 */
export function needKeys(
  value: unknown,
  what: string,
  keys: Readonly<Record<string, "list" | "object" | "text">> = {},
): asserts value is object {
  if (typeof value !== "object" || value === null) throw wrong(value, `${what} must be an object`);
  for (const [key, kind] of Object.entries(keys)) {
    const found: unknown = (value as Readonly<Record<string, unknown>>)[key];
    const fits =
      kind === "list"
        ? Array.isArray(found) || ArrayBuffer.isView(found)
        : kind === "text"
          ? typeof found === "string"
          : typeof found === "object" && found !== null;
    if (!fits) throw wrong(found, `${what} must have "${key}", ${kind === "object" ? "an" : "a"} ${kind}`);
  }
}

/**
 * Refuses what is no list.
 * @param value what was given
 * @param what what it is to be, as a sentence begins with it: `the lines`
 * @throws {ArgumentError} `wrong-argument`
 * @example needList("1 2", "the lines") // throws wrong-argument
 */
export function needList(value: unknown, what: string): asserts value is readonly unknown[] {
  if (!Array.isArray(value)) throw wrong(value, `${what} must be a list`);
}

/** The error that says what was given instead. */
function wrong(value: unknown, expected: string): ArgumentError {
  const found = value === null ? "null" : Array.isArray(value) ? "a list" : `${typeof value}`;
  return new ArgumentError("wrong-argument", `${expected}; ${found} was given`, { found });
}
