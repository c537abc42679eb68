import { columnCounts, fromBooleans, fromText, rowCounts, toText } from "@drawcord/grid";
import { assert, property } from "fast-check";
import { describe, expect, it } from "vitest";
import {
  brokenByFourths,
  brokenByHalves,
  brokenBySkipping,
  drawdownOf,
  herringbone,
  leastRepeat,
  pointed,
  sameCloth,
  satinOrder,
  twillsOn,
  undulating,
  weaveOf,
} from "../src/index.js";
import { description, ratio } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

/** The drawdown of a description, as its rows from the last pick down. */
function drawn(text: string): string[] {
  return toText(drawdownOf(weaveOf(text))).split("\n");
}

describe("the weaves", () => {
  it.each([
    ["plain", [".#", "#."]],
    ["hopsack 2/2", ["..##", "..##", "##..", "##.."]],
    ["hopsack 2/1 by 1/2", [".##", "#..", "#.."]],
    ["warp rib 2/2", [".#", ".#", "#.", "#."]],
    ["weft rib 2/1", ["..#", "##."]],
    ["twill 1/2", ["..#", ".#.", "#.."]],
    ["twill 2/1 s", [".##", "#.#", "##."]],
    ["twill 2/1/1/2 z", ["#.#..#", ".#..##", "#..##.", "..##.#", ".##.#.", "##.#.."]],
    ["twill 2/2 step 3", [".##.", "..##", "#..#", "##.."]],
    ["pointed twill 1/3", ["...#..", "..#.#.", ".#...#", "#....."]],
    ["herringbone twill 2/2 after 4", ["#..#.##.", "..##..##", ".##.#..#", "##..##.."]],
    ["broken twill 1/3", ["..#.", "...#", ".#..", "#..."]],
    ["broken twill 1/3 along picks", ["..#.", "...#", ".#..", "#..."]],
    ["satin 5 step 2", ["...#.", ".#...", "....#", "..#..", "#...."]],
    ["satin 5 step 2 s", [".#...", "...#.", "#....", "..#..", "....#"]],
    ["satin 5 warp-faced", ["###.#", "#.###", "####.", "##.##", ".####"]],
    ["satin 5 plus right 1", ["...##", ".##..", "#...#", "..##.", "##..."]],
    ["corkscrew 5", [".#.##", ".##.#", "#.#.#", "#.##.", "##.#."]],
  ])("%s", (text, rows) => {
    expect(drawn(text)).toEqual(rows);
  });

  it("bind as the handbooks order them", () => {
    // J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 223-225; A. Wolfensberger, Theory of Silk Weaving, 1921, p. 34.
    expect(weaveOf("satin 5").raised.flat()).toEqual([1, 3, 5, 2, 4]);
    expect(weaveOf("satin 8").raised.flat()).toEqual([1, 4, 7, 2, 5, 8, 3, 6]);
    expect(weaveOf("satin 6").raised.flat()).toEqual([1, 3, 5, 2, 6, 4]);
    expect(weaveOf("satin 4").raised.flat()).toEqual([1, 2, 4, 3]);
  });

  it("rearranging an 8-end satin in its own order twice restores the twill", () => {
    // J. T. Taylor, Cotton Weaving and Designing, 1909, p. 241.
    const order = satinOrder(8, 3);
    const twice = order.map((end) => order[end - 1]!);
    const satinEnds = drawdownOf({ ...weaveOf("satin 8 step 3"), threading: order });
    const twill = drawdownOf(weaveOf("twill 1/7"));
    expect(satinEnds.equals(twill)).toBe(true);
    expect(twice).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it("z and s of one twill are mirrors", () =>
    assert(
      property(ratio, (found) => {
        const name = `twill ${found.join("/")}`;
        const flipped = toText(drawdownOf(weaveOf(`twill ${found.toReversed().join("/")} s`)))
          .split("\n")
          .map((row) =>
            [...row].reverse().join("").replaceAll("#", "x").replaceAll(".", "#").replaceAll("x", "."),
          );
        const mirror = fromText(flipped.join("\n"));
        // Read backwards a ratio begins with its last number, which is down: the mirror is that of the other face.
        expect(sameCloth(mirror, drawdownOf(weaveOf(name)))).toBe(true);
      }),
    ));

  it("spread plain weave over the ends that a recipe counts on", () => {
    expect(weaveOf("plain", { ends: 4 })).toEqual({
      shafts: 4,
      threading: [1, 2, 3, 4],
      raised: [
        [1, 3],
        [2, 4],
      ],
    });
    expect(weaveOf("broken twill", { ends: 8 }).threading).toEqual([1, 2, 3, 4, 8, 7, 6, 5]);
    expect(weaveOf("twill", { ends: 3 }).raised.flat()).toEqual([1, 2, 3]);
  });

  it("bind every end and every pick, unless points are added to them", () =>
    assert(
      property(description, (found) => {
        const { rows, columns, ...bound } = countsOf(weaveOf({ base: found.base }));
        for (const raised of bound.picks) expect(raised > 0 && raised < columns).toBe(true);
        for (const raised of bound.ends) expect(raised > 0 && raised < rows).toBe(true);
      }),
    ));

  it("added points only ever raise", () =>
    assert(
      property(description, ({ base, plus }) => {
        const before = drawdownOf(weaveOf({ base }));
        const after = drawdownOf(weaveOf({ base, ...(plus && { plus }) }));
        const raised = (pick: number, end: number) =>
          before.get(pick, end) ||
          (plus ?? []).some(({ right, above }) =>
            before.get(around(pick - above, before.rows), around(end - right, before.columns)),
          );
        const slow = fromBooleans(
          Array.from({ length: before.rows }, (_, pick) =>
            Array.from({ length: before.columns }, (_, end) => raised(pick, end)),
          ),
        );
        expect(after.equals(slow)).toBe(true);
      }),
    ));
});

function around(i: number, n: number): number {
  return ((i % n) + n) % n;
}

function countsOf(weave: ReturnType<typeof weaveOf>) {
  const drawdown = drawdownOf(weave);
  return {
    rows: drawdown.rows,
    columns: drawdown.columns,
    picks: Array.from(rowCounts(drawdown)),
    ends: Array.from(columnCounts(drawdown)),
  };
}

describe("the orders of reversed and broken twills", () => {
  it("number their ends as the handbooks' ways give them (common practice)", () => {
    expect(pointed(4)).toEqual([1, 2, 3, 4, 3, 2]);
    expect(herringbone(4, 4)).toEqual([1, 2, 3, 4, 2, 1, 4, 3]);
    expect(herringbone(6, 6)).toEqual([1, 2, 3, 4, 5, 6, 3, 2, 1, 6, 5, 4]);
    expect(brokenByHalves(6)).toEqual([1, 2, 3, 6, 5, 4]);
    expect(brokenByHalves(5)).toEqual([1, 2, 3, 5, 4]);
    expect(brokenByFourths(8)).toEqual([1, 2, 4, 3, 5, 6, 8, 7]);
    expect(brokenBySkipping(4, 2, 1)).toEqual([1, 2, 4, 1, 3, 4, 2, 3]);
    expect(undulating(4, [1, 1, 0])).toEqual([1, 2, 3, 3, 4, 1]);
  });

  it("herringbone after half the ends is the twill broken by halves, on an even number of ends", () => {
    for (let n = 4; n <= 24; n += 2) expect(herringbone(n, n / 2)).toEqual(brokenByHalves(n));
  });

  it("a herringbone of a balanced twill is cut by every break: what the last end raises the next lowers", () => {
    for (const text of [
      "herringbone twill 2/2 after 8",
      "herringbone twill 3/3 after 6",
      "herringbone twill 4/4 after 5",
    ]) {
      const cloth = drawdownOf(weaveOf(text));
      const half = cloth.columns / 2;
      for (const [last, next] of [
        [half - 1, half],
        [cloth.columns - 1, 0],
      ] as const) {
        for (let pick = 0; pick < cloth.rows; pick++)
          expect(cloth.get(pick, last)).not.toBe(cloth.get(pick, next));
      }
    }
  });

  it("are refused where they cannot be", () => {
    expectRefusal(
      () => brokenByFourths(6),
      "bad-size",
      "6 ends do not break by fourths; 8, 12, 16 and so on do",
    );
    expectRefusal(() => undulating(4, []), "bad-order", "an undulating order needs at least one move");
    expectRefusal(
      () => herringbone(4, 1),
      "bad-size",
      "the ends before a herringbone turns must be a whole number of at least 2, not 1",
    );
  });
});

describe("the twills on n ends", () => {
  it("are as many as the handbook counts", () => {
    // J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 219-222: both faces.
    expect([3, 4, 5, 6].map((n) => twillsOn(n).length)).toEqual([2, 3, 6, 9]);
  });

  it("are OEIS A001037, and up to face A000046, to 12 ends", () => {
    const numbers = Array.from({ length: 11 }, (_, i) => i + 2);
    expect(numbers.map((n) => twillsOn(n).length)).toEqual([1, 2, 3, 6, 9, 18, 30, 56, 99, 186, 335]);
    expect(numbers.map((n) => twillsOn(n, { upToFace: true }).length)).toEqual([
      1, 1, 2, 3, 5, 8, 14, 21, 39, 62, 112,
    ]);
  });

  it("are different cloths, each on just so many ends", () => {
    for (const n of [4, 6, 7]) {
      const cloths = twillsOn(n).map((found) =>
        drawdownOf(weaveOf({ base: { kind: "twill", ratio: found } })),
      );
      for (const [i, cloth] of cloths.entries()) {
        expect(leastRepeat(cloth).columns).toBe(n);
        expect(cloths.slice(i + 1).some((other) => sameCloth(cloth, other))).toBe(false);
      }
    }
  });

  it("are too many to list above 16 ends", () => {
    expectRefusal(
      () => twillsOn(17),
      "too-large",
      "the twills on 17 ends are too many to list; 16 ends are the most",
    );
  });
});

describe("a weave that cannot be", () => {
  it.each([
    ["satin 6 step 2", "bad-step", 'no step makes a satin on 6 ends; "satin 6" is the irregular one'],
    [
      "satin 9 step 3",
      "bad-step",
      "step 3 on 9 ends leaves ends unbound, for both are divisible by 3; the steps of a satin on 9 ends are 2, 4, 5, 7",
    ],
    ["satin 1", "bad-step", 'no step makes a satin on 1 end; the least is "satin 5"'],
    ["satin", "bad-ends", 'a satin needs its number of ends, as in "satin 8" or "satin 8 step 3"'],
    ["satin 5 order 1 2 3", "bad-order", "the order 1 2 3 binds 3 ends; a satin on 5 ends binds 5"],
    [
      "satin order 1 3 5 2 2",
      "bad-order",
      "the order 1 3 5 2 2 never binds end 4; each of the 5 ends must come once",
    ],
    ["twill", "bad-ratio", 'a twill needs its ratio of ends up and down, as in "twill 2/2"'],
    [
      "twill 2/1/1",
      "bad-ratio",
      "the ratio 2/1/1 has 3 numbers; it takes pairs of up and down, as in 2/2 or 2/1/1/2",
    ],
    ["twill 1/0", "bad-ratio", "the ratio 1/0 holds 0; each number is at least 1"],
    [
      "twill 1/3 step 2",
      "bad-step",
      "step 2 never binds end 2 of a twill 1/3; steps that share no divisor with 4 do: 1, 3",
    ],
    ["hopsack 0/2", "bad-size", "a group of threads must be a whole number of at least 1, not 0"],
    [
      "undulating twill 2/2 moves 0",
      "unbound",
      "undulating twill 2/2 moves 0 never binds pick 1 of its repeat; every end and every pick must go over and under",
    ],
    [
      "broken twill 2/2 take 999999 skip 2",
      "too-large",
      "a twill broken by taking 999999 and skipping 2 repeats on 3999996 threads; a repeat may have 1024 at the most",
    ],
    [
      `undulating twill 2/2 moves ${Array(1025).fill(4).join(" ")}`,
      "too-large",
      "an undulating order of these moves repeats on 1025 threads; a repeat may have 1024 at the most",
    ],
    [
      `satin order ${Array(65).fill(1).join(" ")}`,
      "too-large",
      `satin order ${"1 ".repeat(24)}… needs 65 ground shafts; a ground harness may have 64 at the most`,
    ],
    [
      "hopsack 9999/1",
      "too-large",
      "this grouped weave repeats on 10000 threads; a repeat may have 1024 at the most",
    ],
    ["corkscrew 6", "bad-ends", "a corkscrew needs an uneven number of ends, at least 5, not 6; 7 would do"],
    ["satin 200", "too-large", "satin 200 needs 200 ground shafts; a ground harness may have 64 at the most"],
    [
      "herringbone twill 2/2 after 900",
      "too-large",
      "a herringbone repeats on 1800 threads; a repeat may have 1024 at the most",
    ],
  ] as const)("%s", (text, code, sentence) => {
    expectRefusal(() => weaveOf(text), code, sentence);
  });

  it("does not add up to the ends that a recipe states", () => {
    expectRefusal(
      () => weaveOf("twill 1/4", { ends: 4 }),
      "bad-ends",
      "twill 1/4 is woven on 5 ends, not on 4; leave the ends out, or give a weave that adds up to 4",
    );
    expectRefusal(
      () => weaveOf("broken twill", { ends: 1 }),
      "bad-size",
      "the number of ends of a broken twill must be a whole number of at least 2, not 1",
    );
  });

  it("needs more shafts than the loom has", () => {
    expectRefusal(
      () => weaveOf("satin 200", { loomShafts: 8 }),
      "too-large",
      "satin 200 needs 200 ground shafts and the loom has 8; it could weave satin 8 step 3, broken twill 1/7 or twill 1/7",
    );
    expectRefusal(
      () => weaveOf("twill 2/2", { loomShafts: 2 }),
      "too-large",
      "twill 2/2 needs 4 ground shafts and the loom has 2; it could weave plain",
    );
  });
});
