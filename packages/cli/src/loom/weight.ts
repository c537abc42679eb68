/** A weight with its unit: grams, or kilograms from one on. */
export function weight(grams: number): string {
  return grams < 1000 ? `${Number(grams.toFixed(1))} g` : `${(grams / 1000).toFixed(2)} kg`;
}
