import fc from "fast-check";
import Qty from "js-quantities";
import { describe, expect, it } from "vitest";
import {
  type CountSystemId,
  commonYarns,
  countIn,
  countSystems,
  massOf,
  parseYarn,
  plied,
  printYarn,
  quantity,
  tex,
  toMetric,
  weighed,
} from "../src/index.js";
import { countSystem, length, yarn } from "./arbitraries.js";
import { near } from "./near.js";

describe("yarn counts", () => {
  it("converting there and back gives the same count", () =>
    fc.assert(
      fc.property(yarn(), countSystem(), (one, system) => {
        const there = countIn(one, system).value;
        near(tex({ system, count: there, plies: 1, resultant: false }).value, tex(one).value);
      }),
    ));

  it("going by way of a third system changes nothing", () =>
    fc.assert(
      fc.property(yarn(), countSystem(), countSystem(), (one, by, to) => {
        const middle = { system: by, count: countIn(one, by).value, plies: 1, resultant: false };
        near(countIn(middle, to).value, countIn(one, to).value);
      }),
    ));

  it("agrees with a general-purpose library of units", () => {
    const foreign: Partial<Record<CountSystemId, (count: number) => Qty>> = {
      tex: (n) => new Qty(n, "g/km"),
      denier: (n) => new Qty(n, "g").div(new Qty(9, "km")),
      metric: (n) => new Qty(1, "kg").div(new Qty(n, "km")),
      cotton: (n) => new Qty(1, "lb").div(new Qty(840 * n, "yd")),
      worsted: (n) => new Qty(1, "lb").div(new Qty(560 * n, "yd")),
      "linen-lea": (n) => new Qty(1, "lb").div(new Qty(300 * n, "yd")),
      "woollen-run": (n) => new Qty(1, "lb").div(new Qty(1600 * n, "yd")),
      "yorkshire-skein": (n) => new Qty(1, "lb").div(new Qty(256 * n, "yd")),
      jute: (n) => new Qty(n, "lb").div(new Qty(14_400, "yd")),
    };
    for (const [system, theirs] of Object.entries(foreign) as [CountSystemId, (count: number) => Qty][]) {
      for (const count of [8, 12.5, 20]) {
        const expected = theirs(count).to("g/km").scalar;
        near(tex({ system, count, plies: 1, resultant: false }).value, expected, 1e-9);
      }
    }
  });

  it("the order of plies does not matter", () =>
    fc.assert(
      fc.property(fc.array(yarn(), { minLength: 1, maxLength: 4 }), (yarns) => {
        near(
          plied([...yarns].reverse().map((one) => ({ ...one, plies: 1, resultant: false }))).value,
          plied(yarns.map((one) => ({ ...one, plies: 1, resultant: false }))).value,
        );
      }),
    ));

  it("like plies are unlike plies that happen to be alike, with twist or without", () =>
    fc.assert(
      fc.property(yarn(), fc.double({ min: 0, max: 30, noNaN: true }), (one, twist) => {
        const single = { ...one, plies: 1, resultant: false };
        const options = { twistTakeUp: quantity(twist, "%") };
        near(
          plied(
            Array.from({ length: one.plies }, () => single),
            options,
          ).value,
          one.plies === 1 ? plied([single], options).value : tex({ ...one, resultant: false }, options).value,
        );
      }),
    ));

  it("twist makes a yarn heavier: 10 % taken up, a ninth more", () => {
    near(tex("20 tex x 2", { twistTakeUp: "10 %" }).value, 40 / 0.9);
  });

  it("a length of yarn on the scales gives its count back", () =>
    fc.assert(
      fc.property(yarn(), length(1000, 1e8), (one, long) => {
        near(weighed(long, massOf(one, long)).value, tex(one).value);
      }),
    ));

  it("finer is more lengths in a weight and less weight in a length", () =>
    fc.assert(
      fc.property(yarn(), countSystem(), (one, system) => {
        const finer = {
          ...one,
          system,
          count: countSystems[system].counts === "lengths" ? 22 : 20,
          plies: 1,
          resultant: false,
        };
        const coarser = { ...finer, count: countSystems[system].counts === "lengths" ? 20 : 22 };
        if (system === "yards-a-pound" || system === "metres-in-100-g") return;
        expect(tex(finer).value).toBeLessThan(tex(coarser).value);
      }),
    ));

  it("each system holds its own length in its own weight", () => {
    for (const [system, { length: long, mass }] of Object.entries(countSystems)) {
      const one = (toMetric(mass).value / toMetric(long).value) * 1e6;
      if (one >= 0.5 && one <= 5000)
        near(tex({ system: system as CountSystemId, count: 1, plies: 1, resultant: false }).value, one);
    }
  });

  it("the common yarns have the yards a pound that the trade prints", () => {
    for (const { yarn: one, yardsInAPound } of commonYarns) {
      near(Math.round(countIn(one, "yards-a-pound").value), yardsInAPound);
    }
  });
});

describe("notation", () => {
  it("what is written reads back as the same yarn", () =>
    fc.assert(
      fc.property(yarn(), (one) => {
        const back = parseYarn(printYarn(one));
        expect({ ...back, count: 0 }).toEqual({ ...one, count: 0 });
        near(back.count, one.count);
      }),
    ));

  it.each([
    ["20/2 Ne", "20/2 Ne"],
    ["2/20 Ne", "20/2 Ne"],
    ["Ne 20/2", "20/2 Ne"],
    ["20/2 cotton", "20/2 Ne"],
    ["cotton 20 / 2", "20/2 Ne"],
    ["30s cotton", "30 Ne"],
    ["30's cotton", "30 Ne"],
    ["28/2 nm", "Nm 28/2"],
    ["Nm28/2", "Nm 28/2"],
    ["20/2 worsted", "2/20 worsted"],
    ["NeK 2/20", "2/20 worsted"],
    ["16/1 lea", "16 lea"],
    ["linen 20/2", "20/2 lea"],
    ["20tex x 2", "20 tex x 2"],
    ["20 TEX × 2", "20 tex x 2"],
    ["R40 tex/2", "R 40 tex / 2"],
    ["R 40 tex", "40 tex"],
    ["75 denier", "75 den"],
    ["150 dtex", "150 dtex"],
    ["60/2 spun silk", "60/2 spun silk"],
    ["60 spun silk x 2", "60 spun silk x 2"],
    ["8 Ne x 12", "8 Ne x 12"],
    ["2/24 Yorkshire skein", "2/24 Yorkshire skein"],
    ["6.5 woolen run", "6.5 woollen run"],
    ["1.47 dram", "1.47 dram"],
    ["8 lb jute", "8 jute"],
    ["90 grains", "90 grain"],
    ["8400 yd/lb", "8400 yd/lb"],
    ["8400 yards per pound", "8400 yd/lb"],
    ["840 yd / 8 oz", "1680 yd/lb"],
    ["170 m/50 g", "340 m/100 g"],
    ["340 metres in 100 g", "340 m/100 g"],
  ])("%s is %s", (text, written) => {
    expect(printYarn(parseYarn(text))).toBe(written);
  });
});
