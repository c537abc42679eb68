import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  changedLifts,
  filledOrder,
  type LiftChange,
  parseWovenBlock,
  printWovenBlock,
  turnedLifts,
  type WovenBlock,
  wovenLifts,
  wovenRows,
} from "../src/index.js";
import { shaftSet } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

const some = shaftSet(12).filter((shafts) => shafts.length > 0);
const count = fc.integer({ min: 1, max: 99 });

const change = (): fc.Arbitrary<LiftChange> => {
  const plain: fc.Arbitrary<LiftChange> = fc.oneof(
    fc.constant<LiftChange>({ change: "upside-down" }),
    fc.record(
      {
        change: fc.constantFrom(
          "mirrored" as const,
          "turned" as const,
          "exchanged" as const,
          "brick" as const,
        ),
        on: some,
      },
      { requiredKeys: ["change"] },
    ),
    fc.record({ change: fc.constant("half-drop" as const), on: some, beside: some }),
    fc.record(
      { change: fc.constant("framed" as const), rows: count, across: some, edge: some },
      { requiredKeys: ["change", "rows", "across"] },
    ),
    fc.record({ change: fc.constant("fitted" as const), rows: count }),
    fc.record({ change: fc.constant("placed" as const), on: some }),
    fc.record(
      {
        change: fc.constant("bordered" as const),
        strip: fc.constantFrom("vine", "edge-2"),
        corner: fc.constantFrom("mitred" as const, "meeting" as const),
        on: some,
        beside: fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 6 }),
      },
      { requiredKeys: ["change", "strip", "corner", "beside"] },
    ),
    fc.record({ change: fc.constant("repeated" as const), times: count }),
  );
  const alternating = fc.record({ change: fc.constant("alternating" as const), times: count, every: plain });
  return fc.oneof({ weight: 4, arbitrary: plain }, { weight: 1, arbitrary: alternating });
};

const changedBlock = () =>
  fc.record({
    block: fc.constantFrom("moth", "border-2", "_x"),
    changes: fc.oneof(
      fc.array(change(), { maxLength: 4 }),
      fc.constant<LiftChange[]>([{ change: "upside-down" }, { change: "filled" }]),
      fc.constant<LiftChange[]>([{ change: "filled", every: { change: "turned" } }]),
    ),
  });

const wovenBlock = (): fc.Arbitrary<WovenBlock> =>
  fc
    .tuple(changedBlock(), fc.array(changedBlock(), { maxLength: 2 }), fc.boolean())
    .map(
      ([first, beside, cut]): WovenBlock =>
        beside.length === 0 ? first : { ...first, beside, ...(cut && { cutShort: true }) },
    );

describe("a line of a weaving order", () => {
  it("names a block and what is done with it, from left to right", () => {
    expect(parseWovenBlock("moth")).toEqual({ block: "moth", changes: [] });
    expect(parseWovenBlock("moth*3").changes).toEqual([{ change: "repeated", times: 3 }]);
    expect(parseWovenBlock("moth upside-down, exchanged on 1 3-4 *2").changes).toEqual([
      { change: "upside-down" },
      { change: "exchanged", on: [1, 3, 4] },
      { change: "repeated", times: 2 },
    ]);
    expect(parseWovenBlock("moth *4 every-other turned").changes).toEqual([
      { change: "alternating", times: 4, every: { change: "turned" } },
    ]);
    expect(parseWovenBlock("moth framed 1 row of 1-3 beside 9").changes).toEqual([
      { change: "framed", rows: 1, across: [1, 2, 3], edge: [9] },
    ]);
    expect(parseWovenBlock("moth half-drop on 1-2 beside 3-4 fitted to 60 rows").changes).toEqual([
      { change: "half-drop", on: [1, 2], beside: [3, 4] },
      { change: "fitted", rows: 60 },
    ]);
  });

  it("is read back as it was printed", () => {
    fc.assert(
      fc.property(wovenBlock(), (woven) => {
        expect(parseWovenBlock(printWovenBlock(woven))).toEqual(woven);
      }),
    );
  });

  it("has a column for every fault", () => {
    const refuse = (text: string, sentence: string, column: number) =>
      expectRefusal(() => parseWovenBlock(text), "unknown-word", sentence, { column });
    refuse("", "the end of the line was found; expected the name of a block", 1);
    refuse("3 moth", `"3" was found; expected the name of a block`, 1);
    refuse("moth flipped", `"flipped" was found; expected *N, *fill, on, upside-down, mirrored`, 6);
    refuse("moth *0", `"*0" was found; expected * and how many times`, 6);
    refuse("moth exchanged on", "the end of the line was found; expected the numbers of shafts", 18);
    refuse("moth half-drop 1-4", `"1-4" was found; expected "on"`, 16);
    refuse("moth framed rows of 1", `"rows" was found; expected a number of rows`, 13);
    refuse("moth framed 2 picks", `"picks" was found; expected "rows"`, 15);
    refuse("moth fitted 9 rows", `"9" was found; expected "to"`, 13);
    expectRefusal(() => parseWovenBlock("moth turned on 1  4 0"), "bad-shaft", "shaft 0 was found", {
      column: 21,
    });
  });
});

it("every-other stands within itself a few times, and no more", () => {
  const nested = (times: number) => `moth${" *2 every-other".repeat(times)} turned`;
  expect(printWovenBlock(parseWovenBlock(nested(8)))).toBe(nested(8));
  expectRefusal(
    () => parseWovenBlock(nested(9)),
    "unknown-word",
    `"every-other" was found; expected a change without another "every-other"`,
    { column: 129 },
  );
});

describe("blocks in weaving order", () => {
  const blocks = new Map([
    ["border", [[9], [9]]],
    ["moth", [[1], [1, 2], [3]]],
  ]);
  const weave = (...lines: string[]) => wovenLifts(blocks, lines.map(parseWovenBlock), 9);

  it("make a cloth of small motifs", () => {
    expect(weave("border", "moth *2", "moth upside-down", "border")).toEqual([
      [9],
      [9],
      [1],
      [1, 2],
      [3],
      [1],
      [1, 2],
      [3],
      [3],
      [1, 2],
      [1],
      [9],
      [9],
    ]);
    expect(weave("moth mirrored on 1-3")).toEqual([[3], [2, 3], [1]]);
    expect(weave("moth turned")).toEqual(turnedLifts(blocks.get("moth")!, [1, 2, 3, 4, 5, 6, 7, 8, 9]));
    expect(weave("moth exchanged on 1-2 framed 1 row of 1-9 beside 9")).toEqual([
      [1, 2, 3, 4, 5, 6, 7, 8, 9],
      [2, 9],
      [9],
      [1, 2, 3, 9],
      [1, 2, 3, 4, 5, 6, 7, 8, 9],
    ]);
    expect(weave("border brick on 8-9 fitted to 9 rows")).toHaveLength(8);
    expect(weave("border half-drop on 9 beside 8")).toEqual([
      [8, 9],
      [8, 9],
    ]);
  });

  it("are what their changes make of them, one after the other", () => {
    const safe = change().filter(({ change }) =>
      ["upside-down", "mirrored", "turned", "exchanged"].includes(change),
    );
    fc.assert(
      fc.property(safe, safe, (first, second) => {
        const moth = blocks.get("moth")!;
        expect(wovenLifts(blocks, [{ block: "moth", changes: [first, second] }], 12)).toEqual(
          changedLifts(changedLifts(moth, first, 12), second, 12),
        );
      }),
    );
  });

  it("together are the picture pasted by hand", () => {
    const rows = (shafts: readonly number[]) =>
      fc.array(fc.subarray([...shafts]), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(rows([1, 2, 3]), rows([7, 8]), fc.boolean(), (moth, edge, times) => {
        const woven = wovenLifts(
          new Map([
            ["moth", moth],
            ["edge", edge],
          ]),
          [parseWovenBlock(times ? `moth *${edge.length} with edge` : "moth with edge cut-short")],
          8,
        );
        const long = times ? moth.length * edge.length : Math.max(moth.length, edge.length);
        expect(woven).toHaveLength(long);
        const square = (row: number, shaft: number) =>
          (shaft < 4 ? moth[row % moth.length]! : edge[row % edge.length]!).includes(shaft);
        const pasted = woven.map((_, row) => [1, 2, 3, 4, 5, 6, 7, 8].filter((shaft) => square(row, shaft)));
        expect(woven).toEqual(pasted);
      }),
    );
  });

  it("together must come out even and keep to shafts of their own", () => {
    expect(weave("border with moth on 1-3 cut-short")).toEqual([
      [1, 9],
      [1, 2, 9],
      [3, 9],
    ]);
    expectRefusal(() => weave("moth with border"), "unlike-lengths", `"moth" has 3 rows and "border" 2`, {
      longest: 3,
      shorter: 2,
    });
    expectRefusal(() => weave("moth with moth on 3-5"), "shared-shaft", "both draw shaft 3", { shaft: 3 });
    expectRefusal(
      () => weave("moth on 3-4"),
      "wrong-length",
      "rows that draw shaft 3 are placed on 2 shafts",
    );
  });

  it("are told row by row: each row of the plan is drawn as the row of the block that it was", () => {
    const change = fc.constantFrom(
      "*3",
      "upside-down",
      "turned on 1-3",
      "framed 1 rows of 1-3",
      "brick on 1-2",
      "*3 every-other upside-down",
      "fitted to 9 rows",
    );
    const line = fc.tuple(fc.constantFrom("moth", "border-2"), fc.array(change, { maxLength: 3 }));
    // Every row of a block draws a shaft that no change touches, so that it is known again.
    const marked = new Map([
      ["moth", [[20], [21]]],
      ["border-2", [[23], [24]]],
    ]);
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 3 }), (lines) => {
        const order = lines.map(([block, changes]) => parseWovenBlock([block, ...changes].join(" ")));
        let woven: readonly (readonly number[])[];
        try {
          woven = wovenLifts(marked, order, 12);
        } catch {
          return;
        }
        const told = wovenRows(order, () => 2).map(({ blocks: [one] }) =>
          one?.row === undefined ? [] : marked.get(one.block)![one.row],
        );
        expect(told).toEqual(woven.map((row) => row.filter((shaft) => shaft >= 20)));
      }),
      { numRuns: 50 },
    );
    expect(
      wovenRows([parseWovenBlock("moth *2 with border")], (name) => (name === "moth" ? 3 : 2))[4],
    ).toEqual({
      entry: 0,
      blocks: [
        { block: "moth", row: 1, again: 1 },
        { block: "border", row: 0, again: 2 },
      ],
    });
  });

  it("fill the rows there are, and the rest is told", () => {
    const lengths = { border: 2, moth: 3 } as Record<string, number>;
    fc.assert(
      fc.property(fc.integer({ min: 7, max: 200 }), fc.boolean(), (rows, turned) => {
        const lines = ["border", turned ? "moth *fill every-other turned on 1-3" : "moth *fill", "border"];
        const filled = filledOrder(lines.map(parseWovenBlock), (block) => lengths[block]!, rows);
        const woven = wovenLifts(blocks, filled.order, 9);
        expect(woven.length + filled.over).toBe(rows);
        expect(filled.over).toBeLessThan(3);
      }),
    );
  });

  it("fill only where a length is known that has room for them, and one of them alone", () => {
    const fill = (rows: number | undefined, ...lines: string[]) =>
      filledOrder(lines.map(parseWovenBlock), () => 3, rows);
    expectRefusal(() => fill(undefined, "moth *fill"), "no-length", "fills a piece to its length", {
      entry: 1,
    });
    expectRefusal(() => fill(5, "border", "moth *fill"), "bad-size", `"moth" takes 3 and has no room`, {
      entry: 2,
    });
    expectRefusal(() => fill(50, "moth *fill", "moth *fill"), "unknown-word", "more than once", { entry: 2 });
    expectRefusal(() => weave("moth *fill"), "no-length", "the length of this one is not known");
    expectRefusal(() => parseWovenBlock("moth *fill *2"), "unknown-word", `"*fill" comes last`, {
      column: 12,
    });
    expectRefusal(() => parseWovenBlock("moth cut-short"), "unknown-word", `"cut-short" was found`, {
      column: 6,
    });
    expectRefusal(() => parseWovenBlock("moth with"), "unknown-word", "the name of a block", { column: 10 });
  });

  it("are refused when a block is not there or the cloth grows out of hand", () => {
    expectRefusal(
      () => weave("moth", "mth"),
      "unknown-block",
      `the block "mth" is not there; the blocks are: border, moth`,
      { entry: 2 },
    );
    expectRefusal(() => weave("moth *1000 *1000"), "too-large", "3000000 rows");
    expectRefusal(() => weave("moth *300000", "moth *300000"), "too-large", "1800000 rows");
  });
});
