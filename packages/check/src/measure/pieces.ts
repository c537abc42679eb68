/**
 * What there is to know of every piece of 8 or 16 neighbouring interlacements, worked out beforehand. The runs inside a
 * piece (those that touch neither of its ends) are the same wherever the piece comes, so a cloth is measured by counting
 * its pieces and looking only at the runs that cross from one piece into the next.
 */

/** A table of all pieces of `size` bits; bit 0 of a piece is its first interlacement. */
export interface PieceTable {
  readonly size: number;
  /**
   * For each piece, packed from the lowest bit: length of its first run (5 bits), length of its last run (5 bits),
   * changes of state inside it (4 bits), longest lowered (4 bits) and longest raised run (4 bits) that touch neither end.
   */
  readonly facts: Uint32Array;
}

/** Works out the table of all 256 pieces of 8 or all 65,536 pieces of 16. */
export function pieceTable(size: 8 | 16): PieceTable {
  const facts = new Uint32Array(2 ** size);
  for (let piece = 0; piece < facts.length; piece++) {
    // A 1 at each interlacement that differs from the one before it.
    let borders = (piece ^ (piece << 1)) & (2 ** size - 2);
    if (borders === 0) {
      facts[piece] = size | (size << 5);
      continue;
    }
    const lead = 31 - Math.clz32(borders & -borders);
    let start = lead;
    let changes = 1;
    let down = 0;
    let up = 0;
    for (borders &= borders - 1; borders !== 0; borders &= borders - 1) {
      const at = 31 - Math.clz32(borders & -borders);
      if (((piece >>> start) & 1) === 1) up = Math.max(up, at - start);
      else down = Math.max(down, at - start);
      start = at;
      changes++;
    }
    facts[piece] = lead | ((size - start) << 5) | (changes << 10) | (down << 14) | (up << 18);
  }
  return { size, facts };
}

/** Visits the runs of a piece that touch neither of its ends: their state (1 raised) and their length. */
export function eachInnerRun(
  piece: number,
  size: number,
  visit: (state: 0 | 1, length: number) => void,
): void {
  let start = -1;
  for (let at = 1; at < size; at++) {
    if (((piece >>> at) & 1) === ((piece >>> (at - 1)) & 1)) continue;
    if (start !== -1) visit(((piece >>> start) & 1) === 1 ? 1 : 0, at - start);
    start = at;
  }
}
