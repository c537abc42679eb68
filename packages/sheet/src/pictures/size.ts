/** Millimetres that a picture may take on every paper: A4 and US Letter both hold it within their margins. */
export const roomWide = 170;
export const roomHigh = 205;

/** Room between pictures that stand side by side, in mm. */
export const BETWEEN_PICTURES = 9;

/** A picture has at least this width for its caption, however narrow it is. */
export const NARROWEST_PICTURE = 36;

/** A stretch cut into pieces of at most `most`, as even as can be, in order. */
export function pieces(length: number, most: number): { readonly start: number; readonly end: number }[] {
  const count = Math.max(1, Math.ceil(length / most));
  return Array.from({ length: count }, (_, i) => ({
    start: Math.round((i * length) / count),
    end: Math.round(((i + 1) * length) / count),
  }));
}

/** A stretch cut into strips of `long`, the last with what is left. */
export function strips(length: number, long: number): { readonly start: number; readonly end: number }[] {
  return Array.from({ length: Math.ceil(length / long) }, (_, i) => ({
    start: i * long,
    end: Math.min(length, (i + 1) * long),
  }));
}
