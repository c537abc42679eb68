import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  DrawcordError,
  type ErrorData,
  errorFrom,
  listed,
  many,
  nearest,
  notationPlace,
  runsOf,
} from "../src/index.js";

class WarpError extends DrawcordError<"torn" | "short"> {
  override readonly name = "WarpError";
}

const place = {
  file: "runner.recipe.yaml",
  line: 3,
  column: 5,
  offset: 40,
  end: { line: 3, column: 9, offset: 44 },
};

const point = { line: fc.nat(), column: fc.nat(), offset: fc.nat() };
const data: fc.Arbitrary<ErrorData> = fc.record(
  {
    name: fc.string(),
    code: fc.string(),
    sentence: fc.string(),
    message: fc.string(),
    facts: fc.dictionary(fc.string(), fc.oneof(fc.string(), fc.integer())),
    place: fc.record({ file: fc.string(), ...point, end: fc.record(point) }),
  },
  { requiredKeys: ["name", "code", "sentence", "message", "facts"] },
);

describe("an error", () => {
  it("says where it is before what it is, and only the latter in its sentence", () => {
    const error = new WarpError("short", "the warp is short", { by: 3 }, place);
    expect(error).toBeInstanceOf(Error);
    expect(error.message).toBe("runner.recipe.yaml:3:5: the warp is short");
    expect(error.sentence).toBe("the warp is short");
    expect(new WarpError("short", "the warp is short").message).toBe("the warp is short");
    expect(new WarpError("torn", "torn", {}, { ...place, file: "" }).message).toBe("line 3, column 5: torn");
    expect(String(error)).toMatch(/^WarpError: runner/);
  });

  it("keeps its name, code, sentence, facts and place over the border of a worker and through JSON", () => {
    const error = new WarpError("short", "the warp is short", { by: 3 }, place);
    const sentence = "the warp is short";
    const message = `runner.recipe.yaml:3:5: ${sentence}`;
    const told = { name: "WarpError", code: "short", sentence, message, facts: { by: 3 }, place };
    expect(JSON.parse(JSON.stringify(error))).toEqual(told);
    const back = errorFrom(structuredClone(error.toJSON()));
    expect(back).toBeInstanceOf(DrawcordError);
    expect([back.name, back.code, back.facts, back.place]).toEqual(["WarpError", "short", { by: 3 }, place]);
    expect(back.message).toBe(error.message);
  });

  it("has the place that the facts of a notation tell", () => {
    expect(notationPlace({ line: 2, column: 4, found: "1-q" })).toEqual({
      ...{ file: "", line: 2, column: 4, offset: 3 },
      end: { line: 2, column: 7, offset: 6 },
    });
    expect(notationPlace({ by: 3 })).toBeUndefined();
  });

  it("comes back from any data as that data", () => {
    fc.assert(
      fc.property(data, (any) => {
        expect(errorFrom(any).toJSON()).toEqual(any);
        expect(errorFrom(structuredClone(any)).toJSON()).toEqual(any);
      }),
    );
  });
});

describe("the nearest known word", () => {
  it("is the one with the fewest letters changed, added, left out or swapped", () => {
    expect(nearest("wosted", ["cotton", "worsted"])).toBe("worsted");
    expect(nearest("Stain", ["plain", "satin"])).toBe("satin");
    expect(nearest("twil", ["twill", "twice"])).toBe("twill");
    expect(nearest("linnen", ["linen"])).toBe("linen");
  });

  it("is none where more than a third of its letters differ", () => {
    expect(nearest("rainbow", ["satin", "twill"])).toBeUndefined();
    expect(nearest("satins", ["patent"])).toBeUndefined();
    expect(nearest("x".repeat(1e6), ["satin"])).toBeUndefined();
    expect(nearest("satin", [])).toBeUndefined();
  });

  it("is the word itself where it is known", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 1, maxLength: 60 }), { minLength: 1 }), (known) => {
        const lower = known.map((word) => word.toLowerCase());
        for (const word of lower) expect(nearest(word, lower)).toBe(word);
      }),
    );
  });
});

describe("words", () => {
  it("count", () => {
    expect([0, 1, 2].map((number) => many(number, "pick"))).toEqual(["0 picks", "1 pick", "2 picks"]);
    expect(many(2, "cloth", "pieces of cloth")).toBe("2 pieces of cloth");
  });

  it("list", () => {
    expect(listed([])).toBe("");
    expect(listed(["a"])).toBe("a");
    expect(listed(["a", "b"], "or")).toBe("a or b");
    expect(listed(["a", "b", "c"])).toBe("a, b and c");
  });

  it("fold runs, and count what they leave out", () => {
    expect(runsOf([])).toBe("");
    expect(runsOf([1, 2, 3, 7, 9, 10])).toBe("1-3, 7, 9-10");
    const even = Array.from({ length: 20 }, (_, i) => 2 * i);
    expect(runsOf(even, 8, " ")).toBe("0 2 4 6 8 10 12 14 and 12 more");
    expect(runsOf(even)).toBe("0, 2, 4, 6, 8, 10 and 14 more");
  });
});
