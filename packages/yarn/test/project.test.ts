import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  assumptions,
  calculate,
  changeSett,
  convert,
  endsForWidth,
  explain,
  isResult,
  type Plan,
  type Project,
  parseQuantity,
  parseReed,
  plan,
  planNumbers,
  quantity,
  rounded,
  settByRoot,
  steps,
  tex,
  YarnError,
  yarnCard,
} from "../src/index.js";
import { length, reed, share, yarn } from "./arbitraries.js";
import { near } from "./near.js";
import { twill13 } from "./weaves.js";

/** Napkins in inches: 420 ends at 36 an inch, cotton 12/2 and 10/2, finished 10 by 20 inches. */
const napkins: Project = {
  ends: 420,
  units: 105,
  lingos: 105,
  picks: 640,
  warp: { yarn: "12/2 Ne", package: parseQuantity("5040 yd") },
  wefts: [
    { name: "weft", yarn: "10/2 Ne", picks: 480, package: parseQuantity("1 lb") },
    {
      name: "gold",
      yarn: "12/2 Ne",
      picks: 160,
      package: parseQuantity("50 g"),
      stock: parseQuantity("20 g"),
    },
  ],
  sett: parseQuantity("36 per inch"),
  pickSett: parseQuantity("28 per inch"),
  reed: parseReed("18 per inch"),
  drawIn: parseQuantity("5 %"),
  takeUp: parseQuantity("10 %"),
  shrinkage: { width: parseQuantity("10 %"), length: parseQuantity("10 %") },
  length: parseQuantity("20 in"),
  warpLength: parseQuantity("7 yd"),
};

const inches = (found: { value: number; unit: "mm" | string } | undefined): number =>
  convert(quantity(found!.value, "mm"), "in").value;

/** Projects that can be woven. */
const project = (): fc.Arbitrary<Project> =>
  fc
    .record({
      ends: fc.integer({ min: 2, max: 4000 }),
      picks: fc.integer({ min: 2, max: 4000 }),
      pieces: fc.integer({ min: 1, max: 30 }),
      warp: yarn(),
      weft: yarn(),
      gold: yarn(),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
      sett: fc.double({ min: 2, max: 60, noNaN: true }),
      pickSett: fc.double({ min: 2, max: 60, noNaN: true }),
      drawIn: share(20),
      takeUp: share(30),
      width: share(25),
      length: share(25),
      piece: fc.option(length(100, 5000), { nil: undefined }),
      waste: length(0, 1500),
      gaps: length(0, 100),
    })
    .map((one) => {
      const gold = Math.floor(one.picks * one.share);
      return {
        ends: one.ends,
        picks: one.picks,
        pieces: one.pieces,
        warp: { yarn: one.warp },
        wefts: [
          { name: "weft", yarn: one.weft, picks: one.picks - gold },
          { name: "gold", yarn: one.gold, picks: gold },
        ],
        sett: quantity(one.sett, "per cm"),
        pickSett: quantity(one.pickSett, "per cm"),
        drawIn: one.drawIn,
        takeUp: one.takeUp,
        shrinkage: { width: one.width, length: one.length },
        ...(one.piece === undefined ? {} : { length: one.piece }),
        waste: one.waste,
        gaps: one.gaps,
      };
    });

const masses = (found: Plan): number =>
  [found.warpYarn, ...found.weftYarn].reduce((sum, one) => sum + one!.mass!.value, 0);

describe("a plan", () => {
  it("of 420 ends at 36 an inch: 11 2/3 inches in the reed, about 10 finished, 105 units and lingos", () => {
    const found = plan(napkins);
    near(inches(found.widthInReed), 35 / 3);
    expect(Math.round(inches(found.finishedWidth))).toBe(10);
    expect(found.units).toEqual(quantity(105, "units"));
    expect(found.lingos).toEqual(quantity(105, "lingos"));
    expect(rounded(found.widthInReed!)).toEqual(quantity(296.3, "mm"));
  });

  it("of 7 yards of warp: 8 napkins of 20 inches, with some to spare", () => {
    const found = plan(napkins);
    // 252 inches less 36 of waste, at 20 / 0.9 * 1.1 a napkin.
    expect(found.pieces.value).toBe(8);
    near(inches(found.leftOver), 216 - (8 * 20 * 1.1) / 0.9);
  });

  it("says how the reed is sleyed, end by end", () => {
    const { reed: found } = plan(napkins);
    expect(found).toMatchObject({ sley: [2], dentsUsed: 210, printed: "2 a dent in 210 dents", others: [] });
    near(inches(found!.width), 35 / 3);
  });

  it("gives packages to buy by length or by weight, and says when the stock is too little", () => {
    const { buy, warpYarn, weftYarn } = plan(napkins);
    // 420 ends of 7 yards are 2940 yards: one cone of 5040.
    near(convert(warpYarn!.length, "yd").value, 2940);
    expect(buy[0]!.packages!.value).toBe(1);
    near(convert(buy[0]!.need, "yd").value, 2940 * 1.05);
    expect(weftYarn.map(({ name }) => name)).toEqual(["weft", "gold"]);
    expect(buy.map(({ yarns }) => yarns)).toEqual([["warp"], ["weft"], ["gold"]]);
    const { packages, toBuy } = buy[2]!;
    near(toBuy.value, weftYarn[1]!.mass!.value * 1.05 - 20);
    expect(packages!.value).toBe(Math.ceil(toBuy.value / 50));
  });

  it("shares the weft by the picks really woven", () => {
    const [ground, gold] = plan(napkins).weftYarn;
    near(ground!.length.value, 3 * gold!.length.value);
  });

  it("says how firm the sett is for the yarn in the ground weave", () => {
    const found = plan({ ...napkins, warp: { yarn: "12/2 Ne", fibre: "cotton" }, ground: twill13 }).firmness!;
    near(
      found.closest.value,
      settByRoot("12/2 Ne", { threads: 4, intersections: 2 }, { fibre: "cotton" }).value,
    );
    near(found.share.value, (100 * convert(napkins.sett!, "per cm").value) / found.closest.value);
    expect(found.words).toBe("a balanced working sett");
    // A yarn of two fibres has no constant of its own: it counts as a firm yarn, and that is shown.
    const other = plan({ ...napkins, warp: { yarn: "12/2 Ne", fibre: "cottolin" }, ground: twill13 });
    expect(assumptions(other)).toContainEqual({
      meaning: "fibre constant",
      value: quantity(0.9, ""),
      why: "a firm yarn",
    });
    expect(plan(napkins).firmness).toBeUndefined();
  });

  it("assumes nothing that it does not show", () => {
    const found = assumptions(plan(napkins)).map(({ meaning, why }) => `${meaning}: ${why}`);
    expect(found).toContain("loom waste: a floor loom, common practice");
    expect(found).not.toContain("shrinkage in the wash: handweaver's allowance, common practice");
    const bare = plan({
      ends: 100,
      picks: 50,
      sett: parseQuantity("10 per cm"),
      pickSett: parseQuantity("10 per cm"),
    });
    expect(assumptions(bare).map(({ value, why }) => `${value.value} ${value.unit} ${why}`)).toEqual([
      "1 pieces one piece",
      "5 % common practice",
      "10 % handweaver's allowance, common practice",
      "0 mm no hems",
      "10 % handweaver's allowance, common practice",
      "0 mm no fringe",
      "0 mm no gaps",
      "0 mm no samples",
      "36 in a floor loom, common practice",
      "5 % common practice",
    ]);
  });

  it("says what is missing for what it cannot tell", () => {
    expect(
      plan({ ends: 480, picks: 960, wefts: [{ name: "weft", picks: 960 }], reed: parseReed("12 per inch") })
        .missing,
    ).toEqual([
      "how to sley the reed needs a sett or a sley",
      "widths and weft need a sett, or a reed with its sley",
      "lengths need the length of a piece, or the picks of the cloth",
      "weights of the warp need its yarn",
      "weights of the weft need its yarn",
    ]);
  });

  it("takes the sett from the reed and its sley", () => {
    const found = plan({ ends: 100, picks: 1, reed: parseReed("12 per inch"), sley: [1, 2, 2] });
    near(convert(found.sett!, "per inch").value, 20);
  });

  it("says when numbers do not go together", () => {
    const { notes } = plan({ ...napkins, sley: [1, 2], width: parseQuantity("12 in"), pieces: 20 });
    expect(notes).toEqual([
      "sleyed 1-2, the reed makes 27 per inch; the sett is 36 per inch; the widths are those of the sley",
      "420 ends finish 13.3 in wide; 12 in takes 379 ends",
      "the warp of 7 yd gives 8 pieces; 20 are wanted",
    ]);
  });

  it("explains each of its numbers, back to what was given", () => {
    for (const { value } of planNumbers(plan(napkins))) {
      if (!isResult(value)) continue;
      for (const step of steps(value)) expect(explain(step).text).toContain("source: ");
    }
  });

  it("refuses a shrinkage of 100 % and a yarn that cannot be", () => {
    expect(() => plan({ ...napkins, shrinkage: { width: parseQuantity("100 %") } })).toThrow(YarnError);
    expect(() => plan({ ...napkins, warp: { yarn: "10000 Ne" } })).toThrow("comes out as 0.05905 tex");
    expect(() => plan({ ...napkins, ends: 0 })).toThrow("ends is 0; it must be more than zero");
  });
});

describe("how a plan hangs together", () => {
  it("doubling the ends doubles the warp, its weight and the widths", () =>
    fc.assert(
      fc.property(project(), (one) => {
        const before = plan(one);
        const after = plan({ ...one, ends: 2 * one.ends });
        near(after.warpYarn!.length.value, 2 * before.warpYarn!.length.value);
        near(after.warpYarn!.mass!.value, 2 * before.warpYarn!.mass!.value);
        near(after.finishedWidth!.value, 2 * before.finishedWidth!.value);
        near(after.clothWeight!.value, before.clothWeight!.value);
      }),
    ));

  it("a warp planned for so many pieces, once wound, gives so many pieces", () =>
    fc.assert(
      fc.property(project(), (one) => {
        const first = plan(one);
        const { pieces, ...rest } = one;
        const again = plan({ ...rest, warpLength: first.warpLength! });
        expect(again.pieces.value).toBe(pieces);
        expect(again.leftOver!.value).toBeLessThan(1e-6);
        near(again.warpYarn!.length.value, first.warpYarn!.length.value);
      }),
    ));

  it("finished width to ends and ends to finished width", () =>
    fc.assert(
      fc.property(project(), (one) => {
        const { finishedWidth } = plan(one);
        const back = endsForWidth(finishedWidth!, one.sett!, {
          drawIn: one.drawIn,
          shrinkage: one.shrinkage?.width,
        });
        expect(back.ends.value).toBe(one.ends);
      }),
    ));

  it("a longer waste never gives more pieces", () =>
    fc.assert(
      fc.property(project(), length(1500, 20_000), length(0, 500), (one, warpLength, more) => {
        const { pieces: _, ...rest } = one;
        const tried = (waste: number): number =>
          plan({ ...rest, warpLength, waste: quantity(waste, "mm") }).pieces.value;
        const waste = convert(one.waste!, "mm").value;
        fc.pre(waste + convert(more, "mm").value < convert(warpLength, "mm").value);
        expect(tried(waste + convert(more, "mm").value)).toBeLessThanOrEqual(tried(waste));
      }),
    ));

  it("the cloth weighs what its setts and crimps say it must", () =>
    fc.assert(
      fc.property(project(), (one) => {
        const found = plan(one);
        const shorter = 1 - one.shrinkage!.length!.value / 100;
        const narrower = (1 - one.shrinkage!.width!.value / 100) * (1 - one.drawIn!.value / 100);
        const picksPerCm = found.picks.value / (convert(found.clothLength!, "cm").value * shorter);
        const weights = one.wefts!.map(
          (weft) => ((picksPerCm * weft.picks) / one.picks) * tex(weft.yarn!).value * (1 / narrower),
        );
        const ends = one.ends / convert(found.finishedWidth!, "cm").value;
        const warp = (ends * tex(one.warp!.yarn!).value * (1 + one.takeUp!.value / 100)) / shorter;
        // Threads a cm times g/km are tenths of g/m2.
        near(found.clothWeight!.value, (warp + weights[0]! + weights[1]!) / 10, 1e-9);
      }),
    ));

  it("all yarn of a project without waste, gaps or fringe is in the cloth", () =>
    fc.assert(
      fc.property(project(), (one) => {
        const found = plan({ ...one, waste: quantity(0, "mm"), gaps: quantity(0, "mm") });
        const finished = calculate("size-after-shrinkage", {
          b: found.clothLength!,
          s: one.shrinkage!.length!,
        });
        const area = (found.finishedWidth!.value * finished.value * found.pieces.value) / 1e6;
        near(masses(found), found.clothWeight!.value * area, 1e-9);
      }),
    ));

  it("the reed holds the ends in as many dents as they need, whatever its count", () =>
    fc.assert(
      fc.property(project(), reed(), (one, given) => {
        const dents = plan({ ...one, reed: given, sley: [2] }).reed!;
        expect(dents.dentsUsed).toBe(Math.ceil(one.ends / 2));
      }),
    ));
});

describe("another sett", () => {
  it("at the same width: more ends and more warp, the same weft", () => {
    const changes = changeSett(napkins, parseQuantity("45 per inch"));
    const named = Object.fromEntries(changes.map((one) => [one.name, one]));
    const { ends, "warp-length": warpLength, "warp-yarn-mass": mass } = named;
    expect(ends).toMatchObject({
      before: quantity(420, "ends"),
      after: quantity(525, "ends"),
      difference: quantity(105, "ends"),
    });
    expect(warpLength).toBeUndefined();
    near(mass!.after.value / mass!.before.value, 525 / 420);
  });

  it("with the same ends: a narrower cloth and less weft", () => {
    const changes = changeSett(napkins, parseQuantity("45 per inch"), { keep: "ends" });
    const named = new Map(changes.map((one) => [one.name, one]));
    expect(named.has("ends")).toBe(false);
    near(named.get("width-in-reed")!.after.value / named.get("width-in-reed")!.before.value, 36 / 45);
    near(named.get("weft-yarn-length")!.after.value / named.get("weft-yarn-length")!.before.value, 36 / 45);
  });

  it("the same sett changes nothing", () =>
    fc.assert(
      fc.property(project(), (one) => {
        expect(changeSett(one, one.sett!)).toEqual([]);
      }),
    ));

  it("needs a sett to change", () => {
    expect(() => changeSett({ ends: 10, picks: 10 }, parseQuantity("10 per cm"))).toThrow(
      "the project has no sett to change; expected one such as 10 per cm",
    );
  });
});

describe("a yarn card", () => {
  it("of 20/2 cotton: 8400 yards a pound, 41.2 an inch in plain and 55.0 in 1/3 twill at k 0.90 (derived)", () => {
    const card = yarnCard("20/2 Ne", { k: 0.9, fibre: "cotton" });
    expect(card.yarn).toBe("20/2 Ne");
    const { count } = card.counts.find(({ system }) => system === "yards-a-pound")!;
    near(count.value, 8400);
    const setts = Object.fromEntries(
      card.setts.map(({ weave, closest }) => [weave, convert(closest, "per inch").value]),
    );
    const { plain, "1/3 twill": twill } = setts;
    expect(plain).toBeCloseTo(41.2, 1);
    expect(twill).toBeCloseTo(55, 1);
    expect(card.diameters.packing).toBeDefined();
    expect(yarnCard("20/2 Ne").diameters.packing).toBeUndefined();
  });
});

describe("yarn to buy", () => {
  const samples = { ...napkins, sampling: parseQuantity("50 cm") };

  it("counts the weft of the samples", () => {
    const [ground, gold] = plan(samples).weftYarn;
    // 50 cm of warp are 45.5 cm of cloth, at 28 an inch 501 picks, three of four in the ground weft.
    near(ground!.samples!.value, 501 * 0.75 * convert(quantity(35 / 3, "in"), "m").value);
    const pieces = plan({ ...napkins, pieces: plan(samples).pieces.value }).weftYarn[0]!;
    near(ground!.length.value, pieces.length.value + ground!.samples!.value);
    near(ground!.length.value, 3 * gold!.length.value);
  });

  it("adds what is spared, 5 % where nothing is said, and none where the recipe says none", () => {
    const [warp] = plan(napkins).buy;
    near(warp!.need.value, 1.05 * warp!.used.value);
    const bare = plan({ ...napkins, spare: parseQuantity("0 %") }).buy[0]!;
    near(bare.need.value, bare.used.value);
  });

  it("buys yarns alike together, and takes the stock off once", () => {
    const yarn = {
      yarn: "12/2 Ne",
      fibre: "cotton",
      package: parseQuantity("100 g"),
      stock: parseQuantity("80 g"),
    };
    const found = plan({ ...napkins, warp: yarn, wefts: [{ name: "weft", picks: 640, ...yarn }] });
    expect(found.buy.map(({ yarns }) => yarns)).toEqual([["warp", "weft"]]);
    const [{ need, packages, toBuy }] = found.buy as [(typeof found.buy)[0]];
    near(need.value, 1.05 * masses(found));
    near(toBuy.value, need.value - 80);
    expect(packages!.value).toBe(Math.ceil(toBuy.value / 100));
  });

  it("is nothing where the stock is enough, whichever way it is given", () => {
    const stock = parseQuantity("5 km");
    const found = plan({ ...napkins, warp: { yarn: "12/2 Ne", package: parseQuantity("100 g"), stock } });
    expect(found.buy[0]!.toBuy.value).toBe(0);
    expect(found.buy[0]!.packages!.value).toBe(0);
  });
});

describe("several designs on one warp", () => {
  /** The same picks in both designs, in other wefts. */
  const designs = (first: number, second: number): Project => {
    const { picks: _, ...rest } = napkins;
    const { warpLength: __, ...free } = rest;
    return {
      ...free,
      picks: 640,
      woven: [
        { name: "moth", count: first, rows: 160, picks: 640, wefts: [{ name: "weft", picks: 640 }] },
        { name: "lantern", count: second, rows: 100, picks: 400, wefts: [{ name: "gold", picks: 400 }] },
      ],
    };
  };

  it("one design written so gives what it gave without", () => {
    const { warpLength: _, length: __, ...one } = napkins;
    const alone = plan({ ...one, pieces: 3 });
    const woven = [{ name: "towel", count: 3, picks: 640, wefts: napkins.wefts! }];
    const { woven: found, ...same } = plan({ ...one, woven });
    const { woven: before, ...rest } = alone;
    expect(planNumbers({ ...same, woven: before }).map(({ name, value }) => [name, value.value])).toEqual(
      planNumbers({ ...rest, woven: before }).map(({ name, value }) => [name, value.value]),
    );
    expect(found[0]!.name).toBe("towel");
  });

  it("yarn by colour sums to the whole", () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }), (first, second) => {
        const found = plan({ ...designs(first, second), sampling: parseQuantity("30 cm") });
        const width = found.widthInReed!.value / 1000;
        const picks = 640 * first + 400 * second;
        const samples = found.weftYarn.reduce((sum, weft) => sum + weft.samples!.value, 0);
        near(
          found.weftYarn.reduce((sum, weft) => sum + weft.length.value, 0),
          picks * width + samples,
          1e-9,
        );
        const parts = found.woven.flatMap((piece) => piece.wefts.map((weft) => weft.length.value));
        near(
          parts.reduce((sum, one) => sum + one, 0),
          picks * width,
          1e-9,
        );
      }),
      { numRuns: 40 },
    ));

  it("doubling the pieces doubles their yarn but not the waste", () => {
    const [one, two] = [plan(designs(2, 3)), plan(designs(4, 6))];
    for (const [i, weft] of two.weftYarn.entries())
      near(weft.length.value, 2 * one.weftYarn[i]!.length.value);
    const waste = convert(quantity(36, "in"), "mm").value;
    near(two.warpLength!.value - waste, 2 * (one.warpLength!.value - waste));
  });

  it("says what the warp left over would still give", () => {
    const found = plan({ ...designs(2, 3), warpLength: parseQuantity("6 m") });
    const { leftOver, woven } = found;
    for (const { more, warpOfPiece } of woven)
      expect(more!.value).toBe(Math.floor(leftOver!.value / warpOfPiece!.value));
  });

  it("says by how much a warp is too short for them", () => {
    const found = plan({ ...designs(9, 9), warpLength: parseQuantity("2 m") });
    expect(found.leftOver).toBeUndefined();
    expect(found.notes.join()).toMatch(/the warp of 2 m is too short: 18 pieces take \d+ mm/);
  });

  it("a warp of several yarns is as long as one, and each yarn has its ends", () => {
    const warps = [
      { name: "warp", ends: 360, yarn: "12/2 Ne" },
      { name: "madder", ends: 60, yarn: "12/2 Ne", colour: "madder" },
    ];
    const found = plan({ ...napkins, warps });
    near(found.warpYarn!.length.value, plan(napkins).warpYarn!.length.value);
    near(found.warpYarn!.mass!.value, plan(napkins).warpYarn!.mass!.value);
    expect(found.buy.map(({ yarns }) => yarns)).toEqual(
      [["warp"], ["madder"], ["weft"], ["gold"]].slice(0, 4),
    );
  });
});

it("a rug is firm where its weft is, though its warp is open", () => {
  const plain = { rows: 2, columns: 2, get: (row: number, column: number) => (row + column) % 2 === 0 };
  const rug: Project = {
    ends: 100,
    picks: 100,
    ground: plain,
    warp: { yarn: "12/6 Ne" },
    wefts: [{ name: "weft", picks: 100, yarn: "12/6 Ne" }],
    sett: parseQuantity("3 per cm"),
    pickSett: parseQuantity("10 per cm"),
  };
  const { firmness } = plan(rug);
  expect(firmness!.share.value).toBeLessThan(50);
  expect(firmness!.words).not.toContain("slip");
  expect(plan({ ...rug, pickSett: parseQuantity("2 per cm") }).firmness!.words).toContain("slip");
});
