/** Reads the notations of a recipe, and turns what they throw into errors with the file's line and column. */
import { GroundError } from "@drawcord/ground";
import { UnitsError } from "@drawcord/units";
import { type Kind, type Quantity, readQuantity, YarnError } from "@drawcord/yarn";
import type { FileErrorCode } from "../error.js";
import { printable } from "../printable.js";
import { at, placeOf, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";
import type { Placed } from "./types.js";

/**
 * What `read` makes of the text of a value.
 * @throws {FileError} `bad-notation`, or the code given, at the column where the notation goes wrong
 */
export function notation<T>(of: Spot, read: (text: string) => T, code: FileErrorCode = "bad-notation"): T {
  try {
    return read(textOf(of));
  } catch (error) {
    throw notationError(of, error, 0, code);
  }
}

/** An error of a notation as an error of the file; its columns count from the character `from` of the value's text. */
export function notationError(
  of: Spot,
  error: unknown,
  from = 0,
  code: FileErrorCode = "bad-notation",
): unknown {
  if (!(error instanceof UnitsError || error instanceof GroundError || error instanceof YarnError))
    return error;
  const { column } = error.facts;
  const reason = error instanceof UnitsError ? error.reason : error.message.replace(/^column \d+: /, "");
  const index = typeof column === "number" ? from + column - 1 : undefined;
  return wrong(of, code, `${wayTo(of.path)}: ${printable(reason, 300)}`, index);
}

/** What `read` makes of the text of a value, with the text and its place. */
export function placed<T>(of: Spot, read: (text: string) => T): Placed<T> {
  return { text: textOf(of), value: notation(of, read), ...placeOf(of) };
}

/** A quantity of one of the kinds, with its unit. */
export function quantityOf(of: Spot, kinds: readonly Kind[]): Quantity {
  return notation(of, (text) => readQuantity(text, { kind: kinds }));
}

/** A quantity of a section that may leave it out, as a part of an object: `{}` when it is not there. */
export function quantityAt<Name extends string>(
  of: Spot | undefined,
  key: string,
  name: Name,
  ...kinds: readonly Kind[]
): { readonly [key in Name]?: Quantity } {
  const value = of === undefined ? undefined : at(of, key);
  return value === undefined ? {} : ({ [name]: quantityOf(value, kinds) } as { [key in Name]: Quantity });
}
