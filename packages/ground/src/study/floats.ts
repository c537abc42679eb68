import { type BitGrid, scanRowRuns, tile, transpose } from "@drawcord/grid";

/** The floats of one system on one side of the cloth, over one repeat. */
export interface FloatLengths {
  /** How many floats begin in one repeat. */
  readonly count: number;
  /** The longest, in threads passed; infinite where a thread never interlaces; 0 where there is none. */
  readonly longest: number;
  /** The mean, in threads passed. */
  readonly mean: number;
}

/** Floats of warp and weft, on the face and on the back. */
export interface WeaveFloats {
  /** Of the warp, where it lies on the face. */
  readonly warpFace: FloatLengths;
  /** Of the warp, where it lies on the back. */
  readonly warpBack: FloatLengths;
  /** Of the weft, where it lies on the face. */
  readonly weftFace: FloatLengths;
  /** Of the weft, where it lies on the back. */
  readonly weftBack: FloatLengths;
}

/**
 * The floats of a weave, the repeat joined to itself on all sides.
 * @param drawdown one repeat
 * @example floatsOf(fromText("..#\n.#.\n#..")).warpFace.longest // 1
 */
export function floatsOf(drawdown: BitGrid): WeaveFloats {
  const weft = alongRows(drawdown);
  const warp = alongRows(transpose(drawdown));
  return { warpFace: warp.raised, warpBack: warp.lowered, weftFace: weft.lowered, weftBack: weft.raised };
}

/** The intersections of each row of a repeat joined to itself. */
export function intersectionsOfRows(grid: BitGrid): number[] {
  const counts = new Array<number>(grid.rows).fill(0);
  scanRound(grid, (row, length) => {
    if (length < Number.POSITIVE_INFINITY) counts[row]! += 1;
  });
  return counts;
}

function alongRows(grid: BitGrid): { raised: FloatLengths; lowered: FloatLengths } {
  const raised: number[] = [];
  const lowered: number[] = [];
  scanRound(grid, (_, length, up) => (up ? raised : lowered).push(length));
  return { raised: tally(raised), lowered: tally(lowered) };
}

function tally(lengths: readonly number[]): FloatLengths {
  const total = lengths.reduce((sum, length) => sum + length, 0);
  return {
    count: lengths.length,
    longest: lengths.reduce((longest, length) => Math.max(longest, length), 0),
    mean: lengths.length === 0 ? 0 : total / lengths.length,
  };
}

/**
 * Visits each run of a row that goes round. Of the row laid twice side by side, the runs that begin in the first half but
 * not at its very start are whole; a row of one run never interlaces.
 */
function scanRound(grid: BitGrid, visit: (row: number, length: number, raised: boolean) => void): void {
  const { rows, columns } = grid;
  scanRowRuns(tile(grid, rows, 2 * columns), (row, start, length, raised) => {
    if (length === 2 * columns) visit(row, Number.POSITIVE_INFINITY, raised);
    else if (start >= 1 && start <= columns) visit(row, length, raised);
  });
}
