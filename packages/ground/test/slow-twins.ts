import { fromBooleans } from "@drawcord/grid";
import { commonMultiple } from "../src/arithmetic.js";
import type { Ground } from "../src/index.js";

/** Which units are drawn in which rows. */
export type Chart = (unit: number, row: number) => boolean;

/** A draft worked out end by end and pick by pick, by the model's own formula. */
export function expandSlowly(
  ground: Ground,
  unitEnds: number,
  picksPerRow: number,
  units: number,
  rows: number,
  chart: Chart,
) {
  const drawn: boolean[][] = [];
  const raised: boolean[][] = [];
  for (let p = 0; p < rows * picksPerRow; p++) {
    const { raise, sink } = ground.steps[p % ground.steps.length]!;
    drawn.push([]);
    raised.push([]);
    for (let e = 0; e < units * unitEnds; e++) {
      const shaft = ground.threading[e % ground.threading.length]!;
      const isDrawn = chart(Math.floor(e / unitEnds), Math.floor(p / picksPerRow));
      drawn[p]!.push(isDrawn);
      raised[p]!.push(raise.includes(shaft) || (isDrawn && !sink.includes(shaft)));
    }
  }
  return { drawn, raised };
}

/** Open pairs of a checkerboard of units and rows and of its negative, each kind of border met equally often. */
export function openByExpanding(ground: Ground, unitEnds: number, picksPerRow: number) {
  const units = commonMultiple(unitEnds, ground.threading.length) / unitEnds;
  const rows = commonMultiple(picksPerRow, ground.steps.length) / picksPerRow;
  let side = 0;
  let sidePairs = 0;
  let length = 0;
  let lengthPairs = 0;
  for (const colour of [0, 1]) {
    const chart: Chart = (unit, row) => (unit + row) % 2 === colour;
    const wide = expandSlowly(ground, unitEnds, picksPerRow, units + 1, rows, chart);
    wide.drawn.forEach((row, p) => {
      for (let e = 1; e < row.length; e++) {
        if (row[e] === row[e - 1]) continue;
        sidePairs += 1;
        if (wide.raised[p]![e] === wide.raised[p]![e - 1]) side += 1;
      }
    });
    const long = expandSlowly(ground, unitEnds, picksPerRow, units, rows + 1, chart);
    for (let p = 1; p < long.drawn.length; p++) {
      long.drawn[p]!.forEach((drawn, e) => {
        if (drawn === long.drawn[p - 1]![e]) return;
        lengthPairs += 1;
        if (long.raised[p]![e] === long.raised[p - 1]![e]) length += 1;
      });
    }
  }
  return { side, sidePairs, length, lengthPairs };
}

/** The cloth of a ground alone, or of one that is drawn all over, for one repeat. */
export function clothOf(ground: Ground, drawn: boolean) {
  return fromBooleans(
    expandSlowly(ground, ground.threading.length, ground.steps.length, 1, 1, () => drawn).raised,
  );
}
