/**
 * A whole number as it is printed: groups of three digits set apart from five digits on, by a narrow blank that no line
 * end breaks.
 * @example spacedNumber(1488) // "1488"
 */
export function spacedNumber(value: number): string {
  const text = `${value}`;
  return text.length < 5 ? text : text.replace(/\B(?=(\d{3})+$)/g, "\u00a0");
}

/**
 * A number with its noun, in the plural where there is not just one.
 * @example spacedCount(1, "row") // "1 row"
 */
export function spacedCount(value: number, noun: string): string {
  return `${spacedNumber(value)} ${noun}${value === 1 ? "" : "s"}`;
}

/**
 * A stretch of numbers, from 1, as it is printed.
 * @example range(3, 3) // "3"
 */
export function range(first: number, last: number): string {
  return first === last ? `${first}` : `${first}–${last}`;
}
