import { YarnError } from "../error.js";
import { convert } from "../quantity/convert.js";
import { parseQuantity } from "../quantity/parse.js";
import { printQuantity } from "../quantity/print.js";
import { kinds, type Quantity, quantity } from "../quantity/units.js";
import type { SymbolSpec } from "./types.js";

/** What a function of this package takes for a quantity: the quantity, its text with the unit, or a bare number of things. */
export type Input = Quantity | string | number;

/** A value as a formula took it; `assumed` says why where nothing was given. */
export interface Given extends Quantity {
  /** Why it was taken; left out where it was given. */
  readonly assumed?: string;
}

/**
 * An input as the quantity that a symbol needs.
 * @throws {YarnError} `missing`, `no-unit`, `wrong-kind`, `negative`, `zero`, `not-finite`, `not-whole` or `absurd`; the
 * sentence begins with `where`
 */
export function take(spec: SymbolSpec, input: Input | undefined, where: string): Given {
  if (input === undefined) {
    if (spec.usual !== undefined) return spec.usual;
    throw new YarnError("missing", `${where} is not given; expected ${kinds[spec.kind].asked}`);
  }
  const found = toQuantity(spec, input, where);
  const { value } = found;
  const printed = printQuantity(found);
  const refuse = (
    code: "not-finite" | "negative" | "zero" | "not-whole" | "absurd",
    why: string,
  ): YarnError => new YarnError(code, `${where} is ${printed}; ${why}`, { value, unit: found.unit });
  if (!Number.isFinite(value)) throw refuse("not-finite", "expected a finite number");
  if (value < 0) throw refuse("negative", "it cannot be below zero");
  if (spec.positive && value === 0) throw refuse("zero", "it must be more than zero");
  if (spec.whole && !Number.isInteger(value)) throw refuse("not-whole", "expected a whole number");
  const unit = spec.bare ?? kinds[spec.kind].metric;
  const { least = 0, most = Number.POSITIVE_INFINITY } = spec;
  const measured = convert(found, unit).value;
  if (measured < least) throw refuse("absurd", `expected at least ${least} ${unit}`.trim());
  if (measured > most) throw refuse("absurd", `expected at most ${most} ${unit}`.trim());
  return found;
}

function toQuantity(spec: SymbolSpec, input: Input, where: string): Quantity {
  if (typeof input === "string") return readNamed(spec, input, where);
  const found = typeof input === "number" ? quantity(input, "") : input;
  if (found.kind === spec.kind) return found;
  const code = found.kind === "number" ? "no-unit" : "wrong-kind";
  const why = code === "no-unit" ? "has no unit; expected" : "is not";
  throw new YarnError(code, `${where}: ${printQuantity(found)} ${why} ${kinds[spec.kind].asked}`, {
    found: found.kind,
  });
}

/** Reads a text, and says of an error where it belongs. */
function readNamed(spec: SymbolSpec, text: string, where: string): Quantity {
  try {
    return parseQuantity(text, { kind: spec.kind, positive: false });
  } catch (failure) {
    if (!(failure instanceof YarnError)) throw failure;
    throw new YarnError(failure.code, `${where}: ${failure.message}`, failure.facts);
  }
}
