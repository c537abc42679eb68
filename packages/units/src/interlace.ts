/**
 * The threads of one system by the formula of the two harnesses, 32 interlacements at a time. It reads the same along
 * picks and along ends: what is drawn of a pick is the row of squares that its lift draws, and its treadle moves it; what
 * is drawn of an end is the column of squares that its unit is drawn in, and its ground shaft moves it.
 */
import { BitGrid, setBits } from "@drawcord/grid";

/** By treadle (along picks) or by ground shaft (along ends): the interlacements that the ground harness raises and sinks. */
export interface MovedShafts {
  readonly raised: readonly Uint32Array[];
  readonly sunk: readonly Uint32Array[];
}

/** Where each column of squares begins among the threads, and after the last one where it ends. */
export function edgesOf(sizes: number | readonly number[], columns: number, start: number): Int32Array {
  const edges = new Int32Array(columns + 1);
  edges[0] = start;
  for (let i = 0; i < columns; i++)
    edges[i + 1] = edges[i]! + (typeof sizes === "number" ? sizes : sizes[i]!);
  return edges;
}

/** The squares with each column as wide as its threads; a thread outside all columns is never drawn. */
export function widen(squares: BitGrid, edges: Int32Array, threads: number): BitGrid {
  const { columns, rows } = squares;
  const stride = (threads + 31) >>> 5;
  const words = new Uint32Array(rows * stride);
  for (let row = 0; row < rows; row++) {
    // From a run of drawn squares to the next.
    for (let start = 0, end = 0; ; ) {
      start = columnFrom(squares, row, end, 0);
      if (start === columns) break;
      end = columnFrom(squares, row, start, -1);
      setBits(words, row * stride, edges[start]!, edges[end]!);
    }
  }
  return BitGrid.own(rows, threads, words);
}

/** The first column from one on whose square is drawn, or with `flip` -1 is not; past the last where there is none. */
function columnFrom({ columns, stride, words }: BitGrid, row: number, from: number, flip: 0 | -1): number {
  for (let at = from; at < columns; at = (at | 31) + 1) {
    const bits = (words[row * stride + (at >>> 5)]! ^ flip) >>> (at & 31);
    if (bits !== 0) return Math.min(columns, at + 31 - Math.clz32(bits & -bits));
  }
  return columns;
}

/** Each row of a grid for as many threads as lie on it. */
export function repeatRows({ words: from, stride, columns }: BitGrid, rowOf: Int32Array): BitGrid {
  const words = new Uint32Array(rowOf.length * stride);
  for (let thread = 0; thread < rowOf.length; thread++) {
    const to = thread * stride;
    const row = rowOf[thread]!;
    if (thread > 0 && row === rowOf[thread - 1]) words.copyWithin(to, to - stride, to);
    else for (let i = 0; i < stride; i++) words[to + i] = from[row * stride + i]!;
  }
  return BitGrid.own(rowOf.length, columns, words);
}

/**
 * Every thread of a system: `raised or (drawn and not sunk)`.
 * @param rowOf the row of `drawn` that each thread lies on, -1 for one that is never drawn
 * @param moverOf the treadle or the ground shaft that moves each thread
 */
export function interlace(
  { words: drawn, stride, columns }: BitGrid,
  rowOf: Int32Array,
  moverOf: Int32Array,
  { raised, sunk }: MovedShafts,
): BitGrid {
  const words = new Uint32Array(rowOf.length * stride);
  for (let thread = 0; thread < rowOf.length; thread++) {
    const up = raised[moverOf[thread]!]!;
    const down = sunk[moverOf[thread]!]!;
    const to = thread * stride;
    const row = rowOf[thread]! * stride;
    if (row < 0) words.set(up, to);
    else for (let i = 0; i < stride; i++) words[to + i] = up[i]! | (drawn[row + i]! & ~down[i]!);
  }
  return BitGrid.own(rowOf.length, columns, words);
}
