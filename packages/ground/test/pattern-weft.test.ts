import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundFromWeave, parseWeave } from "../src/index.js";
import { expectRefusal } from "./expect-error.js";

describe("a pattern weft that is tied", () => {
  it("is tied on shafts that are named, in turn up and down", () => {
    expect(groundFromWeave("plain with pattern weft tied on 3 4", { ends: 4 }).steps).toEqual([
      { raise: [1, 3], sink: [2, 4] },
      { raise: [3], sink: [4], weft: "pattern" },
      { raise: [2, 4], sink: [1, 3] },
      { raise: [4], sink: [3], weft: "pattern" },
    ]);
  });

  it("in halves hangs an end in each unit on one of two shafts of their own", () => {
    expect(groundFromWeave("plain with pattern weft tied in halves", { unitEnds: 4 })).toEqual({
      shafts: 4,
      threading: [1, 2, 3, 2, 1, 2, 4, 2],
      steps: [
        { raise: [1, 3, 4], sink: [2] },
        { raise: [3], sink: [4], weft: "pattern" },
        { raise: [2], sink: [1, 3, 4] },
        { raise: [4], sink: [3], weft: "pattern" },
      ],
    });
  });

  const ways = fc
    .tuple(fc.constantFrom("halves", "thirds", "twill 4", "twill 5"), fc.integer({ min: 4, max: 24 }))
    .map(([way, within]) => ({ way: `tied in ${way} within ${within}`, within }));

  it("never floats farther than it is tied to, whatever the figure", () => {
    fc.assert(
      fc.property(
        ways,
        fc.constantFrom("plain", "twill 2/2"),
        fc.array(fc.boolean(), { minLength: 1, maxLength: 40 }),
        ({ way, within }, base, figure) => {
          const { threading, steps } = groundFromWeave(`${base} with pattern weft ${way}`);
          for (const { raise, sink, weft } of steps) {
            if (weft === undefined) continue;
            for (const drawn of [
              (_: number) => true,
              (_: number) => false,
              (end: number) => figure[end % figure.length]!,
            ]) {
              const row = Array.from({ length: 3 * threading.length }, (_, end) => {
                const shaft = threading[end % threading.length]!;
                return raise.includes(shaft) || (drawn(end) && !sink.includes(shaft)) ? "#" : ".";
              }).join("");
              const longest = Math.max(...row.match(/#+|\.+/g)!.map((float) => float.length));
              expect(longest).toBeLessThanOrEqual(within);
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it("is tied so that no float passes the limit where nothing is said of its ties, whatever the figure", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 15 }),
        fc.integer({ min: 1, max: 12 }),
        fc.array(fc.boolean(), { minLength: 1, maxLength: 40 }),
        (longestFloat, unitEnds, figure) => {
          const { threading, steps } = groundFromWeave("plain with pattern weft", { longestFloat, unitEnds });
          for (const { raise, sink, weft } of steps.filter((step) => step.weft !== undefined)) {
            expect(weft).toBe("pattern");
            const row = Array.from({ length: 3 * threading.length }, (_, end) => {
              const shaft = threading[end % threading.length]!;
              const isDrawn = figure[Math.floor(end / unitEnds) % figure.length]!;
              return raise.includes(shaft) || (isDrawn && !sink.includes(shaft)) ? "#" : ".";
            }).join("");
            const longest = Math.max(...row.match(/#+|\.+/g)!.map((float) => float.length));
            expect(longest).toBeLessThanOrEqual(longestFloat);
          }
        },
      ),
      { numRuns: 60 },
    );
    // As long as nothing else is said 12 ends are usual, and each unit holds a tie.
    expect(groundFromWeave("plain with pattern weft", { unitEnds: 4 })).toEqual(
      groundFromWeave("plain with pattern weft tied in halves", { unitEnds: 4 }),
    );
  });

  it("leaves the ground what it is without it", () => {
    fc.assert(
      fc.property(ways, fc.constantFrom("plain", "twill 2/2", "hopsack 2/2"), ({ way }, base) => {
        const tied = groundFromWeave(`${base} with pattern weft ${way}`);
        const alone = groundFromWeave(base);
        const picks = tied.steps.filter(({ weft }) => weft === undefined);
        const raised = (ground: typeof tied, steps: typeof tied.steps, pick: number, end: number) =>
          steps[pick % steps.length]!.raise.includes(ground.threading[end % ground.threading.length]!);
        for (let pick = 0; pick < picks.length; pick++) {
          for (let end = 0; end < tied.threading.length; end++) {
            expect(raised(tied, picks, pick, end)).toBe(raised(alone, alone.steps, pick, end));
          }
        }
        expect(new Set(tied.threading).size).toBe(tied.shafts);
      }),
      { numRuns: 40 },
    );
  });

  it("is refused where the ties cannot be", () => {
    const tied = (how: string) => () => groundFromWeave(`plain with pattern weft tied ${how}`);
    expectRefusal(
      tied("on 3"),
      "bad-size",
      "the pattern weft is tied on shaft 3; expected two or more of the ground's 2 shafts, each once",
    );
    expectRefusal(
      tied("on 1 9"),
      "bad-size",
      "the pattern weft is tied on shaft 9; expected two or more of the ground's 2 shafts, each once",
    );
    expectRefusal(
      tied("in twill 9 within 7"),
      "bad-size",
      "9 tie shafts in turn leave floats of 8 ends or more; 7 are asked for",
    );
    expectRefusal(
      tied("in twill 99 within 99999"),
      "too-large",
      "the tied ground repeats after 99990 ends; the most worked out is 4096",
    );
    expectRefusal(
      () => parseWeave("plain with pattern weft tied in fifths"),
      "bad-description",
      `column 33: found "fifths" where "halves", "thirds" or "twill" was expected`,
    );
  });
});
