/**
 * What is drawn, where no plan tells: a figure shows the warp where it is drawn and the weft where it is not, so each
 * interlacement is judged by the share of warp on the face in the square of threads round it.
 */
import { BitGrid } from "@drawcord/grid";

/** Threads to each side of an interlacement that are looked at: 9 x 9 hold a repeat of the usual grounds, and more. */
const REACH = 4;

/** Larger cloths are not guessed at. */
const MOST = 2 ** 24;

/** The least sureness at which the guess is of use: plain weave comes to 0.02, satin on 5 ends to 0.6. */
const LEAST_SURENESS = 0.25;

/** What is thought to be drawn, and how sure that is. */
export interface Inference {
  /** Picks x ends; left out where the cloth is neither warp-faced nor weft-faced, so that there is nothing to tell by. */
  readonly drawn?: BitGrid;
  /** How far the shares lie from one half in the mean: 0 where warp and weft show alike, 1 where one alone shows. */
  readonly sureness: number;
}

/**
 * Guesses what is drawn from the face of a cloth.
 * @example inferDrawn(fromText("####\n####\n####")).sureness // 1
 */
export function inferDrawn(drawdown: BitGrid): Inference {
  const { rows, columns, stride } = drawdown;
  if (rows === 0 || columns === 0 || rows * columns > MOST) return { sureness: 0 };
  const words = new Uint32Array(rows * stride);
  // Raised interlacements of each column in the rows within reach, as they come and go.
  const inColumn = new Int32Array(columns);
  const addRow = (row: number, sign: 1 | -1) => {
    for (let column = 0; column < columns; column++) if (drawdown.get(row, column)) inColumn[column]! += sign;
  };
  for (let row = 0; row < Math.min(REACH, rows); row++) addRow(row, 1);
  let distance = 0;
  for (let row = 0; row < rows; row++) {
    if (row + REACH < rows) addRow(row + REACH, 1);
    if (row > REACH) addRow(row - REACH - 1, -1);
    const height = Math.min(row + REACH, rows - 1) - Math.max(row - REACH, 0) + 1;
    let raised = 0;
    for (let column = 0; column < Math.min(REACH, columns); column++) raised += inColumn[column]!;
    for (let column = 0; column < columns; column++) {
      if (column + REACH < columns) raised += inColumn[column + REACH]!;
      if (column > REACH) raised -= inColumn[column - REACH - 1]!;
      const width = Math.min(column + REACH, columns - 1) - Math.max(column - REACH, 0) + 1;
      const share = raised / (height * width);
      distance += Math.abs(2 * share - 1);
      if (share > 0.5) words[row * stride + (column >>> 5)]! |= 1 << (column & 31);
    }
  }
  const sureness = distance / (rows * columns);
  return sureness < LEAST_SURENESS ? { sureness } : { drawn: BitGrid.own(rows, columns, words), sureness };
}
