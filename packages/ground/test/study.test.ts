import {
  type BitGrid,
  columnCounts,
  fromBooleans,
  fromCells,
  fromText,
  rowCounts,
  tile,
  toBooleans,
  toText,
} from "@drawcord/grid";
import fc, { assert, property } from "fast-check";
import { describe, expect, it } from "vitest";
import {
  backOf,
  counterchange,
  drawdownOf,
  floatsOf,
  irregularSatins,
  isIsonemal,
  leastRepeat,
  lineOf,
  mirrored,
  nameOf,
  propertiesOf,
  sameCloth,
  satinSteps,
  shaftsOf,
  treadled,
  turned,
  twillAngle,
  untreadled,
  weaveOf,
} from "../src/index.js";
import { description } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

const cloth = fc
  .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(fc.boolean(), { minLength: columns, maxLength: columns }), {
      minLength: rows,
      maxLength: rows,
    }),
  )
  .map(fromBooleans);

const square = fc
  .integer({ min: 1, max: 4 })
  .chain((n) =>
    fc.array(fc.array(fc.boolean(), { minLength: n, maxLength: n }), { minLength: n, maxLength: n }),
  )
  .map(fromBooleans);

const described = description.map((found) => drawdownOf(weaveOf(found)));
const anyCloth = fc.oneof(cloth, described);

function measured(text: string) {
  return propertiesOf(drawdownOf(weaveOf(text)));
}

describe("the forms of a weave", () => {
  it("turned four times it is itself", () =>
    assert(
      property(anyCloth, (grid) => {
        expect(turned(turned(turned(turned(grid)))).equals(grid)).toBe(true);
      }),
    ));

  it("turning lays warps where wefts were: face floats of one are face floats of the other", () =>
    assert(
      property(anyCloth, (grid) => {
        const before = floatsOf(grid);
        const after = floatsOf(turned(grid));
        expect([after.warpFace, after.weftFace]).toEqual([before.weftFace, before.warpFace]);
      }),
    ));

  it("the counterchange swaps the faces", () =>
    assert(
      property(anyCloth, (grid) => {
        const { warpFace, warpBack, weftFace, weftBack } = floatsOf(grid);
        const swapped = { warpFace: warpBack, warpBack: warpFace, weftFace: weftBack, weftBack: weftFace };
        expect(floatsOf(counterchange(grid))).toEqual(swapped);
        expect(floatsOf(backOf(grid))).toEqual(swapped);
        expect(counterchange(counterchange(grid)).equals(grid)).toBe(true);
      }),
    ));

  it("the mirror turns a z line into an s line", () => {
    expect(nameOf(mirrored(drawdownOf(weaveOf("twill 2/1/1/3"))))).toBe("twill 2/3/1/1 s");
    expect(nameOf(mirrored(drawdownOf(weaveOf("satin 8 step 3"))))).toBe("satin 8 step 5");
  });
});

describe("the least repeat", () => {
  it("tiled gives the weave back, and has no lesser repeat", () =>
    assert(
      property(
        anyCloth,
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 1, max: 3 }),
        (grid, down, across) => {
          const whole = tile(grid, grid.rows * down, grid.columns * across);
          const least = leastRepeat(whole);
          expect(tile(least, whole.rows, whole.columns).equals(whole)).toBe(true);
          expect(least.equals(leastRepeat(grid))).toBe(true);
          expect(leastRepeat(least).equals(least)).toBe(true);
        },
      ),
    ));

  it("is found in a piece cut anywhere", () =>
    assert(
      property(described, fc.nat({ max: 7 }), fc.nat({ max: 7 }), (grid, rows, columns) => {
        const least = leastRepeat(grid);
        const piece = tile(grid, 2 * grid.rows + rows, 2 * grid.columns + columns);
        expect(leastRepeat(piece, { piece: true }).equals(least)).toBe(true);
      }),
    ));
});

describe("the shafts and treadles of a drawdown", () => {
  it("threading, tie-up and treadling put together give the drawdown back", () =>
    assert(
      property(anyCloth, (grid) => {
        const weave = treadled(shaftsOf(grid));
        expect(drawdownOf(untreadled(weave)).equals(grid)).toBe(true);
        // The least: no two shafts and no two treadles alike.
        const slow = toText(grid).split("\n").reverse();
        expect(weave.tieUp.length).toBe(new Set(slow).size);
        const columns = Array.from({ length: grid.columns }, (_, end) =>
          slow.map((row) => row[end]).join(""),
        );
        expect(weave.shafts).toBe(new Set(columns).size);
        expect(weave.threading).toEqual(columns.map((column) => [...new Set(columns)].indexOf(column) + 1));
      }),
    ));
});

describe("the name of a drawdown", () => {
  it.each([
    "plain",
    "hopsack 2/2",
    "hopsack 2/1 by 1/2",
    "hopsack 3/2 by 2/2",
    "warp rib 2/2",
    "weft rib 3/1",
    "twill 1/3",
    "twill 2/2 s",
    "twill 2/1/1/2",
    "twill 3/1/1/3 step 3 s",
    "pointed twill 2/2",
    "pointed twill 1/3 along picks",
    "undulating twill 4/4 moves 0 1 1 2",
    "herringbone twill 2/2 after 8",
    "herringbone twill 2/2 after 8 along picks",
    "broken twill 1/3",
    "broken twill 3/1",
    "broken twill 2/2",
    "broken twill 1/7",
    "broken twill 1/7 by fourths",
    "broken twill 3/3 take 3 skip 2",
    "satin 5 step 2",
    "satin 8 step 5",
    "satin 8 step 3 warp-faced",
    "satin 6",
    "satin 7 order 1 3 6 2 5 7 4",
    "corkscrew 7",
    "corkscrew 9 s",
  ])("%s is called what it is", (text) => {
    expect(nameOf(drawdownOf(weaveOf(text)))).toBe(text);
  });

  it("the handbooks' three irregular orders on 6 ends are one cloth, begun at different places, and its own mirror", () => {
    for (const order of irregularSatins(6)) {
      const grid = drawdownOf(weaveOf(`satin 6 order ${order.join(" ")}`));
      expect(nameOf(grid)).toBe("satin 6");
      expect(nameOf(mirrored(grid))).toBe("satin 6");
    }
  });

  it("is of a weave that is the same cloth", () =>
    assert(
      property(anyCloth, (grid) => {
        const name = nameOf(grid);
        if (name === undefined) return;
        const named = drawdownOf(weaveOf(name));
        expect(sameCloth(leastRepeat(named), leastRepeat(grid))).toBe(true);
        expect(nameOf(named)).toBe(name);
      }),
    ));

  it("every plain, grouped, straight, pointed and herringbone weave and every corkscrew has one", () =>
    assert(
      property(description, ({ base }) => {
        const free =
          base.kind === "undulating twill" || base.kind === "broken twill" || base.kind === "satin";
        // A ratio that is a shorter one twice over is another twill, and its order another order.
        const twice =
          "ratio" in base &&
          base.ratio &&
          leastRepeat(drawdownOf(weaveOf({ base: { kind: "twill", ratio: base.ratio } })));
        if (free || (twice && twice.columns < base.ratio.reduce((a, b) => a + b))) return;
        expect(nameOf(drawdownOf(weaveOf({ base })))).toBeDefined();
      }),
    ));

  it("does not depend on the end and the pick it is begun at", () =>
    assert(
      property(description, fc.nat({ max: 20 }), fc.nat({ max: 20 }), ({ base }, pick, end) => {
        const grid = leastRepeat(drawdownOf(weaveOf({ base })));
        const begun = fromCells(grid.rows, grid.columns, (row, column) =>
          grid.get((row + pick) % grid.rows, (column + end) % grid.columns),
        );
        expect(sameCloth(begun, grid)).toBe(true);
        expect(nameOf(begun)).toBe(nameOf(grid));
      }),
    ));

  it("is none where a thread lies loose or the weave is nobody's", () => {
    expect(nameOf(fromBooleans([[true, true]]))).toBeUndefined();
    expect(
      nameOf(
        fromBooleans([
          [true, false, false],
          [true, true, false],
          [false, true, true],
        ]),
      ),
    ).toBeUndefined();
  });
});

describe("the properties of a weave", () => {
  // F = R/I, J. T. Taylor, Cotton Weaving and Designing, 1909, p. 338; CFF and FYF by their definitions (derived): F, CFF,
  // FYF, longest float.
  it.each([
    ["plain", 1, 2, 0, 1],
    ["twill 2/2", 2, 1, 1, 2],
    ["twill 1/3", 2, 1, 1, 3],
    ["broken twill 1/3", 2, 1, 1, 3],
    ["satin 5", 2.5, 0.8, 1.2, 4],
    ["satin 8 step 3", 4, 0.5, 1.5, 7],
  ])("%s: F %d, CFF %d, FYF %d, longest float %d", (text, meanFloat, crossing, floating, longest) => {
    const found = measured(text);
    expect(found.meanFloat).toBeCloseTo(meanFloat, 12);
    expect(found.firmness.crossing).toBeCloseTo(crossing, 12);
    expect(found.firmness.floating).toBeCloseTo(floating, 12);
    expect(Math.max(...Object.values(found.floats).map((side) => side.longest))).toBe(longest);
  });

  it("floats and intersections are what going round each thread by hand gives", () =>
    assert(
      property(anyCloth, (grid) => {
        const slow = floatsByHand(grid);
        const found = floatsOf(grid);
        for (const side of ["warpFace", "warpBack", "weftFace", "weftBack"] as const) {
          const lengths = slow[side];
          expect(found[side].count).toBe(lengths.length);
          expect(found[side].longest).toBe(Math.max(0, ...lengths));
          const total = lengths.reduce((a, b) => a + b, 0);
          expect(found[side].mean).toBe(lengths.length === 0 ? 0 : total / lengths.length);
        }
      }),
    ));

  it("FYF counts each float's threads past the first, on both faces of both systems", () =>
    assert(
      property(anyCloth, (grid) => {
        const slow = floatsByHand(leastRepeat(grid));
        const lengths = Object.values(slow).flat();
        if (lengths.includes(Number.POSITIVE_INFINITY)) return;
        const { repeat, firmness, intersections } = propertiesOf(grid);
        const cells = repeat.ends * repeat.picks;
        expect(firmness.floating).toBeCloseTo(
          lengths.reduce((sum, length) => sum + length - 1, 0) / cells,
          10,
        );
        const crossings = [...intersections.ends, ...intersections.picks].reduce((a, b) => a + b, 0);
        expect(crossings).toBe(lengths.length);
      }),
    ));

  it("a thread that never interlaces floats without end", () => {
    const found = propertiesOf(
      fromBooleans([
        [true, false],
        [true, false],
      ]),
    );
    expect(found.floats.warpFace.longest).toBe(Number.POSITIVE_INFINITY);
    expect(found.intersections.ends).toEqual([0, 0]);
  });

  it("balance is the share of warp on the face", () => {
    expect(measured("twill 1/3").warpFaceShare).toBe(0.25);
    expect(measured("twill 1/3").balanced).toBe(false);
    expect(measured("twill 2/1/1/2").balanced).toBe(true);
    assert(
      property(anyCloth, (grid) => {
        const raised = Array.from(rowCounts(grid)).reduce((a, b) => a + b, 0);
        const across = Array.from(columnCounts(grid)).reduce((a, b) => a + b, 0);
        expect(propertiesOf(grid).warpFaceShare).toBeCloseTo(raised / (grid.rows * grid.columns), 12);
        expect(across).toBe(raised);
      }),
    );
  });

  it("counts repeat, shafts and treadles", () => {
    expect(measured("herringbone twill 2/2 after 8")).toMatchObject({
      repeat: { ends: 16, picks: 4 },
      shafts: 4,
      treadles: 4,
    });
  });
});

describe("the twill line", () => {
  it("has the published angles", () => {
    // J. T. Taylor, Cotton Weaving and Designing, 1909, p. 220; A. Wolfensberger, Theory of Silk Weaving, 1921, p. 20.
    expect(twillAngle({ up: 1, out: 1 })).toBe(45);
    expect(twillAngle({ up: 1, out: 1 }, { ends: 24, picks: 24 })).toBe(45);
    expect(twillAngle({ up: 2, out: 1 }, { ends: 42, picks: 21 })).toBeCloseTo(75.96, 2);
  });

  it("runs to the right in z, to the left in s, and steepens with the ends", () => {
    expect(propertiesOf(drawdownOf(weaveOf("twill 2/2 s"))).line).toEqual({
      up: 1,
      out: -1,
      direction: "s",
      angle: 45,
    });
    const steep = propertiesOf(drawdownOf(weaveOf("twill 2/2")), { ends: 20, picks: 10 }).line;
    expect(steep?.direction).toBe("z");
    expect(steep?.angle).toBeCloseTo(63.43, 2);
    expect(lineOf(drawdownOf(weaveOf("broken twill")))).toBeUndefined();
  });

  it("leads from a binding point to a binding point, in every satin", () => {
    for (let n = 5; n <= 24; n++) {
      for (const step of satinSteps(n)) {
        const { up, out } = lineOf(drawdownOf(weaveOf(`satin ${n} step ${step}`)))!;
        expect((((up * step - out) % n) + n) % n).toBe(0);
      }
    }
  });

  it("needs setts above 0", () => {
    expectRefusal(
      () => twillAngle({ up: 1, out: 1 }, { ends: 0, picks: 10 }),
      "bad-size",
      "setts must be above 0, not 0 ends and 10 picks",
    );
  });
});

describe("isonemal weaves", () => {
  it("satins are, where the square of the step is 1 or -1; their number is OEIS A193140", () => {
    // B. Gruenbaum and G. C. Shephard, Satins and twills, Mathematics Magazine 53 (1980), pp. 139-161.
    const numbers = Array.from({ length: 20 }, (_, i) => i + 2).map((n) => {
      const steps = satinSteps(n).filter((step) => step < n / 2);
      const isonemal = steps.filter((step) => isIsonemal(drawdownOf(weaveOf(`satin ${n} step ${step}`))));
      expect(isonemal).toEqual(steps.filter((step) => [1, n - 1].includes((step * step) % n)));
      // One of each pair of steps that are each other's turn or mirror.
      return isonemal.length;
    });
    expect(numbers).toEqual([0, 0, 0, 1, 0, 0, 1, 0, 1, 0, 1, 1, 0, 1, 1, 1, 0, 0, 1, 1]);
  });

  it("plain weave, hopsack 2/2 and twills of one ratio are; hopsack 2/1, herringbone and broken 2/2 twill are not", () => {
    for (const text of ["plain", "twill 1/2", "twill 2/2", "twill 1/3", "hopsack 2/2"]) {
      expect(measured(text).isonemal).toBe(true);
    }
    for (const text of [
      "hopsack 2/1",
      "satin 7 step 2",
      "herringbone twill 2/2 after 4",
      "broken twill 2/2",
    ]) {
      expect(measured(text).isonemal).toBe(false);
    }
  });

  it("may need the cloth turned over", () => {
    expect(isIsonemal(fromText("#...\n.#..\n###.\n##.#"))).toBe(true);
  });

  it("are found by carrying labelled threads about, the slow way", () =>
    assert(
      property(
        fc.oneof(
          square,
          described.filter(({ rows, columns }) => rows * columns <= 64),
        ),
        (grid) => {
          expect(isIsonemal(grid)).toBe(isonemalSlowly(grid));
        },
      ),
    ));

  it("stay so however the cloth is turned or mirrored", () =>
    assert(
      property(anyCloth, (grid) => {
        const isonemal = isIsonemal(grid);
        expect(isIsonemal(turned(grid))).toBe(isonemal);
        expect(isIsonemal(mirrored(grid))).toBe(isonemal);
        expect(isIsonemal(counterchange(grid))).toBe(isonemal);
      }),
      { numRuns: 60 },
    ));
});

/** One crossing with the names of its two threads, `e3` for an end and `p3` for a pick. */
interface Crossing {
  readonly up: boolean;
  readonly upright: string;
  readonly lying: string;
}

/** Lays a labelled square in every way and at every place on itself, and follows the names. */
function isonemalSlowly(grid: BitGrid): boolean {
  const least = leastRepeat(grid);
  if (least.rows !== least.columns) return false;
  const start = toBooleans(least).map((row, p) =>
    row.map((up, e): Crossing => ({ up, upright: `e${e}`, lying: `p${p}` })),
  );
  const n = start.length;
  const flipped = (cloth: Crossing[][]) => cloth.map((row) => row.toReversed());
  // Turned a quarter, what stood upright lies.
  const quarter = (cloth: Crossing[][]) =>
    cloth.map((_, p) =>
      cloth.map((_, e) => ({
        up: cloth[n - 1 - e]![p]!.up,
        upright: cloth[n - 1 - e]![p]!.lying,
        lying: cloth[n - 1 - e]![p]!.upright,
      })),
    );
  const reached = new Map<string, Set<string>>();
  let cloth = start;
  for (let way = 0; way < 8; way++) {
    cloth = way === 4 ? flipped(quarter(cloth)) : quarter(cloth);
    for (let up = 0; up < n; up++) {
      for (let right = 0; right < n; right++) {
        const laid = cloth.map((_, p) => cloth.map((_, e) => cloth[(p + up) % n]![(e + right) % n]!));
        const differing = laid.flatMap((row, p) =>
          row.filter((crossing, e) => crossing.up !== start[p]![e]!.up),
        ).length;
        if (differing !== 0 && differing !== n * n) continue;
        for (let i = 0; i < n; i++) {
          const to = (from: string, name: string) =>
            reached.set(from, (reached.get(from) ?? new Set()).add(name));
          to(laid[0]![i]!.upright, `e${i}`);
          to(laid[i]![0]!.lying, `p${i}`);
        }
      }
    }
  }
  return reached.get("e0")!.size === 2 * n;
}

/** Floats by starting at a change on each thread and going once round. */
function floatsByHand(grid: BitGrid) {
  const along = (thread: (i: number) => boolean, n: number, raised: number[], lowered: number[]) => {
    const start = Array.from({ length: n }, (_, i) => i).find((i) => thread(i) !== thread((i + n - 1) % n));
    if (start === undefined) {
      (thread(0) ? raised : lowered).push(Number.POSITIVE_INFINITY);
      return;
    }
    for (let i = 0; i < n; ) {
      const up = thread((start + i) % n);
      let length = 0;
      while (i < n && thread((start + i) % n) === up) {
        length += 1;
        i += 1;
      }
      (up ? raised : lowered).push(length);
    }
  };
  const found = {
    warpFace: [] as number[],
    warpBack: [] as number[],
    weftFace: [] as number[],
    weftBack: [] as number[],
  };
  for (let end = 0; end < grid.columns; end++)
    along((pick) => grid.get(pick, end), grid.rows, found.warpFace, found.warpBack);
  for (let pick = 0; pick < grid.rows; pick++)
    along((end) => grid.get(pick, end), grid.columns, found.weftBack, found.weftFace);
  return found;
}
