import { fromText } from "@drawcord/grid";
import { parseShafts, parseThreading, parseWovenBlock, type UnitDraft, wovenLifts } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CheckOptions, check, checkGrid, type YarnOrder } from "../src/index.js";

/** A plain weave of so many picks. */
function plainWeave(picks: number) {
  return fromText(Array.from({ length: picks }, (_, i) => (i % 2 === 0 ? "#.#." : ".#.#")).join("\n"));
}

function carried(yarns: readonly string[], options: CheckOptions = {}) {
  return checkGrid(plainWeave(yarns.length), { ...options, yarnOfPick: yarns }).findings.flatMap((finding) =>
    finding.rule === "carried-weft" ? [finding] : [],
  );
}

describe("a weft that is carried along the selvedge", () => {
  it("rests as often and as long as the picks of the others between its own", () =>
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom("blue", "silver", "gold"), { minLength: 1, maxLength: 60 }),
        fc.integer({ min: 1, max: 20 }),
        (yarns, limit) => {
          const told = carried(yarns, { limits: { carried: { picks: limit } } });
          for (const yarn of new Set(yarns)) {
            // The picks as one letter each: what stands between two of a yarn is a rest.
            const text = yarns.map((one) => (one === yarn ? "x" : "-")).join("");
            const rests = text
              .replace(/^-*|-*$/g, "")
              .split("x")
              .map(({ length }) => length)
              .filter((length) => length >= 2);
            const within = rests.filter((length) => length <= limit);
            const finding = told.find((one) => one.yarn === yarn);
            expect(finding !== undefined).toBe(rests.length > 0);
            if (finding === undefined) continue;
            expect(finding.over).toBe(Math.max(0, ...within));
            expect(finding.count ?? 1).toBe(Math.max(1, within.length));
            expect(finding.cutOff ?? 0).toBe(rests.length - within.length);
            expect(finding.side === undefined).toBe(within.length === 0);
          }
        },
      ),
    ));

  it("lies at the right after an odd number of picks from the left, and the other way round", () => {
    const [odd] = carried(["silver", "blue", "blue", "silver"]);
    expect(odd).toMatchObject({ yarn: "silver", side: "right", over: 2 });
    const [turned] = carried(["silver", "blue", "blue", "silver"], { firstPickOf: { silver: "right" } });
    expect(turned).toMatchObject({ side: "left" });
    const [both] = carried(["silver", "blue", "blue", "silver", "blue", "blue", "silver"]);
    expect(both).toMatchObject({ side: "both", count: 2 });
    expect(both?.message).toContain("carried along both selvedges 2 times, up to 2 picks");
  });

  it("is told in mm at the picks a cm", () => {
    const sett = { endsPerCm: 10, picksPerCm: 10 };
    const far = ["silver", ...Array.from({ length: 30 }, () => "blue"), "silver"];
    expect(carried(far, { sett })[0]).toMatchObject({ over: 0, cutOff: 1, unit: "mm", limit: 25 });
    expect(carried(far, { sett, limits: { carried: { mm: 30 } } })[0]).toMatchObject({
      over: 30,
      measured: 30,
    });
  });

  it("turns at the edge by itself: each shuttle goes round the end where it lies", () => {
    // Both floats of the blue weft meet at the right edge, over the silver pick between them.
    const cloth = fromText("#.#..\n#.#.#\n.##..");
    const options: CheckOptions = {
      limits: { float: { threads: 3 } },
      yarnOfPick: ["blue", "silver", "blue"],
    };
    const rules = (asked: CheckOptions) => checkGrid(cloth, asked).findings.map(({ rule }) => rule);
    expect(rules(options)).toContain("edge-float");
    expect(rules({ ...options, yarnOfPick: ["blue"] })).not.toContain("edge-float");
    expect(rules({ ...options, firstPickOf: { blue: "right" } })).not.toContain("edge-float");
  });
});

describe("an order of yarns", () => {
  const order = fc.array(fc.constantFrom("a", "b", "c"), { minLength: 1, maxLength: 8 });

  it("ends within a stripe just where the thread after the last would be of the same yarn, in the same repeat", () =>
    fc.assert(
      fc.property(order, fc.integer({ min: 1, max: 40 }), (yarns, threads) => {
        const orders: readonly YarnOrder[] = [{ system: "weft", yarns, threads, path: ["colours", "weft"] }];
        const found = checkGrid(plainWeave(4), { yarnOrders: orders }).findings.flatMap((one) =>
          one.rule === "cut-stripe" ? [one] : [],
        );
        const laid = Array.from({ length: threads + 1 }, (_, i) => yarns[i % yarns.length]!);
        const isWhole = threads % yarns.length === 0;
        const isStriped = new Set(yarns).size > 1;
        const cuts = isStriped && !isWhole && laid[threads - 1] === laid[threads];
        expect(found.length).toBe(cuts ? 1 : 0);
        if (!cuts) return;
        expect(found[0]!.yarn).toBe(laid[threads]);
        expect(found[0]!.measured).toBeLessThan(found[0]!.limit);
      }),
    ));
});

describe("a border that a change scrambles", () => {
  const base = {
    ground: {
      shafts: 2,
      threading: [1, 2],
      steps: [
        { raise: [1], sink: [2] },
        { raise: [2], sink: [1] },
      ],
    },
    unitEnds: 2,
    picksPerRow: 2,
    threading: parseThreading("X 9-10 X (1-8 7-2)*3 1 X 10-9 X"),
  };
  const blocks = {
    moth: ["1 2", "3", "4-6", "8"].map(parseShafts),
    vine: [parseShafts("9"), parseShafts("10")],
  };
  const found = (line: string) => {
    const order = [parseWovenBlock("vine"), parseWovenBlock(line)];
    const draft: UnitDraft = { ...base, lifts: wovenLifts(new Map(Object.entries(blocks)), order, 10) };
    const { findings } = check(draft, { woven: { order, blocks, over: 0 } });
    return findings.flatMap((one) => (one.rule === "scrambled-border" ? [one] : []));
  };

  it.each([
    "moth turned",
    "moth mirrored",
    "moth brick",
    "moth mirrored on 1-9",
    "moth *3 every-other turned",
  ])("is told of %s", (line) => {
    const [first, ...others] = found(line);
    expect(others).toEqual([]);
    expect(first).toMatchObject({ orderLine: line, rows: [3, expect.any(Number)] });
    expect(first?.message).toMatch(
      /^the line ".*" mixes the border with the figure: \w+ takes in the border's shafts? 9/,
    );
  });

  it.each([
    "moth turned on 1-8",
    "moth mirrored on 1-8",
    "moth upside-down",
    "vine mirrored on 9-10",
    "vine turned on 9-10 with moth turned on 1-8",
    "moth *3 every-other turned on 1-8",
  ])("is not told of %s", (line) => {
    expect(found(line)).toEqual([]);
  });
});
