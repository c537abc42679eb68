import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  calculate,
  chains,
  convert,
  dentsOf,
  endsInDents,
  firmness,
  firmnessInWords,
  interlacing,
  parseReed,
  parseSley,
  printDents,
  printReed,
  printSley,
  quantity,
  settInReed,
  sleyings,
  spread,
  toMetric,
} from "../src/index.js";
import { anyDrawdown, length, reed, share } from "./arbitraries.js";
import { near } from "./near.js";

const ends = () => fc.integer({ min: 1, max: 10_000 });
const sett = () => fc.double({ min: 2, max: 60, noNaN: true }).map((value) => quantity(value, "per cm"));

describe("each calculation gives its input back by its reverse", () => {
  it("ends, sett and width in the reed", () =>
    fc.assert(
      fc.property(ends(), sett(), (n, S) => {
        const W = calculate("width-in-reed", { n, S });
        expect(calculate("ends-in-width", { W, S }).value).toBe(n);
        near(calculate("sett-from-width", { n, W }).value, S.value);
      }),
    ));

  it("crimp and contraction are not the same number, and each gives the other", () =>
    fc.assert(
      fc.property(length(1000, 1e6), share(75), (cloth, k) => {
        const yarn = calculate("yarn-in-cloth", { L_c: cloth, k });
        near(calculate("cloth-of-yarn", { L_y: yarn, k }).value, toMetric(cloth).value);
        const crimp = calculate("crimp", { L_y: yarn, L_c: cloth }).value;
        const contraction = calculate("contraction", { L_y: yarn, L_c: cloth }).value;
        expect(Math.abs(crimp - k.value)).toBeLessThan(1e-9);
        expect(contraction).toBeLessThanOrEqual(crimp);
        expect(
          Math.abs(
            calculate("contraction-of-crimp", { k: crimp === 0 ? k : quantity(crimp, "%") }).value -
              contraction,
          ),
        ).toBeLessThan(1e-9);
        expect(
          Math.abs(calculate("crimp-of-contraction", { a: quantity(contraction, "%") }).value - crimp),
        ).toBeLessThan(1e-9);
      }),
    ));

  it("shrinkage and draw-in", () =>
    fc.assert(
      fc.property(length(10, 1e5), share(75), (size, s) => {
        const before = calculate("size-before-shrinkage", { f: size, s });
        near(calculate("size-after-shrinkage", { b: before, s }).value, toMetric(size).value);
        const reedWidth = calculate("width-before-draw-in", { b: size, d: s });
        near(calculate("width-after-draw-in", { W: reedWidth, d: s }).value, toMetric(size).value);
      }),
    ));

  it("a warp for so many pieces gives so many pieces, and nothing is left over", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        length(50, 5000),
        length(0, 500),
        length(0, 2000),
        length(0, 2000),
        (N, p, g, q, w) => {
          const L = calculate("warp-length", { N, p, g, q, w });
          expect(calculate("pieces-of-warp", { L, p, g, q, w }).value).toBe(N);
          expect(calculate("warp-left-over", { L, N, p, g, q, w }).value).toBeLessThan(1e-6);
        },
      ),
    ));

  it("picks and the length that they weave", () =>
    fc.assert(
      fc.property(ends(), sett(), (p, P) => {
        expect(calculate("picks-in-length", { P, c: calculate("length-of-picks", { p, P }) }).value).toBe(p);
      }),
    ));

  it("the weight of a length and the length of a weight", () =>
    fc.assert(
      fc.property(length(1000, 1e7), (l) => {
        const m = calculate("mass-of-length", { T: "36.9 tex", l });
        near(calculate("length-of-mass", { m, T: "36.9 tex" }).value, convert(toMetric(l), "m").value);
      }),
    ));
});

describe("how numbers go together", () => {
  it("doubling the ends doubles the yarn and the width", () =>
    fc.assert(
      fc.property(ends(), sett(), length(100, 1e5), (n, S, L) => {
        near(calculate("warp-yarn", { n: 2 * n, L }).value, 2 * calculate("warp-yarn", { n, L }).value);
        near(
          calculate("width-in-reed", { n: 2 * n, S }).value,
          2 * calculate("width-in-reed", { n, S }).value,
        );
      }),
    ));

  it("a longer waste never gives more pieces", () =>
    fc.assert(
      fc.property(
        length(3000, 50_000),
        length(100, 2000),
        length(0, 2000),
        length(0, 1000),
        (L, p, w, more) => {
          const longer = quantity(toMetric(w).value + toMetric(more).value, "mm");
          expect(calculate("pieces-of-warp", { L, p, w: longer }).value).toBeLessThanOrEqual(
            calculate("pieces-of-warp", { L, p, w }).value,
          );
        },
      ),
    ));

  it("packages are enough, and one fewer is not", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 10_000, noNaN: true }),
        fc.double({ min: 10, max: 500, noNaN: true }),
        (m, q) => {
          const found = calculate("packages-by-mass", { m: quantity(m, "g"), q: quantity(q, "g") }).value;
          expect(found * q).toBeGreaterThanOrEqual(m * (1 - 1e-9));
          expect((found - 1) * q).toBeLessThan(m);
        },
      ),
    ));
});

describe("reed and sley", () => {
  it("a pattern's sett is what its ends make in the reed", () =>
    fc.assert(
      fc.property(sett(), reed(), (S, one) => {
        fc.pre(S.value / dentsOf(one).value < 40);
        const found = sleyings(S, one);
        expect(found.length).toBeGreaterThan(0);
        for (const { sley, sett: made, error } of found) {
          const mean = sley.reduce((sum, e) => sum + e, 0) / sley.length;
          near(made.value, dentsOf(one).value * mean);
          near(made.value, S.value * (1 + error / 100), 1e-9);
          expect(Math.max(...sley) - Math.min(...sley)).toBeLessThanOrEqual(1);
        }
      }),
    ));

  it("no pattern of up to 8 dents comes nearer than the first", () =>
    fc.assert(
      fc.property(sett(), reed(), (S, one) => {
        const wanted = S.value / dentsOf(one).value;
        fc.pre(wanted < 40);
        let least = Number.POSITIVE_INFINITY;
        for (let dents = 1; dents <= 8; dents++) {
          for (let total = 1; total <= 330; total++)
            least = Math.min(least, Math.abs(total / dents / wanted - 1) * 100);
        }
        const [best] = sleyings(S, one);
        expect(Math.abs(Math.abs(best!.error) - least)).toBeLessThan(1e-7);
      }),
    ));

  it("the exact pattern is found and alone, the shortest of its kind", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 8 }),
        reed(),
        (total, dents, one) => {
          const [first, ...others] = sleyings(settInReed(one, spread(total, dents)), one);
          expect(others).toEqual([]);
          expect(first!.error).toBe(0);
          near(first!.sley.reduce((sum, e) => sum + e, 0) / first!.sley.length, total / dents);
          expect(first!.sley.length).toBeLessThanOrEqual(dents);
        },
      ),
    ));

  it("of two patterns as near as each other, the shorter comes first", () => {
    // 17 1/2 ends in 10 dents: 2 a dent is as much above it as 1-2 is below.
    const found = sleyings("17.5 per cm", "10 per cm", { longest: 2 });
    expect(found.map(({ sley }) => sley)).toEqual([[2], [1, 2], [1]]);
    near(found[0]!.error, -found[1]!.error);
  });

  it("ends in dents add up to the ends, and no dent but the last is short", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 500 }),
        fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 5 }),
        (n, sley) => {
          fc.pre(sley.some((e) => e > 0));
          const dents = endsInDents(n, sley);
          expect(dents.reduce((sum, e) => sum + e, 0)).toBe(n);
          dents.slice(0, -1).forEach((e, i) => {
            expect(e).toBe(sley[i % sley.length]);
          });
        },
      ),
    ));

  it("the dents are printed as a weaver reads them", () => {
    expect(printDents(15, [1, 2, 2])).toBe("(1-2-2) 3 times");
    expect(printDents(5, [1, 2, 2])).toBe("(1-2-2) 1 time");
    expect(printDents(3, [1, 2, 2])).toBe("1-2");
    expect(printDents(540, [2])).toBe("2 a dent in 270 dents");
  });

  it("spreads the ends evenly: any stretch of dents holds its share to within one", () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 9 }), (total, dents) => {
        const sley = spread(total, dents);
        for (let from = 0; from < dents; from++) {
          for (let to = from + 1; to <= dents; to++) {
            const held = sley.slice(from, to).reduce((sum, e) => sum + e, 0);
            expect(Math.abs(held - ((to - from) * total) / dents)).toBeLessThan(1);
          }
        }
      }),
    ));

  it("reeds and sleys read back as they are written", () =>
    fc.assert(
      fc.property(
        reed(),
        fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 }),
        (one, sley) => {
          expect(parseReed(printReed(one))).toEqual(one);
          expect(parseSley(printSley(sley))).toEqual(sley);
        },
      ),
    ));
});

describe("firmness", () => {
  it("crossings and floats of both systems and faces make 2, and the mean float is 2 over the crossings", () =>
    fc.assert(
      fc.property(anyDrawdown(), (weave) => {
        let found: ReturnType<typeof firmness>;
        try {
          found = firmness(weave);
        } catch {
          // Nothing interlaces: there is no mean float.
          return;
        }
        near(found.crossingOver.value + found.floatingYarn.value, 2);
        near(found.meanFloat.value * found.crossingOver.value, 2);
      }),
    ));

  it("crossings and the longest float are those of a regular expression over the printed threads", () =>
    fc.assert(
      fc.property(anyDrawdown(), (weave) => {
        const picks = Array.from({ length: weave.rows }, (_, r) =>
          Array.from({ length: weave.columns }, (_, c) => (weave.get(r, c) ? "#" : ".")).join(""),
        );
        const printed = [
          ...picks,
          ...Array.from({ length: weave.columns }, (_, c) => picks.map((pick) => pick[c]).join("")),
        ];
        const runs = printed.map((thread) => {
          // The last interlacement is joined to the first: begin at a change.
          const start = [...thread].findIndex((cell, i) => cell !== thread.at(i - 1));
          return start < 0 ? [] : `${thread.slice(start)}${thread.slice(0, start)}`.match(/#+|\.+/g)!;
        });
        const crossings = runs.reduce((sum, one) => sum + one.length, 0);
        fc.pre(crossings > 0);
        const found = firmness(weave);
        near(found.crossingOver.value, crossings / (weave.rows * weave.columns));
        const longest = runs.some((one) => one.length === 0)
          ? Number.POSITIVE_INFINITY
          : Math.max(...runs.flat().map((run) => run.length));
        expect(found.longestFloat).toBe(longest);
        near(
          interlacing(weave).warp.intersections * weave.rows +
            interlacing(weave).weft.intersections * weave.columns,
          crossings,
        );
      }),
    ));

  it("face and back are as firm as each other, and so is the cloth turned a quarter", () =>
    fc.assert(
      fc.property(anyDrawdown(), (weave) => {
        const back = { ...weave, get: (row: number, column: number) => !weave.get(row, column) };
        const turned = {
          rows: weave.columns,
          columns: weave.rows,
          get: (row: number, column: number) => weave.get(column, row),
        };
        expect(interlacing(back)).toEqual(interlacing(weave));
        expect(interlacing(turned).warp).toEqual(interlacing(weave).weft);
      }),
    ));

  it("says in words how firm a cloth is, closer being firmer", () => {
    const words = [40, 60, 70, 80, 90, 99, 105].map((value) => firmnessInWords(quantity(value, "%")));
    expect(new Set(words).size).toBe(7);
    expect(words[3]).toBe("a balanced working sett");
    expect(words[6]).toBe("closer than the yarn allows: it will not beat in");
  });
});

describe("warping", () => {
  it("the chains hold all ends, and the last pass is not empty", () =>
    fc.assert(
      fc.property(
        ends(),
        fc.constantFrom(2 as const, 4 as const),
        fc.integer({ min: 1, max: 40 }),
        (n, threads, doublePassesInAChain) => {
          const warping = chains(n, { threads, doublePassesInAChain });
          expect(warping.endsInChains.reduce((sum, one) => sum + one, 0)).toBe(n);
          expect(warping.endsInChains.every((one) => one > 0)).toBe(true);
          expect(warping.spare).toBeGreaterThanOrEqual(0);
          expect(warping.spare).toBeLessThan(threads);
          expect(warping.doublePasses.value * 2).toBeGreaterThanOrEqual(warping.passes.value);
        },
      ),
    ));
});
