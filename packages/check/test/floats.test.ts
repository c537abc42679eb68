import { fromText } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  allowedFloat,
  check,
  checkGrid,
  type Finding,
  type FindingBy,
  findingsOf,
  type Span,
} from "../src/index.js";
import { draft, drawdown, repeat } from "./arbitraries.js";
import { cellsOf } from "./slow-twin.js";

/** One float that is too long, by trying every start on every thread. */
interface Long {
  readonly system: "warp" | "weft";
  readonly face: "face" | "back";
  readonly weft: string;
  readonly thread: number;
  readonly first: number;
  readonly length: number;
}

function longFloats(
  cells: boolean[][],
  allowed: (system: "warp" | "weft", thread: number) => number,
  wefts: (pick: number) => string,
): Long[] {
  const found: Long[] = [];
  const look = (system: "warp" | "weft", threads: boolean[][]) =>
    threads.forEach((thread, t) => {
      let first = 0;
      for (let at = 1; at <= thread.length; at++) {
        if (at < thread.length && thread[at] === thread[first]) continue;
        const length = at - first;
        const raisedIsFace = system === "warp";
        const face = thread[first] === raisedIsFace ? "face" : "back";
        const weft = system === "weft" ? wefts(t) : "";
        if (length > allowed(system, t))
          found.push({ system, face, weft, thread: t + 1, first: first + 1, length });
        first = at;
      }
    });
  look("weft", cells);
  look(
    "warp",
    (cells[0] ?? []).map((_, end) => cells.map((line) => line[end]!)),
  );
  return found;
}

function holds(span: Span | undefined, first: number, last: number): boolean {
  return span !== undefined && span[0] <= first && last <= span[1];
}

function agree(findings: readonly FindingBy<"float-length">[], long: readonly Long[]): void {
  const kind = ({ system, face, weft = "" }: { system?: string; face?: string; weft?: string }) =>
    `${system} ${face} ${weft}`;
  const kinds = new Set([...findings.map(kind), ...long.map(kind)]);
  for (const one of kinds) {
    const regions = findings.filter((finding) => kind(finding) === one);
    const floats = long.filter((float) => kind(float) === one);
    expect(regions.reduce((sum, { count = 1 }) => sum + count, 0)).toBe(floats.length);
    expect(Math.max(...regions.map(({ measured }) => measured))).toBe(
      Math.max(...floats.map(({ length }) => length)),
    );
    for (const { thread, first, length, system } of floats) {
      const last = first + length - 1;
      const within = regions.some(({ ends, picks }) =>
        system === "warp"
          ? holds(ends, thread, thread) && holds(picks, first, last)
          : holds(picks, thread, thread) && holds(ends, first, last),
      );
      expect(within).toBe(true);
    }
  }
}

const total = (findings: readonly Finding[]) => findings.reduce((sum, { count = 1 }) => sum + count, 0);
const floatsOf = (findings: readonly Finding[]) => findingsOf({ findings }, "float-length");

describe("float-length", () => {
  it("finds every float over the limit and no other, in drawdowns", () => {
    fc.assert(
      fc.property(drawdown(), fc.integer({ min: 1, max: 8 }), (grid, threads) => {
        const { findings } = checkGrid(grid, { limits: { float: { threads } } });
        agree(
          floatsOf(findings),
          longFloats(
            cellsOf(grid),
            () => threads,
            () => "",
          ),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it("finds every float over the limit of its own weft, in drafts", () => {
    fc.assert(
      fc.property(draft(), (one) => {
        const limits = {
          warpFloat: { threads: 3 },
          weftFloat: { threads: 4 },
          floatOfWeft: { gold: { threads: 6 } },
        };
        const { drawdown: cloth, stepOfPick } = expand(one);
        const weft = (pick: number) => one.ground.steps[stepOfPick[pick]!]!.weft ?? "";
        const allowed = (system: "warp" | "weft", thread: number) =>
          system === "warp" ? 3 : weft(thread) === "gold" ? 6 : 4;
        const found = floatsOf(check(one, { limits }).findings).filter(({ alone }) => !alone);
        agree(found, longFloats(cellsOf(cloth), allowed, weft));
      }),
    );
  });

  it("finds every float over the limit of its own yarn, where that has one, in drafts", () => {
    fc.assert(
      fc.property(draft(), (one) => {
        const yarnOfPick = ["indigo", "madder", "madder", "indigo", "indigo"];
        const limits = {
          weftFloat: { threads: 4 },
          floatOfWeft: { gold: { threads: 6 }, madder: { threads: 2 } },
        };
        const { drawdown: cloth, stepOfPick } = expand(one);
        const yarn = (pick: number) => yarnOfPick[pick % yarnOfPick.length]!;
        const weft = (pick: number) =>
          yarn(pick) === "madder" ? "madder" : (one.ground.steps[stepOfPick[pick]!]!.weft ?? "");
        const lengths = new Map([
          ["madder", 2],
          ["gold", 6],
        ]);
        const allowed = (system: "warp" | "weft", thread: number) =>
          system === "warp" ? Number.POSITIVE_INFINITY : (lengths.get(weft(thread)) ?? 4);
        const found = floatsOf(check(one, { limits, yarnOfPick }).findings);
        const ofWeft = found.filter(({ system }) => system === "weft");
        agree(ofWeft, longFloats(cellsOf(cloth), allowed, weft));
      }),
    );
  });

  it("finds every float over the ground weft that another weft alone ties, by trying every stretch of picks", () => {
    let met = 0;
    fc.assert(
      fc.property(draft(), fc.integer({ min: 1, max: 4 }), (one, threads) => {
        const { drawdown: cloth, stepOfPick } = expand(one);
        const cells = cellsOf(cloth);
        const isGround = (pick: number) => one.ground.steps[stepOfPick[pick]!]!.weft === undefined;
        const picks = cells.flatMap((_, pick) => (isGround(pick) ? [pick] : []));
        const long: Long[] = [];
        for (let end = 0; end < cloth.columns; end++) {
          picks.forEach((first, i) => {
            const state = cells[first]![end];
            if (i > 0 && cells[picks[i - 1]!]![end] === state) return;
            let length = 1;
            while (i + length < picks.length && cells[picks[i + length]!]![end] === state) length++;
            const last = picks[i + length - 1]!;
            const tied = cells.slice(first, last + 1).some((line) => line[end] !== state);
            if (length <= threads || !tied) return;
            long.push({
              system: "warp",
              face: state ? "face" : "back",
              weft: "",
              thread: end + 1,
              first: first + 1,
              length,
            });
          });
        }
        const found = floatsOf(check(one, { limits: { warpFloat: { threads } } }).findings);
        const alone = found.filter((finding) => finding.alone);
        expect(total(alone)).toBe(long.length);
        expect(Math.max(...alone.map(({ measured }) => measured))).toBe(
          Math.max(...long.map(({ length }) => length)),
        );
        for (const { thread, first, face } of long) {
          const within = alone.some(
            (finding) =>
              finding.face === face &&
              holds(finding.ends, thread, thread) &&
              holds(finding.picks, first, first),
          );
          expect(within).toBe(true);
        }
        if (long.length > 0) met++;
      }),
      { numRuns: 300 },
    );
    expect(met).toBeGreaterThan(20);
  });

  it("counts a limit in mm over the ground weft by the ground weft's own picks", () => {
    const step = (raise: number, weft?: string) => ({
      raise: [raise],
      sink: [3 - raise],
      ...(weft && { weft }),
    });
    const banded = (picks: number) => ({
      ground: {
        shafts: 2,
        threading: [1, 2],
        steps: [step(1), step(2, "gold"), step(1), step(2, "gold"), step(1), step(2)],
      },
      unitEnds: 2,
      threading: [[]],
      lifts: [[]],
      picksPerRow: picks,
    });
    // Four of six picks are the ground's: 6 of them a cm where there are 9 picks; three of them are 5 mm.
    const told = (mm: number) =>
      floatsOf(check(banded(6), { limits: { warpFloat: { mm } }, sett: { picksPerCm: 9 } }).findings);
    expect(told(5)).toEqual([]);
    expect(told(4.9).map(({ message, measured, limit, unit }) => [message, measured, limit, unit])).toEqual([
      [
        "warp float of 5 mm (3 picks) on the face over the ground weft, tied by another weft only, where 4.9 mm are allowed: end 1, picks 1-5 (unit 1, row 1)",
        5,
        4.9,
        "mm",
      ],
      [
        "warp float of 5 mm (3 picks) on the back over the ground weft, tied by another weft only, where 4.9 mm are allowed: end 2, picks 1-5 (unit 1, row 1)",
        5,
        4.9,
        "mm",
      ],
    ]);
  });

  it("agrees with the tally of floats whether or not the cloth repeats", () => {
    fc.assert(
      fc.property(drawdown(), repeat, fc.integer({ min: 1, max: 8 }), (grid, over, threads) => {
        const { findings, floats } = checkGrid(grid, { repeat: over, limits: { float: { threads } } });
        const over_ = Object.values(floats)
          .flatMap(({ lengths }) => Object.entries(lengths))
          .reduce((sum, [length, count]) => sum + (Number(length) > threads ? count : 0), 0);
        expect(total(floatsOf(findings))).toBe(over_);
      }),
    );
  });

  it("measures warp floats by the picks a cm and weft floats by the ends a cm", () => {
    const sett = { endsPerCm: 10, picksPerCm: 40 };
    expect(allowedFloat({ sett }, "warp").threads).toBe(24);
    expect(allowedFloat({ sett }, "weft").threads).toBe(6);
  });

  it("allows 5 ends at 20 a cm, which are 2.5 mm, when 2.5 mm are allowed", () => {
    const options = { sett: { endsPerCm: 20 }, limits: { weftFloat: { mm: 2.5 } } };
    expect(allowedFloat(options, "weft").threads).toBe(5);
    const just = checkGrid(fromText("#.....#\n.#.#.#."), options);
    expect(floatsOf(just.findings)).toEqual([]);
    const longer = checkGrid(fromText("#......#\n.#.#.#.#"), options);
    expect(floatsOf(longer.findings)).toMatchObject([
      { measured: 3, limit: 2.5, unit: "mm", ends: [2, 7], picks: [2, 2] },
    ]);
    expect(floatsOf(longer.findings)[0]!.message).toBe(
      "weft float of 3 mm (6 ends) on the face, where 2.5 mm are allowed: ends 2-7, pick 2",
    );
  });

  it("assumes a sett where none is known, and says so", () => {
    const { findings } = checkGrid(fromText(`#${".".repeat(13)}#\n.${"#".repeat(13)}.`));
    expect(floatsOf(findings).map(({ message }) => message)).toEqual([
      "weft float of 13 ends on the back, where 12 are allowed as 20 ends a cm are assumed: ends 2-14, pick 1",
      "weft float of 13 ends on the face, where 12 are allowed as 20 ends a cm are assumed: ends 2-14, pick 2",
    ]);
  });

  it("allows 23 ends at 25 a cm when 9.2 mm are allowed, though 9.2 x 2.5 comes to less than 23 in binary", () => {
    expect((9.2 * 25) / 10).toBeLessThan(23);
    expect(allowedFloat({ sett: { endsPerCm: 25 }, limits: { float: { mm: 9.2 } } }, "weft").threads).toBe(
      23,
    );
  });

  it("shows as many digits of a length as tell it from the limit", () => {
    // 13 picks at 21.5 a cm are 6.0465 mm.
    const options = { sett: { picksPerCm: 21.5 } };
    const long = floatsOf(checkGrid(fromText(`#.\n${".#\n".repeat(13)}#.`), options).findings);
    expect(long[0]?.message).toMatch(
      /^warp float of 6\.05 mm \(13 picks\) on the back, where 6 mm are allowed/,
    );
  });

  it("holds to the tighter of a limit in threads and one in mm", () => {
    const both = { float: { threads: 9, mm: 4 } };
    expect(allowedFloat({ limits: both, sett: { endsPerCm: 20 } }, "weft")).toMatchObject({
      threads: 8,
      mm: 4,
    });
    expect(allowedFloat({ limits: both, sett: { endsPerCm: 30 } }, "weft").threads).toBe(9);
    // Of equal ones, the one in threads is told.
    expect(allowedFloat({ limits: both, sett: { endsPerCm: 22.5 } }, "weft")).toMatchObject({ threads: 9 });
    expect(allowedFloat({ limits: both, sett: { endsPerCm: 22.5 } }, "weft").mm).toBeUndefined();
    expect(allowedFloat({ limits: both, sett: { endsPerCm: 30 } }, "weft").mm).toBeUndefined();
  });

  it("joins neighbouring floats into one region, and leaves distant ones apart", () => {
    const near = checkGrid(fromText(".....#.#\n.....#.#\n#.#.#.#."), {
      limits: { weftFloat: { threads: 4 } },
    });
    expect(floatsOf(near.findings)).toMatchObject([{ count: 2, ends: [1, 5], picks: [2, 3] }]);
    const apart = [
      ".....#.#",
      ...Array.from({ length: 12 }, (_, i) => (i % 2 ? "#.#.#.#." : ".#.#.#.#")),
      ".....#.#",
    ];
    const far = checkGrid(fromText(apart.join("\n")), { limits: { weftFloat: { threads: 4 } } });
    expect(floatsOf(far.findings).map(({ picks }) => picks)).toEqual([
      [1, 1],
      [14, 14],
    ]);
  });
});
