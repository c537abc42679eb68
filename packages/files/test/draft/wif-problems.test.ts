import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draftPlaces, readWif, soundWif, writeWif } from "../../src/index.js";
import { shaftDrafts } from "../arbitraries.js";
import { refusal } from "../refusals.js";

const faulty = `[WIF]
Version=1.1
[WEAVING]
Shafts=two
[WARP]
Threads=4
Units=ells
[THREADING]
1=1
2=2
3=q
4=9
nine
7=1
[TIEUP]
1=1
2=2
[TREADLING]
1=1
2=,,x
`;

describe("a draft with several faults", () => {
  it("has each told, from its first sign to behind its last, and the rest read", () => {
    const { draft, problems } = readWif(faulty, "towel.wif");
    const lines = faulty.split("\n");
    const told = problems.map(({ line, column, end }) => [
      line,
      lines[line - 1]!.slice(column - 1, end.column - 1),
    ]);
    expect(told).toEqual([
      [4, "two"],
      [7, "ells"],
      [11, "q"],
      [13, "nine"],
      [14, "1"],
      [20, ",,x"],
    ]);
    expect(problems.map(({ code }) => code)).toEqual(problems.map(() => "bad-draft"));
    expect(draft!.threading).toEqual([[1], [2], [], [9]]);
    expect(draft!.shedding).toMatchObject({ treadling: [[1], []] });
  });

  it("is refused for the first of them, which bears them all", () => {
    expect(refusal(() => soundWif(faulty, "towel.wif"))).toMatchObject({
      place: { line: 4, column: 8 },
      problems: readWif(faulty, "towel.wif").problems,
    });
  });
});

describe("the places of a draft", () => {
  it("hold the numbers of every end, pick and treadle that is written", () => {
    fc.assert(
      fc.property(shaftDrafts(), (draft) => {
        const text = writeWif(draft);
        const places = draftPlaces(text, "a");
        const at = (place: ReturnType<typeof places.end>) =>
          place === undefined ? [] : text.slice(place.offset, place.end.offset).split(",").map(Number);
        const { shedding, threading } = draft;
        const found = (count: number, place: typeof places.end) =>
          Array.from({ length: count }, (_, i) => at(place(i + 1)));
        expect(found(threading.length, places.end)).toEqual(threading);
        const steps = shedding.kind === "tie-up" ? shedding.treadling : shedding.liftPlan;
        expect(found(steps.length, places.pick)).toEqual(steps);
        const tieUp = shedding.kind === "tie-up" ? shedding.tieUp : [];
        expect(found(tieUp.length, places.treadle)).toEqual(tieUp);
      }),
      { numRuns: 40 },
    );
  });

  it("are of any key, in any letter case", () => {
    expect(draftPlaces(faulty, "towel.wif").at("weaving", "SHAFTS")).toMatchObject({ line: 4, column: 8 });
    expect(draftPlaces(faulty, "towel.wif").at("weft", "threads")).toBeUndefined();
  });
});
