/** Each rule against the slow, obvious count of what it says it finds. */
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
  type Span,
} from "../src/index.js";
import { draft, drawdown, slippedDraft } from "./arbitraries.js";
import { cellsOf } from "./slow-twin.js";

type Cells = boolean[][];

const of = <Name extends RuleName>(rule: Name, findings: readonly Finding[]) =>
  findingsOf({ findings }, rule);
const total = (findings: readonly Finding[]) => findings.reduce((sum, { count = 1 }) => sum + count, 0);
const found = <Name extends RuleName>(rule: Name, one: UnitDraft, options?: CheckOptions) =>
  of(rule, check(one, options).findings);
const turned = (cells: Cells) => (cells[0] ?? []).map((_, column) => cells.map((line) => line[column]!));
const mean = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0) / numbers.length;
const upTo = (count: number) => Array.from({ length: count }, (_, i) => i);

/** Rows x units, drawn or not, from the definition. */
const squaresOf = ({ threading, lifts }: UnitDraft): Cells =>
  lifts.map((lift) => threading.map((shafts) => shafts.some((shaft) => lift.includes(shaft))));

const sizesOf = (sizes: number | readonly number[], count: number) =>
  upTo(count).map((i) => (typeof sizes === "number" ? sizes : sizes[i]!));

/** Runs a law, and sees to it that it met what it is about in enough of the drafts. */
function law<T>(things: fc.Arbitrary<T>, hold: (thing: T) => boolean, least: number, numRuns = 200): void {
  let met = 0;
  fc.assert(
    fc.property(things, (thing) => {
      if (hold(thing)) met++;
    }),
    { numRuns },
  );
  expect(met).toBeGreaterThanOrEqual(least);
}

describe("loose-thread", () => {
  it("tells of every end and pick of one state all along, on its side, and of no other", () => {
    law(
      drawdown(),
      (grid) => {
        const cells = cellsOf(grid);
        const { findings } = checkGrid(grid);
        const sides = [
          ["warp", "face", turned(cells), true],
          ["warp", "back", turned(cells), false],
          ["weft", "face", cells, false],
          ["weft", "back", cells, true],
        ] as const;
        let all = 0;
        for (const [system, face, threads, state] of sides) {
          const loose = threads.flatMap((thread, i) =>
            thread.every((cell) => cell === state) ? [i + 1] : [],
          );
          const told = of("loose-thread", findings).filter(
            (one) => one.system === system && one.face === face,
          );
          expect(total(told)).toBe(loose.length);
          const spans = told.map((one) => (system === "warp" ? one.ends : one.picks)!);
          for (const thread of loose) expect(spans.some(([a, b]) => a <= thread && thread <= b)).toBe(true);
          all += loose.length;
        }
        return all > 0;
      },
      40,
    );
  });
});

describe("the shafts of a plan", () => {
  const staticShaft = 6;
  it("are idle, unknown or static but drawn just as the lists of units and rows say", () => {
    law(
      draft(),
      (one) => {
        const hung = new Set(one.threading.flat());
        const drawn = new Set(one.lifts.flat());
        const { findings } = check(one, { staticShaft });
        const told = (rule: "idle-shaft" | "unknown-shaft" | "static-drawn") =>
          of(rule, findings)
            .filter(({ harness }) => harness === "pattern")
            .map(({ shaft }) => shaft);
        const idle = [...hung].filter((shaft) => !drawn.has(shaft) && shaft !== staticShaft);
        const unknown = [...drawn].filter((shaft) => !hung.has(shaft) && shaft !== staticShaft);
        expect(told("idle-shaft").sort()).toEqual(idle.sort());
        expect(told("unknown-shaft").sort()).toEqual(unknown.sort());
        expect(told("static-drawn")).toEqual(drawn.has(staticShaft) ? [staticShaft] : []);
        for (const { shaft, rows, count = 1 } of of("unknown-shaft", findings)) {
          const own = one.lifts.flatMap((lift, row) => (lift.includes(shaft) ? [row + 1] : []));
          expect([rows, count]).toEqual([[own[0], own.at(-1)], own.length]);
        }
        const { ground, selvedge } = one;
        const ofUnits = sizesOf(one.unitEnds, one.threading.length).reduce((a, b) => a + b, 0);
        const ends = [
          ...upTo(ofUnits).map((end) => ground.threading[end % ground.threading.length]!),
          ...(selvedge?.left ?? []),
          ...(selvedge?.right ?? []),
        ];
        expect(
          of("idle-shaft", findings).flatMap(({ harness, shaft }) => (harness === "ground" ? [shaft] : [])),
        ).toEqual(
          upTo(ground.shafts)
            .map((i) => i + 1)
            .filter((shaft) => !ends.includes(shaft)),
        );
        return idle.length > 0 && unknown.length > 0;
      },
      25,
    );
  });

  it("and its treadles and lingos are told where the loom has fewer, and by how many", () => {
    law(
      fc.tuple(draft(), fc.integer({ min: 1, max: 8 })),
      ([one, has]) => {
        const moves = one.ground.steps
          .map(({ raise, sink }) => `${raise} | ${sink}`)
          .filter((text) => text !== " | ");
        const needs = {
          "pattern shafts": Math.max(0, ...one.threading.flat(), ...one.lifts.flat()),
          "ground shafts": one.ground.shafts,
          treadles: new Set(moves).size,
          lingos: one.threading.length,
        };
        const loom = { patternShafts: has, groundShafts: has, treadles: has, lingos: has };
        const told = found("loom-capacity", one, { loom }).map(({ unit, measured }) => [unit, measured]);
        const expected = Object.entries(needs).filter(([, needed]) => needed > has);
        expect(Object.fromEntries(told)).toEqual(Object.fromEntries(expected));
        return expected.length > 0;
      },
      50,
    );
  });
});

describe("uneven-take-up", () => {
  it("names just the rows whose picks of the ground weft interlace further from the mean than allowed", () => {
    law(
      fc.tuple(draft(), fc.integer({ min: 5, max: 60 })),
      ([one, takeUp]) => {
        const { drawdown: grid, rowOfPick, stepOfPick } = expand(one);
        const ground = cellsOf(grid).flatMap((line, pick) =>
          one.ground.steps[stepOfPick[pick]!]!.weft === undefined
            ? [
                {
                  pick: pick + 1,
                  row: rowOfPick[pick]!,
                  changes: line.filter((cell, i) => i > 0 && cell !== line[i - 1]).length,
                },
              ]
            : [],
        );
        const all = mean(ground.map(({ changes }) => changes));
        const uneven = ground.filter(({ row }) => {
          const here = mean(ground.filter((pick) => pick.row === row).map(({ changes }) => changes));
          return Math.abs((100 * (here - all)) / all) > takeUp + 1e-9 && Math.abs(here - all) >= 2;
        });
        const told = found("uneven-take-up", one, { limits: { takeUp } }).filter(
          ({ system }) => system === "weft",
        );
        const named = (pick: number) => told.some(({ picks: [a, b] = [1, 0] }) => a <= pick && pick <= b);
        expect(ground.filter(({ pick }) => named(pick))).toEqual(uneven);
        return uneven.length > 0;
      },
      20,
    );
  });
});

describe("face-share", () => {
  it("names just the bands and columns whose share lies further from the cloth's than allowed", () => {
    law(
      fc.tuple(drawdown(), fc.constantFrom(0.2, 0.5, 1), fc.integer({ min: 1, max: 40 })),
      ([grid, perCm, faceShare]) => {
        const cells = cellsOf(grid);
        const all = mean(cells.flat().map(Number));
        const expected = [cells, turned(cells)].map((threads) => {
          // As many bands as have at least 50 mm, of sizes as equal as may be.
          const bands = Math.max(1, Math.floor(threads.length / Math.floor(5 * perCm)));
          return upTo(bands).flatMap((band): Span[] => {
            const first = Math.floor((band * threads.length) / bands);
            const end = Math.floor(((band + 1) * threads.length) / bands);
            const own = mean(threads.slice(first, end).flat().map(Number));
            return Math.abs(100 * (own - all)) > faceShare + 1e-9 ? [[first + 1, end]] : [];
          });
        });
        const { findings } = checkGrid(grid, {
          limits: { faceShare },
          sett: { endsPerCm: perCm, picksPerCm: perCm },
        });
        const spans = (system: string) =>
          of("face-share", findings)
            .filter((one) => one.system === system)
            .map(({ ends, picks }) => ends ?? picks!)
            .sort((a, b) => a[0] - b[0]);
        expect([spans("weft"), spans("warp")]).toEqual(expected);
        return expected.flat().length > 0;
      },
      60,
    );
  });
});

describe("unlike-sides", () => {
  it("compares the longest floats of both sides, and tells when one is more than so many times the other", () => {
    law(
      fc.tuple(drawdown(), fc.constantFrom(1, 1.5, 2, 3)),
      ([grid, times]) => {
        const report = checkGrid(grid, { limits: { unlikeSides: times } });
        const { warpFace, warpBack, weftFace, weftBack } = report.floats;
        const expected = (
          [
            ["warp", warpFace, warpBack],
            ["weft", weftFace, weftBack],
          ] as const
        ).flatMap(([system, { longest: face }, { longest: back }]) =>
          face > 0 && back > 0 && (face > times * back || back > times * face)
            ? [{ system, face: face > back ? "face" : "back", measured: Math.max(face, back) }]
            : [],
        );
        const told = of("unlike-sides", report.findings).map(({ system, face, measured }) => ({
          system,
          face,
          measured,
        }));
        expect(told.sort((a, b) => (a.system! < b.system! ? -1 : 1))).toEqual(expected);
        return expected.length > 0;
      },
      50,
    );
  });
});

/** A patch of squares of one state: how many, and its bounds from 0. */
interface Area {
  readonly drawn: boolean;
  readonly squares: number;
  readonly rows: Span;
  readonly units: Span;
}

function areasOf(squares: Cells): Area[] {
  const seen = new Set<string>();
  const areas: Area[] = [];
  squares.forEach((line, row) => {
    line.forEach((drawn, unit) => {
      const area: [number, number][] = [];
      const flood = (r: number, u: number): void => {
        if (squares[r]?.[u] !== drawn || seen.has(`${r} ${u}`)) return;
        seen.add(`${r} ${u}`);
        area.push([r, u]);
        for (const [down, right] of [
          [1, 0],
          [-1, 0],
          [0, 1],
          [0, -1],
        ] as const)
          flood(r + down, u + right);
      };
      flood(row, unit);
      if (area.length === 0) return;
      const [rs, us] = turned(area as unknown as Cells) as unknown as number[][];
      const extent = (numbers: number[]): Span => [Math.min(...numbers), Math.max(...numbers)];
      areas.push({ drawn, squares: area.length, rows: extent(rs!), units: extent(us!) });
    });
  });
  return areas;
}

describe("large-area", () => {
  it("tells of every area with more squares than are allowed of its state, drawn or undrawn", () => {
    law(
      fc.tuple(draft(), fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 })),
      ([one, drawn, undrawn]) => {
        const expected = areasOf(squaresOf(one)).filter(
          (area) => area.squares > (area.drawn ? drawn : undrawn),
        );
        const limits = { drawnArea: { squares: drawn }, undrawnArea: { squares: undrawn } };
        const text = (area: { drawn: boolean; size: number; limit: number }) => JSON.stringify(area);
        expect(
          found("large-area", one, { limits })
            .map(({ drawn: is, measured, limit }) => text({ drawn: is, size: measured, limit }))
            .sort(),
        ).toEqual(
          expected
            .map((area) =>
              text({ drawn: area.drawn, size: area.squares, limit: area.drawn ? drawn : undrawn }),
            )
            .sort(),
        );
        return expected.length > 0;
      },
      60,
    );
  });

  it("measures the longer side of every area in mm at the sett", () => {
    law(
      fc.tuple(draft(), fc.integer({ min: 1, max: 60 }), fc.constantFrom(4, 10, 12), fc.constantFrom(5, 10)),
      ([one, mm, endsPerCm, picksPerCm]) => {
        const ends = sizesOf(one.unitEnds, one.threading.length);
        const picks = sizesOf(one.picksPerRow, one.lifts.length);
        const sum = (sizes: number[], [first, last]: Span) =>
          sizes.slice(first, last + 1).reduce((a, b) => a + b, 0);
        const sides = areasOf(squaresOf(one))
          .map(({ rows, units }) =>
            Math.max((10 * sum(ends, units)) / endsPerCm, (10 * sum(picks, rows)) / picksPerCm),
          )
          .filter((side) => side > mm + 1e-6);
        const told = found("large-area", one, { limits: { area: { mm } }, sett: { endsPerCm, picksPerCm } });
        expect(told.map(({ measured = 0 }) => measured.toFixed(6)).sort()).toEqual(
          sides.map((side) => side.toFixed(6)).sort(),
        );
        return sides.length > 0;
      },
      60,
    );
  });
});

describe("thin-area", () => {
  it("tells of the small areas standing alone that no other place in the figure explains, by looking at every area", () => {
    law(
      fc.tuple(fc.oneof(draft(), slippedDraft), fc.integer({ min: 1, max: 4 })),
      ([one, thinArea]) => {
        const squares = squaresOf(one);
        const alone = areasOf(squares).filter((area) => {
          const {
            rows: [bottom, top],
            units: [left, right],
          } = area;
          if (area.squares > thinArea || (bottom !== top && left !== right)) return false;
          if (bottom === 0 || left === 0 || top === squares.length - 1 || right === squares[0]!.length - 1)
            return false;
          const corners = [
            squares[bottom - 1]![left - 1],
            squares[bottom - 1]![right + 1],
            squares[top + 1]![left - 1],
            squares[top + 1]![right + 1],
          ];
          return !corners.includes(area.drawn);
        });
        const shape = ({ drawn, rows: [bottom, top], units: [left, right] }: (typeof alone)[number]) =>
          `${drawn} ${right - left} ${top - bottom}`;
        const expected = alone.filter((area) => {
          const {
            rows: [bottom, top],
            units: [left, right],
          } = area;
          const rows = alone.flatMap((other) => (shape(other) === shape(area) ? [other.rows[0]] : []));
          // In more than six rows it is a texture.
          if (new Set(rows).size > 6) return false;
          const reach = [-3, -2, -1, 0, 1, 2, 3, 4, 5, 6];
          return !alone.some(
            (other) =>
              other !== area &&
              shape(other) === shape(area) &&
              [1, -1].some((up) =>
                [1, -1].some((over) =>
                  reach.slice(0, top - bottom + 7).every((y) =>
                    reach.slice(0, right - left + 7).every((x) => {
                      const row = up === 1 ? other.rows[0] + y : other.rows[1] - y;
                      const unit = over === 1 ? other.units[0] + x : other.units[1] - x;
                      return squares[bottom + y]?.[left + x] === squares[row]?.[unit];
                    }),
                  ),
                ),
              ),
          );
        });
        expect(total(found("thin-area", one, { limits: { thinArea } }))).toBe(expected.length);
        return expected.length > 0;
      },
      40,
      400,
    );
  });
});

describe("unused-waiver", () => {
  it("tells of just the waivers within whose place no finding of their rule lies", () => {
    const span = fc
      .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 20, max: 90 }))
      .map(([first, more]): Span => [first, first + more]);
    const waiver = fc.record(
      {
        rule: fc.constantFrom<RuleName>("float-length", "unknown-shaft", "open-cut"),
        reason: fc.constant("meant"),
        ends: span,
        picks: span,
        units: span,
        rows: span,
      },
      { requiredKeys: ["rule", "reason"] },
    );
    law(
      fc.tuple(draft(), fc.array(waiver, { minLength: 1, maxLength: 4 })),
      ([one, waive]) => {
        const limits = { float: { threads: 3 } };
        const { findings } = check(one, { limits });
        const lies = (inner: Span | undefined, outer: Span | undefined) =>
          outer === undefined || (inner !== undefined && outer[0] <= inner[0] && inner[1] <= outer[1]);
        const unused = waive.filter(
          ({ rule, ends, picks, units, rows }) =>
            !of(rule, findings).some(
              (finding) =>
                lies(finding.ends, ends) &&
                lies(finding.picks, picks) &&
                lies(finding.units, units) &&
                lies(finding.rows, rows),
            ),
        );
        const report = check(one, { limits, waive });
        expect(
          of("unused-waiver", report.findings)
            .map(({ waives }) => waives)
            .sort(),
        ).toEqual(unused.map(({ rule }) => rule).sort());
        return unused.length > 0 && report.waived > 0;
      },
      20,
    );
  });
});
