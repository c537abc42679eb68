/** A stretch cut into pieces of at most `most`, as even as can be, in order. */
export function pieces(length: number, most: number): { readonly start: number; readonly end: number }[] {
  const count = Math.max(1, Math.ceil(length / most));
  return Array.from({ length: count }, (_, i) => ({
    start: Math.round((i * length) / count),
    end: Math.round(((i + 1) * length) / count),
  }));
}
