/**
 * What is drawn, where no plan tells: a figure shows the warp where it is drawn and the weft where it is not, so each
 * interlacement is judged by the share of warp on the face in the square of threads round it. Well inside an area that
 * share is far from one half, by as much as the ground has contrast; towards a border it comes near it.
 */
import { BitGrid } from "@drawcord/grid";

/** Threads to each side of an interlacement that are looked at: 9 x 9 hold a repeat of the usual grounds, and more. */
const REACH = 4;

/** Larger cloths are not guessed at. */
const MOST = 2 ** 24;

/** The least contrast that tells figure from ground: plain weave has 0.01, cells tossed 0.2, a twill on 3 ends 0.33. */
const LEAST_CONTRAST = 0.3;

/** Contrasts are counted in so many steps. */
const STEPS = 255;

/** This share of the interlacements has at least the contrast that is taken for the ground's own. */
const TOP = 0.1;

/** What is thought to be drawn, and how sure that is. */
export interface Inference {
  /** Picks x ends; left out where nothing tells figure from ground, or the cloth is smaller than what is looked at. */
  readonly drawn?: BitGrid;
  /**
   * The share of interlacements that lie well inside an area, with at least half of the ground's contrast round them; the
   * others lie near a border and go by the majority. 0 where nothing is inferred.
   */
  readonly sureness: number;
  /** The cloth has more interlacements than are looked at. */
  readonly tooLarge?: true;
}

/**
 * Guesses what is drawn from the face of a cloth.
 * @example inferDrawn(fromText("#########\n".repeat(9).trimEnd())).sureness // 1
 */
export function inferDrawn(drawdown: BitGrid): Inference {
  const { rows, columns, stride } = drawdown;
  const least = 2 * REACH + 1;
  if (rows * columns > MOST) return { sureness: 0, tooLarge: true };
  if (rows < least || columns < least) return { sureness: 0 };
  const words = new Uint32Array(rows * stride);
  const counts = new Int32Array(STEPS + 1);
  eachShare(drawdown, (row, column, share) => {
    if (share > 0.5) words[row * stride + (column >>> 5)]! |= 1 << (column & 31);
    counts[Math.round(STEPS * Math.abs(2 * share - 1))]!++;
  });
  const contrast = contrastOf(counts, TOP * rows * columns);
  if (contrast < LEAST_CONTRAST * STEPS) return { sureness: 0 };
  const inside = counts.reduce((sum, count, step) => sum + (2 * step >= contrast ? count : 0), 0);
  return { drawn: BitGrid.own(rows, columns, words), sureness: inside / (rows * columns) };
}

/** The greatest step that at least so many interlacements reach. */
function contrastOf(counts: Int32Array, many: number): number {
  let reached = 0;
  for (let step = STEPS; step > 0; step--) {
    reached += counts[step]!;
    if (reached >= many) return step;
  }
  return 0;
}

/** Visits the share of warp on the face round each interlacement; at the edges of the cloth the square is smaller. */
function eachShare(drawdown: BitGrid, visit: (row: number, column: number, share: number) => void): void {
  const { rows, columns } = drawdown;
  // Raised interlacements of each column in the rows within reach, as they come and go.
  const inColumn = new Int32Array(columns);
  const addRow = (row: number, sign: 1 | -1) => {
    for (let column = 0; column < columns; column++) if (drawdown.get(row, column)) inColumn[column]! += sign;
  };
  for (let row = 0; row < Math.min(REACH, rows); row++) addRow(row, 1);
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
      visit(row, column, raised / (height * width));
    }
  }
}
