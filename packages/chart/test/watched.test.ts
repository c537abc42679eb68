import { fromCells } from "@drawcord/grid";
import { describe, expect, it } from "vitest";
import { chartCloth } from "../src/index.js";

/** 16 columns without a pattern, which few shafts must bring together. */
const wanted = fromCells(
  12,
  16,
  (row, unit) => ((Math.imul(row * 16 + unit + 1, 0x9e3779b1) >>> 13) & 1) === 1,
);

describe("the search for the nearest chart", () => {
  it("tells how far it is", () => {
    const told: number[][] = [];
    chartCloth(wanted, { shafts: 6, progress: (...of) => told.push(of) });
    expect(told[0]).toEqual([0, told[0]![1]]);
    expect(told.length).toBeGreaterThan(1);
  });

  it("ends where its signal says so, with what it has and a bound that stays true", () => {
    const whole = chartCloth(wanted, { shafts: 6 });
    const ended = chartCloth(wanted, { shafts: 6, signal: { aborted: true } });
    expect(ended.changes).toBeGreaterThanOrEqual(whole.changes);
    expect(ended.atLeast).toBeLessThanOrEqual(whole.changes);
    let looks = 0;
    const signal = {
      get aborted() {
        looks++;
        return looks > 2;
      },
    };
    chartCloth(wanted, { shafts: 6, signal });
    expect(looks).toBeLessThan(6);
  });
});
