import { printQuantity, type Quantity, quantity } from "@drawcord/yarn";

/** A measure and its unit, as a finding carries them. */
export type Amount = Pick<Quantity, "value" | "unit">;

/** A quantity without what it was worked out from. */
export function amountOf({ unit, value }: Amount): Amount {
  return { value, unit };
}

/** An amount as a sentence has it, to so many decimals; all that the value has where none are named. */
export function amountInWords({ unit, value }: Amount, decimals?: number): string {
  return printQuantity(quantity(value, unit), decimals === undefined ? {} : { decimals });
}
