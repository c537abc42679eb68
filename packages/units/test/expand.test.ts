import { fromText, toText, transpose } from "@drawcord/grid";
import type { Ground } from "@drawcord/ground";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expand, expandEnds, liftsFromGrid, parseThreading, type UnitDraft } from "../src/index.js";
import { draft, ground } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";
import { slowExpand } from "./slow-twins.js";

/** A 4-end damask ground: a shaft up, a shaft down, the rest free, begun where it cuts clean. */
const damask: Ground = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [
    { raise: [1], sink: [4] },
    { raise: [3], sink: [2] },
    { raise: [2], sink: [3] },
    { raise: [4], sink: [1] },
  ],
};

const small: UnitDraft = {
  ground: damask,
  unitEnds: 4,
  threading: [[1], []],
  lifts: [[1], []],
  picksPerRow: 4,
};

describe("a draft worked out", () => {
  it("weaves drawn units warp-faced beside weft-faced ground", () => {
    expect(toText(expand(small).drawdown).split("\n")).toEqual([
      "...#...#",
      ".#...#..",
      "..#...#.",
      "#...#...",
      ".###...#",
      "##.#.#..",
      "#.##..#.",
      "###.#...",
    ]);
  });

  it("is the formula of the two harnesses, whatever the draft", () => {
    fc.assert(
      fc.property(draft(), (d) => {
        const fast = expand(d);
        const slow = slowExpand(d);
        expect(toText(fast.drawdown)).toBe(toText(slow.drawdown));
        expect(toText(fast.drawn)).toBe(toText(slow.drawn));
      }),
      { numRuns: 1000 },
    );
  });

  it("is the same cloth end by end", () => {
    fc.assert(
      fc.property(draft(), (d) => {
        const { drawdown } = slowExpand(d);
        expect(toText(expandEnds(d, expand(d)))).toBe(toText(transpose(drawdown)));
      }),
      { numRuns: 300 },
    );
  });

  it("has squares, which are the drawn state by row and unit, and ends on ground shafts", () => {
    fc.assert(
      fc.property(draft(), (d) => {
        const { squares, shaftOfEnd, unitOfEnd } = expand(d);
        d.lifts.forEach((lift, row) => {
          d.threading.forEach((shafts, unit) => {
            expect(squares.get(row, unit)).toBe(shafts.some((shaft) => lift.includes(shaft)));
          });
        });
        const { left = [], right = [] } = d.selvedge ?? {};
        const ofUnits = Array.from(
          unitOfEnd.filter((unit) => unit !== -1),
          (_, end) => end,
        );
        const { threading } = d.ground;
        expect([...shaftOfEnd]).toEqual([
          ...left,
          ...ofUnits.map((end) => threading[end % threading.length]),
          ...right,
        ]);
      }),
    );
  });

  it("weaves the ground alone when nothing is drawn", () => {
    fc.assert(
      fc.property(draft(), (d) => {
        const undrawn = expand({ ...d, lifts: d.lifts.map(() => []) });
        const still = expand({ ...d, threading: d.threading.map(() => []) });
        expect(undrawn.drawdown.equals(still.drawdown)).toBe(true);
        expect(toText(undrawn.drawn)).not.toContain("#");
      }),
    );
  });

  it("lets the figure have no say on a pick that raises or sinks every shaft", () => {
    const tabby: Ground = {
      shafts: 2,
      threading: [1, 2],
      steps: [
        { raise: [1], sink: [2] },
        { raise: [], sink: [], weft: "pattern" },
        { raise: [2], sink: [1] },
        { raise: [], sink: [], weft: "pattern" },
      ],
    };
    const cloth = expand({
      ground: tabby,
      unitEnds: 2,
      threading: [[1], [2]],
      lifts: [[1], [2]],
      picksPerRow: 4,
    });
    expect(toText(cloth.drawdown).split("\n").reverse()).toEqual([
      "#.#.",
      "##..",
      ".#.#",
      "##..",
      "#.#.",
      "..##",
      ".#.#",
      "..##",
    ]);
  });

  it("draws a unit on several shafts with any of them", () => {
    const { drawn } = expand({
      ...small,
      unitEnds: 1,
      picksPerRow: 1,
      threading: [[3, 9], [3], [9]],
      lifts: [[3], [9], [1]],
    });
    expect(toText(drawn)).toBe("...\n#.#\n##.");
  });

  it("never draws a selvedge, and starts the ground at unit 1", () => {
    const { drawdown, unitOfEnd } = expand({
      ...small,
      lifts: [[1]],
      selvedge: { left: [4, 3], right: [2] },
    });
    expect([...unitOfEnd]).toEqual([-1, -1, 0, 0, 0, 0, 1, 1, 1, 1, -1]);
    expect(toText(drawdown).split("\n").reverse()[0]).toBe("..###.#....");
  });

  it("runs the treadling on from row to row of unlike picks", () => {
    const { rowOfPick, stepOfPick } = expand({ ...small, picksPerRow: [3, 2] });
    expect([...rowOfPick]).toEqual([0, 0, 0, 1, 1]);
    expect([...stepOfPick]).toEqual([0, 1, 2, 3, 0]);
  });

  it("gives units of unlike size their own ends", () => {
    const { unitOfEnd } = expand({ ...small, unitEnds: [1, 3] });
    expect([...unitOfEnd]).toEqual([0, 1, 1, 1]);
  });

  it("weaves a picture of the cloth cord by cord in single-unit draw", () => {
    const picture = fromText("#.#\n.#.");
    const cloth = expand({
      ...small,
      unitEnds: 1,
      picksPerRow: 1,
      threading: parseThreading("1-3"),
      lifts: liftsFromGrid(picture),
    });
    expect(cloth.drawn.equals(picture)).toBe(true);
  });
});

describe("a draft that cannot be worked out", () => {
  const refuse = (change: Partial<UnitDraft>, code: Parameters<typeof expectRefusal>[1], sentence: string) =>
    expectRefusal(() => expand({ ...small, ...change }), code, sentence);
  const groundWith = (change: Partial<Ground>) => ({ ground: { ...damask, ...change } });

  it("has no units, or no rows", () => {
    refuse({ threading: [] }, "no-units", "the draft has no units");
    refuse({ lifts: [] }, "no-rows", "the lift plan has no rows");
  });

  it("has a ground shaft outside its harness", () => {
    refuse(
      groundWith({ threading: [1, 2, 5] }),
      "outside-harness",
      "ground threading, end 3 names ground shaft 5; the ground harness has shafts 1 to 4",
    );
    refuse(
      groundWith({ steps: [{ raise: [5], sink: [] }] }),
      "outside-harness",
      "ground step 1, raise, entry 1 names ground shaft 5",
    );
    refuse({ selvedge: { left: [1, 9] } }, "outside-harness", "left selvedge, end 2 names ground shaft 9");
    refuse({ selvedge: { right: [0] } }, "outside-harness", "right selvedge, end 1 names ground shaft 0");
    refuse(groundWith({ shafts: 0 }), "bad-size", "the ground harness has 0 shafts");
  });

  it("raises and sinks a shaft at once", () => {
    refuse(
      groundWith({ steps: [damask.steps[0]!, { raise: [1, 2], sink: [2] }] }),
      "raised-and-sunk",
      "ground step 2 both raises and sinks ground shaft 2",
    );
  });

  it("has lengths that disagree or sizes that cannot be", () => {
    refuse({ unitEnds: [4] }, "wrong-length", "ends are given for 1 units; the draft has 2 units");
    refuse({ picksPerRow: [4, 4, 4] }, "wrong-length", "picks are given for 3 rows; the draft has 2 rows");
    refuse({ unitEnds: [4, 0] }, "bad-size", "unit 2 has 0 ends");
    refuse({ picksPerRow: 1.5 }, "bad-size", "each row has 1.5 picks");
    refuse(groundWith({ steps: [] }), "wrong-length", "the ground has no treadling steps");
  });

  it("names shafts that are none, or twice", () => {
    refuse({ lifts: [[0]] }, "bad-shaft", "row 1 names shaft 0");
    refuse({ threading: [[1], [2, 2]] }, "repeated-shaft", "unit 2 names shaft 2 after shaft 2");
  });

  it("comes to more than can be held", () => {
    refuse(
      { unitEnds: 50_000, picksPerRow: 50_000 },
      "too-large",
      "the cloth has 100000 ends and 100000 picks; the most worked out is 1048576 of each and 2147483648 interlacements",
    );
    refuse({ unitEnds: 2_000_000 }, "too-large", "4000000 ends and 8 picks");
    const all = Array.from({ length: 100_000 }, (_, i) => i + 1);
    const many = Array.from({ length: 1000 }, () => all);
    refuse(
      { threading: many },
      "too-large",
      "the units name 100000000 shafts; the most worked out is 33554432",
    );
    refuse({ lifts: many }, "too-large", "the rows name 100000000 shafts");
  });

  it("is not one whose lift draws a shaft without units: that weaves, and is a finding", () => {
    expect(toText(expand({ ...small, lifts: [[7]] }).drawn)).not.toContain("#");
  });
});

describe("the ground under the figure", () => {
  it("keeps what its treadles raise and sink, whatever is drawn", () => {
    fc.assert(
      fc.property(ground(), fc.boolean(), (g, drawn) => {
        const { drawdown } = expand({
          ground: g,
          unitEnds: g.threading.length,
          threading: [[1]],
          lifts: [drawn ? [1] : []],
          picksPerRow: g.steps.length,
        });
        g.steps.forEach(({ raise, sink }, pick) => {
          g.threading.forEach((shaft, end) => {
            const expected = raise.includes(shaft) ? true : sink.includes(shaft) ? false : drawn;
            expect(drawdown.get(pick, end)).toBe(expected);
          });
        });
      }),
    );
  });
});
