import { fromCells } from "@drawcord/grid";
import { describe, expect, it } from "vitest";
import { checkGrid } from "../src/index.js";

/** A weave of `n` ends that raises on pick p the ends whose place, shifted by p steps, lies in the first `up`. */
function weave(n: number, step: number, up: number) {
  return fromCells(n, n, (pick, end) => (((end - pick * step) % n) + n) % n < up);
}

/** Broken twill on 4 ends: one end raised a pick, in the order 1 2 4 3. */
const brokenTwill = fromCells(4, 4, (pick, end) => [0, 1, 3, 2][pick] === end);

// Mean float; crossing-over firmness and floating-yarn factors (Morino, Matsudaira, Furutani, Textile Research Journal
// 75, 2005, from memory; the values follow from the definitions); longest float.
const weaves = [
  { name: "plain", grid: weave(2, 1, 1), mean: 1, crossing: 2, floating: 0, longest: 1 },
  { name: "2/2 twill", grid: weave(4, 1, 2), mean: 2, crossing: 1, floating: 1, longest: 2 },
  { name: "1/3 twill", grid: weave(4, 1, 1), mean: 2, crossing: 1, floating: 1, longest: 3 },
  { name: "4-end broken twill", grid: brokenTwill, mean: 2, crossing: 1, floating: 1, longest: 3 },
  { name: "5-end satin", grid: weave(5, 2, 1), mean: 2.5, crossing: 0.8, floating: 1.2, longest: 4 },
  { name: "8-end satin", grid: weave(8, 3, 1), mean: 4, crossing: 0.5, floating: 1.5, longest: 7 },
];

describe("the firmness of a weave follows from the report", () => {
  it.each(weaves)("$name", ({ grid, mean, crossing, floating, longest }) => {
    const { floats, balance, integrity, size } = checkGrid(grid, { repeat: "both" });
    const squares = size.ends * size.picks;
    const { ends, picks } = balance.intersections;
    const crossings = ends.mean * size.ends + picks.mean * size.picks;
    const lengths = Object.values(floats).flatMap((tally) => Object.entries(tally.lengths));
    const passed = lengths.reduce((sum, [length, count]) => sum + (Number(length) - 1) * count, 0);
    expect((2 * squares) / crossings).toBeCloseTo(mean, 12);
    expect(crossings / squares).toBeCloseTo(crossing, 12);
    expect(passed / squares).toBeCloseTo(floating, 12);
    expect(Math.max(...Object.values(floats).map((tally) => tally.longest))).toBe(longest);
    expect(integrity.hangsTogether).toBe(true);
  });
});
