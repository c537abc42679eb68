import type { Revision } from "@drawcord/files";
import type { Quantity } from "@drawcord/yarn";

/** A change that brings a recipe near to what is wanted. */
export interface Fit {
  /** What is changed, as a clause. */
  readonly what: string;
  /** What then comes out. */
  readonly comes: Quantity;
  /** How much is changed: of two that come as near, the smaller change is better. */
  readonly change: number;
  readonly revisions: readonly Revision[];
}

/** The nearest fit that is no more than wanted, and the nearest that is more. */
export function nearestFits(
  fits: readonly Fit[],
  wanted: Quantity,
): { readonly below?: Fit; readonly above?: Fit } {
  const exact = 1e-6 * wanted.value;
  const nearest = (some: readonly Fit[]): Fit | undefined =>
    [...some].sort((a, b) => {
      const nearer = Math.abs(a.comes.value - wanted.value) - Math.abs(b.comes.value - wanted.value);
      return Math.abs(nearer) > exact ? nearer : a.change - b.change;
    })[0];
  const below = nearest(fits.filter(({ comes }) => comes.value <= wanted.value + exact));
  const above = nearest(fits.filter(({ comes }) => comes.value > wanted.value + exact));
  return { ...(below && { below }), ...(above && { above }) };
}
