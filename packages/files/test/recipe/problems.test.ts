import { type ErrorData, errorFrom } from "@drawcord/base";
import { checkDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type FileError,
  type Problem,
  placesOf,
  type Recipe,
  readRecipe,
  soundRecipe,
} from "../../src/index.js";
import { mutate, randomFrom } from "../fuzz/mutate.js";
import { refusal } from "../refusals.js";
import { leastRecipe, wholeRecipe } from "../samples.js";

type Change = readonly [from: string, to: string];

/** The whole recipe with pieces of its text changed. */
function whole(...changes: readonly Change[]): string {
  return changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the whole recipe has no ${from}`);
    return text.replace(from, () => to);
  }, wholeRecipe);
}

/** The pieces of a text that are underlined, with what is said of each. */
function underlined(text: string): readonly (readonly [piece: string, code: string])[] {
  return readRecipe(text, "x").problems.map(({ code, end, offset }) => [
    text.slice(offset, end.offset),
    code,
  ]);
}

const faulty = whole(
  ["sink: 1 }", "sink: 9 }"],
  ["ends: 4\n", "endz: 4\n"],
  ["(1-8 7-2)*4 1", "(1-8 7-2)*4 q"],
  ["#......#", "#.o....#"],
  ["moth*3", "mothh*3"],
  ["stock: 1.2 kg", "stock: 1.2 sacks"],
  ["draw-in: 6 %", "draw-in: 96 %"],
  ["idle-shaft: off", "idle-shaft: of"],
  ["rows: 3-5", "rows: 5-3"],
);

describe("every problem of a text is told, from its first sign to its last", () => {
  it("in the order of the text", () => {
    expect(underlined(faulty)).toEqual([
      ["9", "unknown-shaft"],
      ["endz", "unknown-key"],
      ["q", "bad-notation"],
      ["o", "bad-notation"],
      ["mothh*3", "unknown-block"],
      ["sacks", "bad-notation"],
      ["96 %", "bad-value"],
      ["of", "bad-value"],
      ["5-3", "bad-notation"],
    ]);
  });

  it("words of one notation each by itself, and not what follows from them", () => {
    const text = leastRecipe.replace("threading: 1 2 }", "threading: 1 q+3 (2 7-)*0 5 1-3*2 }");
    expect(underlined(text)).toEqual([
      ["q+3", "bad-notation"],
      [")", "bad-notation"],
      ["0", "bad-notation"],
      ["*2", "bad-notation"],
    ]);
    const rows = leastRecipe.replace("rows: [1, 2]", 'rows: ["1 q *2", "7 *x", "2 2", "none 1", ""]');
    expect(underlined(rows)).toEqual([
      ["q", "bad-notation"],
      ["x", "bad-notation"],
      ["2", "bad-notation"],
      ["1", "bad-notation"],
      ['""', "bad-notation"],
    ]);
  });

  it("the name of a yarn that there is not, by its own letters", () => {
    const text = `${leastRecipe}colours: { warp: "weft*2 wept", weft: "weft )" }\n`;
    expect(underlined(text)).toEqual([
      ["wept", "unknown-yarn"],
      [")", "bad-notation"],
    ]);
  });

  it("a key that is missing for its name is mistyped is told once", () => {
    expect(underlined(leastRecipe.replace("threading: 1 2 }", "thredding: 1 2 }"))).toEqual([
      ["thredding", "unknown-key"],
    ]);
  });

  it("of a fault in the YAML itself all such faults, and what is sure before the first", () => {
    const text = whole(
      ["recipe: 1", "recipe: one"],
      ["count: 20/2 Ne", "count: !moth 20/2 Ne"],
      ["16/1 lea", '"16/1 lea'],
      ["draw-in: 6 %", "draw-in: 96 %"],
    );
    const found = underlined(text);
    expect(found[0]).toEqual(["one", "wrong-type"]);
    expect(new Set(found.slice(1).map(([, code]) => code))).toEqual(new Set(["not-yaml"]));
    expect(found.length).toBeGreaterThan(2);
  });

  it("up to two hundred, and then that there are more", () => {
    const rows = Array<string>(300).fill("q").join(", ");
    const { problems, recipe } = readRecipe(leastRecipe.replace("[1, 2]", `[${rows}]`), "x");
    expect(problems).toHaveLength(201);
    expect(problems.at(-1)!.code).toBe("too-many-problems");
    expect(recipe).toBeUndefined();
  });

  it("and thrown as one error that bears them all, where a sound recipe is wanted", () => {
    const { problems } = readRecipe(faulty, "x");
    const error = refusal(() => soundRecipe(faulty, "x"));
    expect(error.problems).toEqual(problems);
    expect(error.message).toBe(`x:${problems[0]!.line}:${problems[0]!.column}: ${problems[0]!.sentence}`);
  });
});

describe("what is sound is read all the same", () => {
  const sound = soundRecipe(wholeRecipe, "x");
  const withFault = (...changes: readonly Change[]) => readRecipe(whole(...changes), "x").recipe!;

  it("of a threading with a word too many, every other unit by its number", () => {
    const { draft } = withFault(["(1-8 7-2)*4 1", "(1-8 7-2)*4 q"]);
    expect(draft.threading).toHaveLength(sound.draft.threading.length);
    expect(draft.threading.with(59, sound.draft.threading[59]!)).toEqual(sound.draft.threading);
    expect(draft.threading[59]).toEqual([]);
  });

  it("of rows, the shafts that are named, and every other row by its number", () => {
    const read = (rows: string) => readRecipe(leastRecipe.replace("[1, 2]", rows), "x").recipe?.draft.lifts;
    expect(read("[1, [], 2]")).toEqual([[1], [], [2]]);
    expect(read("[q, 1 q 2 *2, 2]")).toEqual([[], [1, 2], [1, 2], [2]]);
    expect(read('"1\\nq\\n2"')).toEqual([[1], [], [2]]);
  });

  it("of steps and of a picture", () => {
    expect(withFault(["{ raise: 2, sink: 3 }", "7"]).draft.ground.steps[1]).toEqual({ raise: [], sink: [] });
    expect(withFault(["sink: 3 }", "sink: q 3 }"]).draft.ground).toEqual(sound.draft.ground);
    expect(withFault(["#......#", "#.o....#"]).draft).toEqual(sound.draft);
  });

  it("a section, a yarn, a limit or a waiver that is broken is left out, and all others stay", () => {
    const { cloth, limits, yarns, waive, ...rest } = withFault(
      ["draw-in: 6 %", "draw-in: 96 %"],
      ["16/1 lea", "16/1 ell"],
      ["open-cuts: 2 %", "open-cuts: two"],
      ["rows: 3-5", "row: 3-5"],
    );
    const { drawIn: _drawIn, ...clothLeft } = sound.cloth;
    expect(cloth).toEqual(clothLeft);
    const { openCuts: _openCuts, ...limitsLeft } = sound.limits;
    expect(limits).toEqual(limitsLeft);
    expect(yarns.map(({ name }) => name)).toEqual(["warp", "gold"]);
    // Without its rows it would accept more than was meant.
    expect(waive).toEqual([]);
    expect(rest.project).toEqual(sound.project);
    expect(rest.draft).toEqual(sound.draft);
  });

  it("but there is no recipe without a ground, units and lifts", () => {
    for (const section of ["ground", "units", "lifts"]) {
      const { problems, recipe } = readRecipe(wholeRecipe.replace(`\n${section}:`, `\n${section}s:`), "x");
      expect(recipe).toBeUndefined();
      expect(problems).toHaveLength(1);
    }
  });
});

/** What must be true of whatever is read. */
function expectWhole(text: string, problems: readonly Problem[], recipe: Recipe | undefined): void {
  if (recipe === undefined) expect(problems.length).toBeGreaterThan(0);
  for (const [i, { column, end, line, offset, sentence }] of problems.entries()) {
    expect(sentence).not.toBe("");
    expect(offset).toBeGreaterThanOrEqual(problems[i - 1]?.offset ?? 0);
    expect(end.offset).toBeGreaterThanOrEqual(offset);
    expect(end.offset).toBeLessThanOrEqual(text.length);
    const before = text.slice(0, offset).split(/\r\n|[\r\n]/);
    expect([line, column]).toEqual([before.length, before.at(-1)!.length + 1]);
  }
  if (recipe === undefined) return;
  const { draft } = recipe;
  const places = placesOf(recipe);
  expect(places.units()).toHaveLength(draft.threading.length);
  expect(places.rows()).toHaveLength(draft.lifts.length);
  checkDraft(draft);
  expect(structuredClone(recipe)).toEqual(recipe);
}

it("whatever is broken in a recipe, its problems have places, and what is read of it is whole", () => {
  const texts = [leastRecipe, wholeRecipe];
  const seen = { read: 0, unread: 0 };
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 31 }), fc.constantFrom(...texts), (seed, text) => {
      const bytes = mutate(new TextEncoder().encode(text), randomFrom(seed));
      const broken = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
      if (/^\uFEFF/.test(broken)) return;
      const { problems, recipe } = readRecipe(broken, "x");
      if (problems.length > 0) seen[recipe === undefined ? "unread" : "read"]++;
      expectWhole(broken, problems, recipe);
    }),
    { numRuns: 400 },
  );
  expect(seen.read).toBeGreaterThan(40);
  expect(seen.unread).toBeGreaterThan(40);
});

it("an error goes over the border of a worker with all its problems, and back", () => {
  let thrown: unknown;
  try {
    soundRecipe(
      "recipe: 1\nunits: { ends: 4, threading: 1-3 ( }\nlifts: { picks: 4, rows: [1, q] }\n",
      "moth",
    );
  } catch (error) {
    thrown = error;
  }
  const error = thrown as FileError;
  expect(error.problems.length).toBeGreaterThan(1);
  for (const data of [structuredClone(error.toJSON()), JSON.parse(JSON.stringify(error)) as ErrorData]) {
    const back = errorFrom(data);
    expect(back.problems).toEqual(error.problems);
    expect(back.toJSON()).toEqual(error.toJSON());
    expect({ ...back, message: back.message }).toMatchObject({
      ...{ name: error.name, code: error.code, sentence: error.sentence, message: error.message },
      ...{ facts: error.facts, place: error.place },
    });
  }
});
