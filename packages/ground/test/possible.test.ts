import { describe, expect, it } from "vitest";
import { cutOf, groundsOn } from "../src/index.js";
import { expectRefusal } from "./expect-error.js";

describe("the grounds on n ends", () => {
  it("begin with the 8-end satin, on 8 ends", () => {
    const names = groundsOn(8).map(({ description }) => description);
    expect(names.slice(0, 4)).toEqual([
      "satin 8 step 3",
      "broken twill 1/7 by fourths",
      "broken twill 1/7",
      "twill 1/7",
    ]);
    expect(names).toContain("plain");
    expect(names).toContain("hopsack 4/4");
  });

  it("begin with the broken twill on 4 ends, the irregular satin on 6, and an irregular pair on 5 and 7", () => {
    expect([4, 6, 5, 7].map((n) => groundsOn(n)[0]!.description)).toEqual([
      "broken twill 1/3",
      "satin 6",
      undefined,
      undefined,
    ]);
  });

  it("come best first: by kind, then cut, then touching binding points", () => {
    for (let n = 2; n <= 16; n++) {
      const found = groundsOn(n);
      expect(found.length).toBeGreaterThan(0);
      const ranks = found.map(({ kind, cut, touching }) => {
        const open = 2 - cut.sideways.share - cut.lengthways.share;
        return [kind === "two weaves" ? 0 : 1, open, touching ?? n] as const;
      });
      for (let i = 1; i < ranks.length; i++) {
        const at = [0, 1, 2].find((k) => ranks[i]![k] !== ranks[i - 1]![k]);
        if (at !== undefined) expect(ranks[i]![at]!).toBeGreaterThan(ranks[i - 1]![at]!);
      }
    }
  });

  it("are planned for the size of the figure", () => {
    for (const { ground, cut } of groundsOn(8, { unitEnds: 6, picksPerRow: 4 })) {
      expect(cut).toEqual(cutOf(ground, { unitEnds: 6, picksPerRow: 4 }));
    }
    expect(groundsOn(5, { unitEnds: 4 }).every(({ description }) => description !== undefined)).toBe(true);
  });

  it("need two ends, and 64 at the most", () => {
    expectRefusal(
      () => groundsOn(1),
      "bad-size",
      "the number of ends of a ground must be a whole number of at least 2, not 1",
    );
    expectRefusal(
      () => groundsOn(65),
      "too-large",
      "a ground on 65 ends needs 65 ground shafts; a ground harness may have 64 at the most",
    );
  });
});
