import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import {
  FileError,
  type Path,
  type RecipeValue,
  reviseRecipe,
  soundRecipe,
  starterRecipe,
} from "../../src/index.js";
import {
  areApart,
  composedEdits,
  followedBy,
  placedEdits,
  type Splice,
  spliced,
} from "../../src/recipe/text-edits.js";
import { refusal } from "../refusals.js";
import { leastRecipe, wholeRecipe } from "../samples.js";
import { applied } from "./applied.js";

type Json = null | string | number | Json[] | { [key: string]: Json };

/** The slow way: the data with one value set. */
function withValue(data: Json, [step, ...rest]: Path, value: Json): Json {
  if (step === undefined) return value;
  if (Array.isArray(data)) return data.map((item, i) => (i === step ? withValue(item, rest, value) : item));
  const section = data as { [key: string]: Json };
  return { ...section, [step]: withValue(section[step] ?? {}, rest, value) };
}

function pathsOf(data: Json, path: Path = []): Path[] {
  if (Array.isArray(data)) return [path, ...data.flatMap((item, i) => pathsOf(item, [...path, i]))];
  if (typeof data !== "object" || data === null) return [path];
  return [path, ...Object.entries(data).flatMap(([key, item]) => pathsOf(item, [...path, key]))];
}

const texts = [wholeRecipe, leastRecipe, starterRecipe()];

/** A recipe, and values that may stand in it somewhere. */
const revisions = fc.constantFrom(...texts).chain((text) => {
  const data = parse(text) as Json;
  const added: Path[] = [
    ["title"],
    ["limits", "float"],
    ["limits", "float", "warp"],
    ["cloth", "sett"],
    ["loom", "lingos"],
  ];
  const value: fc.Arbitrary<RecipeValue> = fc.oneof(
    fc.constantFrom<RecipeValue>(
      1,
      4,
      "1-3",
      "none",
      "6 mm",
      "24 per inch",
      "1 2 *3",
      "moth: a, [b] # c",
      "true",
      "12",
      "",
    ),
    fc.constantFrom<RecipeValue>([1, "1 2"], ["border"], { rows: [1, 2] }, { raise: 1, sink: "2-3" }, [
      { raise: 1 },
    ]),
    fc.constantFrom<RecipeValue>(
      { shafts: 2, threading: "1 2", steps: [{ raise: 1, sink: 2 }] },
      { warp: 7, weft: "6 mm" },
    ),
  );
  return fc.record({
    text: fc.constant(text),
    path: fc.constantFrom(...pathsOf(data).filter((path) => path.length > 0), ...added),
    value,
  });
});

describe("edits of a text, one after another", () => {
  it("are edits of the text before them all", () => {
    const text = "0123456789";
    const splice = fc.record({ from: fc.nat(20), length: fc.nat(6), by: fc.string({ maxLength: 4 }) });
    fc.assert(
      fc.property(fc.array(splice, { maxLength: 6 }), (all) => {
        let made: readonly Splice[] = [];
        let now = text;
        for (const { by, from, length } of all) {
          const start = Math.min(from, now.length);
          const end = Math.min(start + length, now.length);
          made = followedBy(made, { from: start, to: end, by });
          now = now.slice(0, start) + by + now.slice(end);
          expect(spliced(text, made)).toBe(now);
          expect(areApart(made)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe("edits of a text, and edits of what they lead to", () => {
  it("are together edits of the text before", () => {
    const places = fc.uniqueArray(fc.nat(12), { maxLength: 6 }).map((all) => all.sort((a, b) => a - b));
    const by = fc.array(fc.stringMatching(/^[a-c\n]{0,3}$/), { minLength: 3, maxLength: 3 });
    const cuts = fc.record({ places, by });
    type Cuts = { readonly places: readonly number[]; readonly by: readonly string[] };
    const editsIn = (text: string, { by, places }: Cuts) =>
      placedEdits(
        text,
        "r",
        places.flatMap((from, i) => {
          const to = places[i + 1];
          return i % 2 === 0 && to !== undefined && to <= text.length ? [{ from, to, by: by[i >> 1]! }] : [];
        }),
      );
    fc.assert(
      fc.property(cuts, cuts, (one, other) => {
        const text = "ab\ncd\nef\ngh";
        const first = editsIn(text, one);
        const between = applied(text, first);
        const then = editsIn(between, other);
        expect(applied(text, composedEdits(text, "r", first, then))).toBe(applied(between, then));
      }),
      { numRuns: 500 },
    );
  });
});

describe("a recipe revised", () => {
  it("says what it said, but for what was changed", () => {
    let made = 0;
    fc.assert(
      fc.property(revisions, ({ text, path, value }) => {
        let revised: string;
        try {
          revised = reviseRecipe(text, "recipe", [{ path, value }]).text;
        } catch (error) {
          // What the schema or a notation does not allow is not written.
          if (error instanceof FileError) return;
          throw error;
        }
        made++;
        expect(parse(revised)).toEqual(withValue(parse(text) as Json, path, value as Json));
      }),
      { numRuns: 250 },
    );
    expect(made).toBeGreaterThan(15);
  });

  it("keeps every line that has no part in the change, comments and all", () => {
    const { edits, text: revised } = reviseRecipe(wholeRecipe, "runner", [
      { path: ["units", "threading"], value: "X*2 9 (1-8 7-2)*5 1 9 X*2" },
      { path: ["limits", "float", "weft"], value: "5 mm" },
      { path: ["lifts", "blocks", "border", "rows"], value: [9, "none *2"] },
      { path: ["ground", "steps", 2], value: { raise: 3, sink: 2 } },
      { path: ["yarns", "gold"], value: { count: "10/2 Ne" } },
      { path: ["ground", "steps", 3, "weft"], value: "gold" },
      { path: ["cloth", "repeat"], value: "both" },
    ]);
    const was = wholeRecipe.split("\n");
    expect(edits).toHaveLength(7);
    expect(applied(wholeRecipe, edits)).toBe(revised);
    const is = revised.split("\n");
    expect(is).toHaveLength(was.length);
    expect(is.filter((line, i) => line !== was[i])).toEqual([
      "    - { raise: 3, sink: 2 }",
      "    - { raise: 1, sink: 4, weft: gold }",
      "  threading: X*2 9 (1-8 7-2)*5 1 9 X*2 # the borders stay plain",
      "    border: { rows: [9, none *2] }",
      "  gold: { count: 10/2 Ne }",
      "  repeat: both",
      "  float: { warp: 7, weft: 5 mm, gold: 11 }",
    ]);
  });

  it("gets new keys at the end of their section, and new sections at the end", () => {
    const short =
      "recipe: 1\nground:\n  weave: broken twill # four ends\n  # and no more\nunits: { ends: 4, threading: 1 }\nlifts:\n  picks: 4\n  rows:\n    - 1 # the only one\n    - none";
    const { edits, text: revised } = reviseRecipe(short, "short", [
      { path: ["ground", "ends"], value: 4 },
      { path: ["units", "static"], value: 10 },
      { path: ["limits", "float", "warp"], value: 7 },
      { path: ["limits", "open-cuts"], value: "2 %" },
      { path: ["lifts", "rows"], value: ["none", 1, 1] },
    ]);
    expect(applied(short, edits)).toBe(revised);
    expect(revised).toBe(
      "recipe: 1\nground:\n  weave: broken twill # four ends\n  ends: 4\n  # and no more\nunits: { ends: 4, threading: 1, static: 10 }\nlifts:\n  picks: 4\n  rows:\n    - none\n    - 1\n    - 1\nlimits: { float: { warp: 7 }, open-cuts: 2 % }\n",
    );
    expect(soundRecipe(revised, "short").draft.lifts).toEqual([[], [1], [1]]);
  });

  it("is refused where the change cannot stand, and nothing is lost", () => {
    const refuse = (path: Path, value: RecipeValue) =>
      refusal(() => reviseRecipe(leastRecipe, "least", [{ path, value }])).sentence;
    expect(refuse(["units", "ends"], 0)).toBe("units.ends is 0; expected 1 or more");
    expect(refuse(["ends"], 0)).toContain('unknown key "ends"');
    expect(refuse(["lifts", "rows", 9], 1)).toBe("lifts.rows has no 9");
    expect(refuse(["title"], "moth\u001b[2J")).toBe("the text holds the control character U+001B");
  });
});
