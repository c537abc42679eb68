/**
 * A chart of 600 rows by 600 units on 40 pattern shafts: how long the nearest picture takes, how many squares it changes,
 * and how many any picture must change. Run after a build: npm run build && node tests/bench/chart.mjs
 */
import { chartCloth } from "@drawcord/chart";
import { fromCells } from "@drawcord/grid";
import { parseThreading, printThreading } from "@drawcord/units";

const SIDE = 600;
const SHAFTS = 40;

/** Numbers from 0 to 1, the same in every run (the constants of Numerical Recipes). */
function numbers(seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Columns of so many patterns in any order, a share of their squares gone astray. */
function patterned(patterns, stray) {
  const next = numbers(600);
  const columns = Array.from({ length: patterns }, () => Array.from({ length: SIDE }, () => next() < 0.4));
  const order = Array.from({ length: SIDE }, () => Math.floor(next() * patterns));
  return fromCells(SIDE, SIDE, (row, unit) => columns[order[unit]][row] !== next() < stray);
}

/** A drawing of soft shapes. */
function drawn() {
  return fromCells(SIDE, SIDE, (row, unit) => {
    return Math.sin(row / 17) * Math.cos(unit / 23) + Math.sin((row + unit) / 31) > 0.3;
  });
}

const charts = [
  ["40 patterns, 1 % of the squares astray", () => patterned(40, 0.01)],
  ["60 patterns, 1 % of the squares astray", () => patterned(60, 0.01)],
  ["a drawing of soft shapes", drawn],
  ["noise", () => patterned(SIDE, 0.5)],
];

console.log(`charts of ${SIDE} x ${SIDE}, ${SHAFTS} pattern shafts`);
for (const [name, make] of charts) {
  const chart = make();
  const start = performance.now();
  const { changes, atLeast, threading } = chartCloth(chart, { shafts: SHAFTS });
  const seconds = ((performance.now() - start) / 1000).toFixed(2);
  if (JSON.stringify(parseThreading(printThreading(threading))) !== JSON.stringify(threading)) {
    throw new Error("the threading does not read back");
  }
  console.log(`${name}: ${changes} squares changed, none changes fewer than ${atLeast}; ${seconds} s`);
}
