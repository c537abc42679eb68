import { toText } from "@drawcord/grid";
import { describe, expect, it } from "vitest";
import {
  borderedLifts,
  expand,
  parseThreading,
  parseWovenBlock,
  wovenLifts,
  wovenRows,
} from "../src/index.js";
import { expectRefusal } from "./expect-error.js";

/** A dot of four rows in a chain two deep, drawn by hand on squared paper: each side to the diagonal. */
const mitred = `
###.#######.###
#.###..#..###.#
##...........##
.#.....#.....#.
.#.....#.....#.
##...........##
#.###..#..###.#
###.#######.###`;

/** The same with the level sides run out to the edge. */
const meeting = `
###.#######.###
..###..#..###..
##...........##
.#.....#.....#.
.#.....#.....#.
##...........##
..###..#..###..
###.#######.###`;

const blocks = new Map([
  ["dot", [[], [6], [6], []]],
  ["chain", [[1], [1], [1, 2], [2], [1, 2]]],
]);

/** The squares of a line of a weaving order, the last row on top. */
function woven(line: string, threading: string): string {
  const lifts = wovenLifts(blocks, [parseWovenBlock(line)], 8);
  const ground = { shafts: 1, threading: [1], steps: [{ raise: [], sink: [] }] };
  const draft = { ground, unitEnds: 1, picksPerRow: 1, threading: parseThreading(threading), lifts };
  return `\n${toText(expand(draft).squares).split("\n").toReversed().join("\n")}`;
}

describe("a border that turns its corners", () => {
  it("is the picture drawn by hand, mitred and meeting", () => {
    const threading = "7 8 1-6 5-1 8 7";
    expect(woven("dot framed in chain mitred on 1-6 beside 7-8", threading)).toBe(mitred);
    expect(woven("dot framed in chain meeting on 1-6 beside 7 8", threading)).toBe(meeting);
    expect(woven("dot framed in chain mitred beside 7-8", threading)).toBe(mitred);
  });

  it("has the shaft that is named first at the edge", () => {
    const line = "dot framed in chain mitred on 1-6 beside 8-7";
    expect(woven(line, "8 7 1-6 5-1 7 8")).toBe(mitred);
    expect(parseWovenBlock(line).changes).toEqual([
      { change: "bordered", strip: "chain", corner: "mitred", on: [1, 2, 3, 4, 5, 6], beside: [8, 7] },
    ]);
  });

  it("comes again with its motif, and is no row of it", () => {
    const line = parseWovenBlock("dot framed in chain mitred beside 7-8 *2");
    expect(wovenLifts(blocks, [line], 8)).toHaveLength(16);
    const rows = wovenRows([line], () => 4).map((row) => row.blocks[0]!.row);
    const once = [undefined, undefined, 0, 1, 2, 3, undefined, undefined];
    expect(rows).toEqual([...once, ...once]);
  });

  it("is refused where it cannot be built, and where it is named wrongly", () => {
    const border = { corner: "mitred", beside: [9], on: [1, 2] } as const;
    expectRefusal(() => borderedLifts([[]], [[2]], border), "wrong-length", "draws shaft 2 and has 1 shaft");
    expectRefusal(() => borderedLifts([[]], [], border), "bad-size", "has no rows");
    expectRefusal(
      () => borderedLifts([[]], [[1]], { ...border, on: [1, 9] }),
      "shared-shaft",
      "shaft 9 is of the border's sides and of what lies between them",
    );
    const unknown = parseWovenBlock("dot framed in vine mitred beside 7-8");
    expectRefusal(() => wovenLifts(blocks, [unknown], 8), "unknown-block", 'the block "vine" is not there');
    const said = (text: string, sentence: string) =>
      expectRefusal(() => parseWovenBlock(text), "unknown-word", sentence);
    said("dot framed in", "expected the name of a block");
    said("dot framed in chain on 1-6", 'expected "mitred" or "meeting"');
    said("dot framed in chain mitred on 1-6", 'expected "beside"');
    said("dot framed in chain mitred beside vine", "expected the numbers of shafts");
    said("dot framed in chain mitred beside 7 7", "expected each shaft once");
  });
});
