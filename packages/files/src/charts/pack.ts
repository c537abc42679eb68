/** Rows of a grid as picture files pack them: eight squares a byte, the leftmost in the highest bit. */
import { BitGrid } from "@drawcord/grid";

/** The bits of a word in the opposite order. */
function reverseBits(word: number): number {
  let bits = word;
  bits = ((bits >>> 1) & 0x5555_5555) | ((bits & 0x5555_5555) << 1);
  bits = ((bits >>> 2) & 0x3333_3333) | ((bits & 0x3333_3333) << 2);
  bits = ((bits >>> 4) & 0x0f0f_0f0f) | ((bits & 0x0f0f_0f0f) << 4);
  bits = ((bits >>> 8) & 0x00ff_00ff) | ((bits & 0x00ff_00ff) << 8);
  return (bits >>> 16) | (bits << 16);
}

/** Bytes in a packed row of that many columns. */
export function packedLength(columns: number): number {
  return Math.ceil(columns / 8);
}

/** Writes the packed bits of a row of `grid` into `bytes` from `offset` on. */
export function packRow(grid: BitGrid, row: number, bytes: Uint8Array, offset: number): void {
  const length = packedLength(grid.columns);
  for (let i = 0; i < length; i += 4) {
    const word = reverseBits(grid.words[row * grid.stride + (i >>> 2)]!);
    for (let k = 0; k < 4 && i + k < length; k++) bytes[offset + i + k] = word >>> (24 - 8 * k);
  }
}

/** The grid of packed rows, the top row of the picture first; the top row is woven last. */
export function unpackRows(bytes: Uint8Array, rows: number, columns: number): BitGrid {
  const length = packedLength(columns);
  const stride = Math.ceil(columns / 32);
  const words = new Uint32Array(rows * stride);
  for (let row = 0; row < rows; row++) {
    const from = (rows - 1 - row) * length;
    for (let i = 0; i < stride; i++) {
      let word = 0;
      for (let k = 0; k < 4; k++) word = (word << 8) | (4 * i + k < length ? bytes[from + 4 * i + k]! : 0);
      words[row * stride + i] = reverseBits(word);
    }
  }
  return BitGrid.fromWords(rows, columns, words);
}
