import { BitGrid } from "./bit-grid.js";
import { needGrid } from "./need-grid.js";
import { emptyWords } from "./size.js";
import { transpose } from "./transpose.js";

/**
 * The ends in reverse order: left for right.
 * @param grid the grid to mirror
 * @example toText(mirror(fromText("##."))) // ".##"
 */
export function mirror(grid: BitGrid): BitGrid {
  needGrid(grid);
  const { rows, columns, stride } = grid;
  const words = emptyWords(rows, columns);
  // Reversed as whole words, the spare bits come to lie in front; they are shifted out.
  const spare = stride * 32 - columns;
  for (let base = 0; base < words.length; base += stride) {
    for (let i = 0; i < stride; i++) {
      const low = reversed(grid.words[base + stride - 1 - i]!) >>> spare;
      const next =
        i + 1 < stride && spare > 0 ? reversed(grid.words[base + stride - 2 - i]!) << (32 - spare) : 0;
      words[base + i] = low | next;
    }
  }
  return BitGrid.own(rows, columns, words);
}

/** The 32 bits of a word, last for first: neighbours swapped, then pairs, fours, eights and halves. */
function reversed(word: number): number {
  let w = word;
  w = ((w >>> 1) & 0x5555_5555) | ((w & 0x5555_5555) << 1);
  w = ((w >>> 2) & 0x3333_3333) | ((w & 0x3333_3333) << 2);
  w = ((w >>> 4) & 0x0f0f_0f0f) | ((w & 0x0f0f_0f0f) << 4);
  w = ((w >>> 8) & 0x00ff_00ff) | ((w & 0x00ff_00ff) << 8);
  return (w >>> 16) | (w << 16);
}

/**
 * The picks in reverse order: last for first.
 * @param grid the grid to turn over
 * @example toText(upsideDown(fromText("##\n.."))) // "..\n##"
 */
export function upsideDown(grid: BitGrid): BitGrid {
  needGrid(grid);
  const words = emptyWords(grid.rows, grid.columns);
  for (let row = 0; row < grid.rows; row++) {
    const from = (grid.rows - 1 - row) * grid.stride;
    for (let i = 0; i < grid.stride; i++) words[row * grid.stride + i] = grid.words[from + i]!;
  }
  return BitGrid.own(grid.rows, grid.columns, words);
}

/**
 * The grid turned clockwise, as drawn with the first pick at the bottom; a negative number turns it the other way.
 * @param grid the grid to turn
 * @param quarters quarter turns, a whole number; 1 by default
 * @example toText(turn(fromText("##\n.."))) // ".#\n.#"
 */
export function turn(grid: BitGrid, quarters = 1): BitGrid {
  needGrid(grid);
  switch (((quarters % 4) + 4) % 4) {
    case 0:
      return grid;
    case 1:
      return upsideDown(transpose(grid));
    case 2:
      return upsideDown(mirror(grid));
    default:
      return transpose(upsideDown(grid));
  }
}
