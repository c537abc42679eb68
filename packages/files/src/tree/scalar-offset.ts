import type { Scalar } from "yaml";

/**
 * The offset in the source of the character `index` (from 0) of a text value. YAML folds, indents and quotes, but leaves
 * the characters that are not blanks as they are and in order, so they are counted; in a quoted text with escapes the
 * value's own beginning is given.
 */
export function offsetInScalar(node: Scalar, source: string, index: number): number {
  const [start = 0, end = 0] = node.range ?? [];
  const value = typeof node.value === "string" ? node.value : (node.source ?? "");
  let offset = start;
  if (node.type === "BLOCK_LITERAL" || node.type === "BLOCK_FOLDED") {
    offset = source.indexOf("\n", start) + 1;
  } else if (node.type === "QUOTE_DOUBLE" || node.type === "QUOTE_SINGLE") {
    const inside = source.slice(start + 1, end - 1);
    if (inside.includes(node.type === "QUOTE_DOUBLE" ? "\\" : "''")) return start;
    offset = start + 1;
  }
  // Blanks before the character count when they are on its line.
  let solid = index;
  while (solid > 0 && isBlank(value[solid - 1])) solid--;
  let left = value.slice(0, solid).replace(/\s/g, "").length;
  while (left > 0 && offset < end) {
    if (!isBlank(source[offset])) left--;
    offset++;
  }
  if (isBlank(value[index])) return Math.min(offset + index - solid, end);
  while (offset < end && isBlank(source[offset])) offset++;
  return offset;
}

/**
 * The offsets of many characters of a text value, none of them a blank, in one pass.
 * @param indexes from 0, ascending
 */
export function offsetsInScalar(node: Scalar, source: string, indexes: readonly number[]): readonly number[] {
  const [first] = indexes;
  if (first === undefined) return [];
  const value = typeof node.value === "string" ? node.value : (node.source ?? "");
  let offset = offsetInScalar(node, source, first);
  // Where the characters cannot be counted, all of them are at the value's beginning.
  if (offset === node.range?.[0] && source[offset] !== value[first]) return indexes.map(() => offset);
  let at = first;
  return indexes.map((index) => {
    for (; at < index; at++) {
      if (isBlank(value[at])) continue;
      do offset++;
      while (isBlank(source[offset]));
    }
    return offset;
  });
}

function isBlank(char: string | undefined): boolean {
  return char !== undefined && /\s/.test(char);
}
