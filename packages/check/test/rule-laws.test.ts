import { fromCells, fromText } from "@drawcord/grid";
import { expand, type UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type CheckOptions,
  check,
  checkGrid,
  type Finding,
  findingsOf,
  type RuleName,
} from "../src/index.js";
import { onTabby } from "../src/rules/examples.js";
import { draft, drawdown } from "./arbitraries.js";
import { cellsOf } from "./slow-twin.js";

const of = <Name extends RuleName>(rule: Name, findings: readonly Finding[]) =>
  findingsOf({ findings }, rule);
const total = (findings: readonly Finding[]) => findings.reduce((sum, { count = 1 }) => sum + count, 0);
const found = <Name extends RuleName>(rule: Name, one: UnitDraft, options?: CheckOptions) =>
  of(rule, check(one, options).findings);

/** Whether a unit is drawn in a row, from the definition. */
const isDrawn = (one: UnitDraft, unit: number, row: number) =>
  one.threading[unit]!.some((shaft) => one.lifts[row]!.includes(shaft));

const sizeOf = (sizes: number | readonly number[], i: number) =>
  typeof sizes === "number" ? sizes : sizes[i]!;

describe("edge-float", () => {
  it("tells of every turn whose two floats are together too long and apart are not", () => {
    fc.assert(
      fc.property(drawdown(), fc.integer({ min: 1, max: 5 }), fc.boolean(), (grid, threads, fromLeft) => {
        const lines = cellsOf(grid);
        let turns = 0;
        lines.slice(1).forEach((line, i) => {
          const atRight = (i % 2 === 0) === fromLeft;
          const [one, other] = [lines[i]!, line].map((cells) => (atRight ? cells.toReversed() : cells));
          if (one![0] !== other![0]) return;
          const run = (cells: boolean[]) => {
            const end = cells.findIndex((state) => state !== cells[0]);
            return end === -1 ? cells.length : end;
          };
          const lengths = [run(one!), run(other!)] as const;
          if (Math.max(...lengths) <= threads && lengths[0] + lengths[1] > threads) turns++;
        });
        const options = {
          limits: { weftFloat: { threads } },
          firstPickFrom: fromLeft ? "left" : "right",
        } as const;
        const told = of("edge-float", checkGrid(grid, options).findings);
        expect(total(told.filter(({ system }) => system === "weft"))).toBe(turns);
      }),
    );
  });

  it("tells of every stretch over which no turn at its edge catches the outermost end, by trying every one", () => {
    let met = 0;
    fc.assert(
      fc.property(drawdown(), fc.integer({ min: 1, max: 9 }), fc.boolean(), (grid, threads, fromLeft) => {
        const lines = cellsOf(grid);
        const lengths = [false, true].flatMap((right) => {
          const edge = lines.map((line) => line.at(right ? -1 : 0));
          // The turns at this edge lie between a pick and the next, from the first or from the second pick on.
          const free = lines.flatMap((_, pick) =>
            pick + 1 < lines.length && (pick % 2 === 0) === (right === fromLeft)
              ? [edge[pick] === edge[pick + 1] ? "." : "#"]
              : [],
          );
          const start = right === fromLeft ? 0 : 1;
          return [...free.join("").matchAll(/\.+/g)].flatMap(({ index, 0: { length } }) => {
            const picks = edge.slice(start + 2 * index, start + 2 * (index + length));
            return new Set(picks).size === 2 && picks.length > threads ? [picks.length] : [];
          });
        });
        const options = {
          limits: { warpFloat: { threads } },
          firstPickFrom: fromLeft ? "left" : "right",
        } as const;
        const told = of("edge-float", checkGrid(grid, options).findings).filter(
          ({ system }) => system === "warp",
        );
        expect(total(told)).toBe(lengths.length);
        expect(Math.max(...told.map(({ measured = 0 }) => measured))).toBe(Math.max(...lengths));
        if (lengths.length > 0) met++;
      }),
      { numRuns: 300 },
    );
    expect(met).toBeGreaterThan(50);
  });

  it("names the edge, the stretch in mm and the side that the first pick comes from, and is silent from the other side", () => {
    // Twill of two up and two down: each turn at the right goes over, or under, the last end twice.
    const grid = fromText("##..\n.##.\n..##\n#..#\n".repeat(3).trimEnd());
    const told = (firstPickFrom: "left" | "right") =>
      of("edge-float", checkGrid(grid, { sett: { picksPerCm: 10 }, firstPickFrom }).findings).map(
        ({ message }) => message,
      );
    expect(told("left")).toEqual([
      "the end at the right edge is caught by no turn of the weft for 12 mm (12 picks), where 6 mm are allowed, when the first pick comes from the left: end 4, picks 1-12",
      "the end at the left edge is caught by no turn of the weft for 10 mm (10 picks), where 6 mm are allowed, when the first pick comes from the left: end 1, picks 2-11",
    ]);
    expect(told("right")).toEqual([]);
  });

  it("asks for a catch by any weft of the cloth, and for none where the cloth repeats beside itself", () => {
    const grid = fromText("##..\n.##.\n..##\n#..#\n".repeat(3).trimEnd());
    const free = (options: CheckOptions) =>
      of("edge-float", checkGrid(grid, { limits: { float: { threads: 6 } }, ...options }).findings);
    expect(free({})).toHaveLength(2);
    expect(free({ repeat: "ends" })).toEqual([]);
    const step = (raise: number, weft: string) => ({ raise: [raise], sink: [3 - raise], weft });
    const one: UnitDraft = {
      // Tabby of two wefts, two picks of each: alone, neither would catch both edges.
      ground: {
        shafts: 2,
        threading: [1, 2],
        steps: [step(1, "a"), step(1, "b"), step(1, "a"), step(2, "b")],
      },
      unitEnds: 2,
      threading: [[], []],
      lifts: Array.from({ length: 6 }, () => []),
      picksPerRow: 4,
    };
    expect(found("edge-float", one, { limits: { float: { threads: 6 } } })).toEqual([]);
  });
});

describe("uneven-take-up", () => {
  it("names just the units whose ends interlace further from the mean than allowed", () => {
    fc.assert(
      fc.property(draft(), fc.integer({ min: 5, max: 60 }), (one, takeUp) => {
        const { drawdown: grid, unitOfEnd } = expand(one);
        const left = one.selvedge?.left?.length ?? 0;
        const ends = Array.from({ length: grid.columns }, (_, end) =>
          cellsOf(grid).map((line) => line[end]!),
        );
        const changes = ends.map((end) => end.filter((state, i) => i > 0 && state !== end[i - 1]).length);
        const mean = (of_: readonly number[]) => of_.reduce((a, b) => a + b, 0) / of_.length;
        const all = mean(changes);
        const uneven = new Set<number>();
        const groups = new Set(
          Array.from(unitOfEnd, (unit, end) => (unit >= 0 ? unit : end < left ? -1 : -2)),
        );
        for (const group of groups) {
          const own = ends.flatMap((_, end) => {
            const unit = unitOfEnd[end]!;
            return (unit >= 0 ? unit : end < left ? -1 : -2) === group ? [end] : [];
          });
          const here = mean(own.map((end) => changes[end]!));
          if (Math.abs((100 * (here - all)) / all) > takeUp + 1e-9 && Math.abs(here - all) >= 2) {
            for (const end of own) uneven.add(end + 1);
          }
        }
        const told = found("uneven-take-up", one, { limits: { takeUp } }).filter(
          ({ system }) => system === "warp",
        );
        const named = told.flatMap(({ ends: span = [1, 0] }) =>
          Array.from({ length: span[1] - span[0] + 1 }, (_, i) => span[0] + i),
        );
        expect(named.toSorted((a, b) => a - b)).toEqual([...uneven].sort((a, b) => a - b));
      }),
    );
  });
});

describe("uneven-take-up, where no limit is set,", () => {
  /** Four ends that change sides so many times in 40 picks, beside four that change as many times as is said. */
  const told = (...changes: readonly number[]) =>
    of(
      "uneven-take-up",
      checkGrid(
        fromCells(40, 4 * changes.length, (pick, end) => Math.min(pick, changes[end >> 2]!) % 2 === 1),
      ).findings,
    )
      .filter(({ system }) => system === "warp")
      .map(({ measured = 0 }) => Math.round(measured * 10) / 10);

  it("allows 15 % of the mean", () => {
    expect(told(23, 17)).toEqual([]);
    expect(told(22, 16)).toEqual([15.8, -15.8]);
  });

  it("says nothing of a difference of less than two intersections, however great a share of the mean it is", () => {
    expect(told(4, 1)).toEqual([]);
    expect(told(4, 0)).toEqual([100, -100]);
  });

  it("joins neighbours that lie to the same side of the mean, and tells the worst of them", () => {
    expect(told(30, 28, 10, 12)).toEqual([50, -50]);
    expect(told(30, 20, 30, 8, 12)).toEqual([-60, 50, 50]);
  });
});

describe("long-stretch", () => {
  it("counts every stretch of a unit that hangs on a shaft and stays as it is for longer than allowed", () => {
    fc.assert(
      fc.property(draft(), fc.integer({ min: 1, max: 20 }), (one, picks) => {
        let stretches = 0;
        one.threading.forEach((shafts, unit) => {
          let length = 0;
          one.lifts.forEach((_, row) => {
            length += sizeOf(one.picksPerRow, row);
            const ends =
              row === one.lifts.length - 1 || isDrawn(one, unit, row) !== isDrawn(one, unit, row + 1);
            if (!ends) return;
            if (shafts.length > 0 && length > picks) stretches++;
            length = 0;
          });
        });
        expect(total(found("long-stretch", one, { limits: { stretch: { picks } } }))).toBe(stretches);
      }),
    );
  });
});

describe("large-area", () => {
  it("tells of the largest area of the report when it is larger than allowed, first", () => {
    fc.assert(
      fc.property(draft(), fc.integer({ min: 1, max: 40 }), (one, squares) => {
        const report = check(one, { limits: { area: { squares } } });
        const { largest } = report.balance.areas;
        expect(of("large-area", report.findings)[0]?.measured).toBe(largest > squares ? largest : undefined);
      }),
    );
  });
});

describe("thin-area", () => {
  it("finds a square set alone wherever it is set, and no other", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 }), (unit, row) => {
        const one: UnitDraft = {
          ...onTabby,
          threading: Array.from({ length: 10 }, (_, i) => [i + 1]),
          lifts: Array.from({ length: 10 }, (_, i) => (i === row ? [unit + 1] : [])),
        };
        expect(found("thin-area", one)).toMatchObject([
          { units: [unit + 1, unit + 1], rows: [row + 1, row + 1] },
        ]);
      }),
    );
  });
});

describe("stated-number", () => {
  it("is silent on the report's own numbers, and tells of any other", () => {
    fc.assert(
      fc.property(draft(), fc.nat(4), (one, place) => {
        const { size, floats } = check(one);
        const longest = Math.max(...Object.values(floats).map((tally) => tally.longest));
        const stated = [
          ...Object.entries(size).map(([name, claim]) => ({ name, claim, unit: name })),
          { name: "longest-float", claim: longest, unit: "threads" },
        ];
        expect(found("stated-number", one, { stated })).toEqual([]);
        const wrong = stated.map((number, i) =>
          i === place ? { ...number, claim: number.claim + 1 } : number,
        );
        const { claim, name } = stated[place]!;
        expect(found("stated-number", one, { stated: wrong })).toMatchObject([
          { measured: claim, limit: claim + 1, stated: name },
        ]);
      }),
    );
  });

  it("lets a claim be off by as much as it was rounded, and no more", () => {
    const told = (claim: number, within: number) =>
      checkGrid(fromText("#.\n.#"), {
        stated: [{ name: "width-in-reed", claim, unit: "in", found: 12.08, within, line: 9 }],
      }).findings.map(({ message }) => message);
    expect(told(12.1, 0.05)).toEqual([]);
    expect(told(12.13, 0.05)).toEqual([]);
    expect(told(12.2, 0.05)).toEqual([
      "line 9 states 12.2 in in the reed; worked out, 12.08 in, 0.12 in less",
    ]);
  });

  it("is silent on nothing that is stated as nothing", () => {
    const stated = [{ name: "fringe", claim: 0, unit: "cm", found: 0 }];
    expect(of("stated-number", checkGrid(fromText("#.\n.#"), { stated }).findings)).toEqual([]);
  });

  it("names both numbers, the difference and the line", () => {
    const [finding] = checkGrid(fromText("#.\n.#"), {
      stated: [{ name: "ends", claim: 5, unit: "ends", line: 3 }],
    }).findings;
    expect(finding?.message).toBe("line 3 states 5 ends, and there are 2, 3 fewer");
  });
});

describe("face-share", () => {
  it("allows 30 percentage points where no limit is set", () => {
    // At two ends a cm, two columns of 50 mm whose ends are raised on so many of 100 picks.
    const told = (left: number, right: number) =>
      of(
        "face-share",
        checkGrid(
          fromCells(100, 20, (pick, end) => (pick * 37) % 100 < (end < 10 ? left : right)),
          { sett: { endsPerCm: 2 } },
        ).findings,
      ).filter(({ system }) => system === "warp");
    expect(told(80, 20)).toEqual([]);
    expect(told(81, 20)).toMatchObject([
      { measured: expect.closeTo(30.5, 9) },
      { measured: expect.closeTo(-30.5, 9) },
    ]);
  });

  it("allows a share just at the limit, and not one above it", () => {
    // At two ends a cm, three columns of 50 mm: two with half of the warp on the face and one with all of it.
    const grid = fromText(`${"#.".repeat(10)}${"#".repeat(10)}`);
    const report = (faceShare: number) => checkGrid(grid, { sett: { endsPerCm: 2 }, limits: { faceShare } });
    const points = 100 * (1 - 20 / 30);
    expect(of("face-share", report(points + 0.01).findings)).toEqual([]);
    expect(of("face-share", report(points - 0.01).findings)).toMatchObject([
      { ends: [21, 30], system: "warp" },
    ]);
  });
});
