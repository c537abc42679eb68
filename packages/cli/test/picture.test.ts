import { blank, fromCells, fromText } from "@drawcord/grid";
import { assert, integer, property, tuple } from "fast-check";
import { describe, expect, it } from "vitest";
import { paintFor } from "../src/paint.js";
import { picture } from "../src/pretty/picture.js";
import { stretch } from "../src/pretty/window.js";

const plain = paintFor({ isTerminal: false, env: {} });

/** 1/3 twill, 40 ends by 40 picks. */
const twill = fromCells(40, 40, (pick, end) => (end - pick + 40) % 4 === 0);

describe("the piece of drawdown around a finding", () => {
  it("has the last pick on top, marks the finding's ends and picks, and numbers them", () => {
    expect(picture(twill, { ends: [12, 13], picks: [20, 21] }, 80, plain)).toEqual([
      "pick 25   .#...#...#",
      "     24   #...#...#.",
      "     23   ...#...#..",
      "     22   ..#...#...",
      "     21 > .#...#...#",
      "     20 > #...#...#.",
      "     19   ...#...#..",
      "     18   ..#...#...",
      "     17   .#...#...#",
      "     16   #...#...#.",
      "              ^^",
      "    end   8   12   17",
    ]);
  });

  it("stays inside the cloth at its corners", () => {
    expect(picture(fromText("#.\n.#"), { ends: [1, 1], picks: [1, 1] }, 80, plain)).toEqual([
      "pick 2   #.",
      "     1 > .#",
      "         ^",
      "   end   1",
    ]);
  });

  it("shows the beginning of a large finding and says how much is left out", () => {
    const lines = picture(blank(5000, 3000), { ends: [100, 2000], picks: [10, 12] }, 30, plain);
    const all = picture(blank(5000, 3000), { ends: [100, 2000] }, 30, plain);
    expect(lines.every((line) => line.length <= 30 || line.includes("and so on"))).toBe(true);
    expect(all.at(-1)).toBe("            and so on for 1890 more ends and 4976 more picks");
    expect(all).toHaveLength(24 + 3);
    expect(lines).toHaveLength(11 + 3);
  });

  it("is nothing for a finding without a place, or in a cloth without threads", () => {
    expect(picture(twill, {}, 80, plain)).toEqual([]);
    expect(picture(blank(0, 0), { ends: [1, 1] }, 80, plain)).toEqual([]);
  });

  it("marks by colour as well on a terminal", () => {
    const paint = paintFor({ isTerminal: true, env: {} });
    const [line] = picture(fromText("#.#"), { ends: [2, 3], picks: [1, 1] }, 80, paint);
    expect(line).toBe("pick 1 > #\u001b[7m.#\u001b[27m");
    for (const quiet of [{ NO_COLOR: "1" }, { TERM: "dumb" }]) {
      const still = paintFor({ isTerminal: true, env: quiet });
      expect(picture(fromText("#.#"), { ends: [2, 3] }, 80, still)[0]).toBe("pick 1 > #.#");
    }
  });

  it("always shows the first thread of a finding, never more than fit, and never a thread that is not there", () => {
    const spans = tuple(
      integer({ min: 1, max: 500 }),
      integer({ min: 0, max: 500 }),
      integer({ min: 0, max: 500 }),
    );
    assert(
      property(spans, integer({ min: 5, max: 80 }), ([first, length, after], most) => {
        const last = first + length;
        const threads = last + after;
        const { shown, marked, left } = stretch([first, last], threads, most, 4);
        expect(shown[0]).toBeGreaterThanOrEqual(1);
        expect(shown[1]).toBeLessThanOrEqual(threads);
        expect(shown[1] - shown[0] + 1).toBeLessThanOrEqual(most);
        expect(shown[0]).toBeLessThanOrEqual(first);
        expect(shown[1]).toBeGreaterThanOrEqual(first);
        expect(marked).toEqual([first, Math.min(last, shown[1])]);
        expect(left).toBe(last - marked[1]);
      }),
    );
  });
});
