import { describe, expect, it } from "vitest";
import { FileError, soundRecipe } from "../../src/index.js";
import { answerTo, refusal } from "../refusals.js";
import { leastRecipe, wholeRecipe } from "../samples.js";

/** The least recipe with one piece of its text changed. */
function least(from: string | RegExp, to: string): string {
  const changed = leastRecipe.replace(from, () => to);
  if (changed === leastRecipe) throw new Error(`the least recipe has no ${from}`);
  return changed;
}

const bytes = (...numbers: number[]) => Uint8Array.from(numbers);

describe("a file that is no recipe is answered in one sentence with its place", () => {
  it.each<[string, Uint8Array | string, string]>([
    ["empty", "", "1:1: the file is empty"],
    ["blank", " \n\t\n", "1:1: the file is empty"],
    ["comments alone", "# nothing\n", "1:1: the file holds nothing but comments"],
    [
      "binary",
      bytes(0x89, 0x50, 0x4e, 0x47),
      "1:1: this is not a text file in UTF-8: a byte here is no character",
    ],
    [
      "binary further on",
      bytes(0x61, 0x0a, 0x62, 0xff),
      "2:2: this is not a text file in UTF-8: a byte here is no character",
    ],
    [
      "with NUL bytes",
      bytes(0x61, 0x00),
      "1:2: this is not a text file: it holds the control character U+0000",
    ],
    ["UTF-16", bytes(0xff, 0xfe, 0x61, 0x00), "1:1: the file is saved as UTF-16; save it as UTF-8"],
    ["prose", "Dear weaver", '1:1: a recipe must be a section of keys; the text "Dear weaver" was found'],
    ["a list", "- recipe: 1", "1:1: a recipe must be a section of keys; a list was found"],
    [
      "two documents",
      `${leastRecipe}---\n${leastRecipe}`,
      "6:1: a second document begins here; a file holds one recipe",
    ],
    ["an open bracket", "recipe: [1\n", "2:1: a bracket before this is not closed; expected ]"],
    [
      "a tab for indentation",
      "recipe: 1\nunits:\n\tends: 4\n",
      "3:1: a tab stands where the line is indented; indent with blanks",
    ],
    [
      "two keys on a line",
      "recipe: 1 title: Moth",
      "1:9: two keys stand on one line; put each on a line of its own, or the text between quotes",
    ],
    [
      "quotes never closed",
      'recipe: 1\ntitle: "Moth\n  and more\n',
      "2:8: the quotes opened here are never closed",
    ],
    [
      "another YAML",
      "%YAML 1.1\n---\nrecipe: 1\n",
      "1:1: this says that it is YAML 1.1; a recipe is YAML 1.2",
    ],
    ["a directive", "%MOTH 1\n---\nrecipe: 1\n", "1:1: a line that begins with % has no meaning in a recipe"],
    ["a type mark", "recipe: !moth 1\n", "1:9: a type mark with ! has no meaning in a recipe"],
    [
      "bytes for a text",
      "recipe: 1\n!!binary title: moth\n",
      "2:1: a type mark with ! has no meaning in a recipe",
    ],
    ["an ordered section", "!!omap\nrecipe: 1\n", "1:1: a type mark with ! has no meaning in a recipe"],
    ["an alias of nothing", "recipe: *moth", '1:9: the alias "*moth" stands for nothing before it'],
  ])("%s", (_what, source, answer) => {
    expect(answerTo(source)).toBe(answer);
  });
});

describe("a key or a value that does not fit is answered with what would", () => {
  it.each<[string, string, string]>([
    [
      "an unknown key",
      least("threading: 1 2 }", "thredding: 1 2 }"),
      '3:19: unknown key "thredding" in units; did you mean "threading"?',
    ],
    ["an unknown section", `${leastRecipe}loon: {}\n`, '5:1: unknown key "loon"; did you mean "loom"?'],
    [
      "a key like none",
      least("ends: 2", "qqqq: 2"),
      '3:1: units needs the key "ends"\n3:10: unknown key "qqqq" in units; the keys here are ends, threading, static',
    ],
    ["a missing key", least("ends: 2, ", ""), '3:1: units needs the key "ends"'],
    ["a missing section", least(/units:.*\n/, ""), '1:1: a recipe needs the key "units"'],
    ["a key twice", least("ends: 2,", "ends: 2, ends: 4,"), '3:19: the key "ends" stands here a second time'],
    [
      "a wrong type",
      least("ends: 2", "ends: { a: 1 }"),
      "3:10: units.ends must be a whole number or text or a list; a section of keys was found",
    ],
    [
      "a fraction",
      least("ends: 2", "ends: 2.5"),
      "3:16: units.ends must be a whole number or text or a list; 2.5 was found",
    ],
    [
      "nothing",
      least("ends: 2", "ends:"),
      "3:10: units.ends must be a whole number or text or a list; nothing was found",
    ],
    [
      "not a number",
      least("ends: 2", "ends: .nan"),
      "3:16: units.ends must be a whole number or text or a list; .nan was found",
    ],
    [
      "a measure without its unit",
      `${leastRecipe}project: { waste: 80 }`,
      "5:19: project.waste must be text such as 70 cm; 80 was found",
    ],
    [
      "a cloth that shrinks to nothing",
      `${leastRecipe}cloth: { shrinkage: { width: 100 % } }`,
      "5:30: cloth.shrinkage.width is 100 %; expected at most 75 %",
    ],
    [
      "a colour taken for a comment",
      `${leastRecipe}yarns:\n  warp:\n    count: 10/2 Ne\n    colour: #fff\n`,
      "8:5: yarns.warp.colour must be text; only a comment (put a text that begins with # between quotes) was found",
    ],
    [
      "a word not in the list",
      `${leastRecipe}cloth: { repeat: pick }`,
      '5:18: cloth.repeat is pick; expected none, ends, picks, both; did you mean "picks"?',
    ],
    ["an older version", least("recipe: 1", "recipe: 0"), "1:9: recipe is 0; expected 1"],
    [
      "a newer version",
      "recipe: 2\nlooms: many\n",
      "1:9: the recipe is in version 2 of the format; this Drawcord reads version 1, so a newer one is needed",
    ],
    [
      "neither weave nor steps",
      least(/ground:.*\n/, "ground: { shafts: 2 }\n"),
      '2:1: ground needs the key "weave" or "steps"',
    ],
    [
      "both weave and steps",
      least("ground: { ", "ground: { weave: plain, "),
      '2:1: ground has the keys "weave" and "steps"; only one of them can stand',
    ],
    [
      "an empty list",
      least("rows: [1, 2]", "rows: []"),
      "4:20: lifts.rows is an empty list; at least one entry is needed",
    ],
    ["an empty text", `${leastRecipe}title: ""\n`, "5:8: title is empty; expected some text"],
    ["zero ends", least("ends: 2", "ends: 0"), "3:16: units.ends is 0; expected 1 or more"],
  ])("%s", (_what, source, answer) => {
    expect(answerTo(source)).toBe(answer);
  });
});

describe("a notation that goes wrong is answered at its column", () => {
  it.each<[string, string, string]>([
    [
      "shaft 0",
      least("threading: 1 2 }", "threading: 1 0 }"),
      "3:32: units.threading: shaft 0 was found; shafts are counted from 1",
    ],
    [
      "an open bracket",
      least("threading: 1 2 }", "threading: (1 2 }"),
      '3:30: units.threading: the bracket "(" is never closed; expected a ")" after it',
    ],
    [
      "a bracket too many",
      least("threading: 1 2 }", "threading: 1 2) }"),
      '3:33: units.threading: the bracket ")" closes nothing; expected a "(" before it',
    ],
    [
      "no times",
      least("threading: 1 2 }", "threading: 1*0 2 }"),
      '3:32: units.threading: "0" was found after "*"; expected how many times, 1 or more',
    ],
    [
      "a huge repeat",
      least("threading: 1 2 }", "threading: (1 2)*99999999 }"),
      "3:34: units.threading: the threading comes to more than 1000000 units",
    ],
    [
      "a word in a row",
      least("rows: [1, 2]", "rows: [1, 2 moth]"),
      '4:32: lifts.rows, item 2: "moth" was found; expected a shaft number',
    ],
    [
      "the second line of a text",
      least(/lifts:.*\n/, "lifts:\n  picks: 2\n  rows: |\n    1 2\n    1  ?\n"),
      '8:8: lifts.rows: "?" has no meaning here; expected shaft numbers, "X" or "none", and the signs - + * ( )',
    ],
    [
      "a folded text",
      least("threading: 1 2 }", "threading: 1\n    2   ? }"),
      '4:9: units.threading: "?" has no meaning here; expected shaft numbers, "X" or "none", and the signs - + * ( )',
    ],
    [
      "a text in quotes",
      least("threading: 1 2 }", 'threading: "1 ?" }'),
      '3:33: units.threading: "?" has no meaning here; expected shaft numbers, "X" or "none", and the signs - + * ( )',
    ],
    [
      "a picture's line",
      least(/lifts:.*\n/, "lifts:\n  picks: 2\n  picture: |\n    #.\n    #..\n"),
      "8:5: lifts.picture: this line has 3 squares; the first line has 2",
    ],
    [
      "a picture's square",
      least(/lifts:.*\n/, "lifts:\n  picks: 2\n  picture: |\n    #.\n    #o\n"),
      '8:6: lifts.picture: "o" was found; a picture is made of # (drawn) and . (not)',
    ],
    [
      "a ground shaft that there is not",
      least("threading: 1 2,", "threading: 1 2 3,"),
      "2:37: ground.threading names shaft 3; the ground harness has 2 shafts",
    ],
    [
      "a selvedge shaft that there is not",
      least("ground: { ", "ground: { selvedge: { left: 1 9 }, "),
      "2:31: ground.selvedge.left names shaft 9; the ground harness has 2 shafts",
    ],
    [
      "an end on two ground shafts",
      least("threading: 1 2,", "threading: 1+2,"),
      "2:33: ground.threading: end 1 hangs on shafts 1 and 2; each end takes one ground shaft",
    ],
    [
      "a shaft both raised and sunk",
      least("{ raise: 1, sink: 2 }", "{ raise: 1, sink: 1-2 }"),
      "2:46: ground.steps, item 1 both raises and sinks ground shaft 1",
    ],
    [
      "a unit too many",
      least("ends: 2,", "ends: [2, 2, 2],"),
      "3:10: units.ends gives 3 numbers; there are 2 units",
    ],
    [
      "counts that are no numbers",
      least("picks: 2", "picks: 4*2 many"),
      '4:21: lifts.picks: "many" was found; expected numbers from 1 such as 4, or 4*10 for ten alike',
    ],
    [
      "a sett without its unit",
      `${leastRecipe}cloth: { sett: "24" }`,
      '5:19: cloth.sett: "24" has no unit; expected a sett such as 24 per inch or 10 per cm',
    ],
    [
      "a length for a sett",
      `${leastRecipe}cloth: { sett: 24 cm }`,
      '5:19: cloth.sett: "24 cm" is not a sett such as 24 per inch or 10 per cm',
    ],
    [
      "a yarn of no system",
      `${leastRecipe}yarns: { warp: { count: 20/2 Nee } }`,
      '5:30: yarns.warp.count: "20/2 Nee": no yarn system is called "Nee"; is it Ne?',
    ],
    [
      "a reed of no count",
      `${leastRecipe}cloth: { reed: 60 Stokport }`,
      '5:16: cloth.reed: "60 Stokport": no reed count is called "Stokport"; is it Stockport?',
    ],
    [
      "a sley that is none",
      `${leastRecipe}cloth: { sley: 1-2-b }`,
      '5:16: cloth.sley: "1-2-b" is not a sleying pattern; expected ends in each dent, such as 2 or 1-2-2',
    ],
    [
      "a block that there is not",
      least(/lifts:.*\n/, "lifts:\n  picks: 2\n  blocks: { moth: { rows: [1] } }\n  order: [mth*3]\n"),
      '7:11: no block is called "mth"; did you mean "moth"?',
    ],
    [
      "a weft that no pick weaves",
      `${leastRecipe}yarns: { warp: { count: 10/2 Ne }, golden: { count: 10/2 Ne } }`,
      '5:36: unknown key "golden" in yarns; the keys here are warp, weft',
    ],
    [
      "a limit for a weft that no pick weaves",
      `${leastRecipe}limits: { float: { wept: 9 } }`,
      '5:20: unknown key "wept" in limits.float; did you mean "weft"?',
    ],
    [
      "a place to waive that is none",
      `${leastRecipe}waive: [{ rule: open-cut, reason: so, ends: 9-3 }]`,
      "5:45: waive, item 1.ends must be one number, or the first and the last: 3-9",
    ],
    [
      "a cloth out of bounds",
      least("ends: 2, threading: 1 2", "ends: 400000, threading: 1 2").replace("picks: 2", "picks: 400000"),
      "4:17: lifts.picks: the cloth has 800000 ends and 800000 picks; the most worked out is 1048576 of each and 2147483648 interlacements",
    ],
    [
      "a change of a block that there is not",
      least(/lifts:.*\n/, "lifts:\n  picks: 2\n  blocks: { moth: { rows: [1] } }\n  order: [moth wild]\n"),
      '7:16: lifts.order, item 1: "wild" was found; expected *N, *fill, on, upside-down, mirrored, turned, exchanged, brick, half-drop, framed, framed in, fitted, with',
    ],
    [
      "blocks without end",
      least(
        /lifts:.*\n/,
        "lifts:\n  picks: 2\n  blocks: { moth: { rows: [1] } }\n  order: [moth *1000000, moth]\n",
      ),
      "7:26: with lifts.order, item 2 the lifts come to more than 1000000 rows",
    ],
    [
      "shafts without end",
      least(
        /lifts:.*\n/,
        "lifts:\n  picks: 2\n  blocks: { moth: { rows: [1] } }\n  order: [moth *1000000 exchanged on 1-90000]\n",
      ),
      "7:11: with lifts.order, item 1 the changes of blocks name more than 20000000 shafts",
    ],
    [
      "a weave that there is not",
      least(/ground:.*\n/, "ground:\n  weave: satn 8\n"),
      '3:10: ground.weave: "satn" is no weave known here; did you mean "satin"?',
    ],
    [
      "a weave with a word out of place",
      least(/ground:.*\n/, "ground:\n  weave: satin 8 moves 3\n"),
      '3:18: ground.weave: found "moves" where "order", "step", "z", "s", "warp-faced", "plus", "with" or the end of the description was expected',
    ],
    [
      "a weave that cannot be",
      least(/ground:.*\n/, "ground:\n  weave: satin 8 step 2\n"),
      "3:10: ground.weave: step 2 on 8 ends leaves ends unbound, for both are divisible by 2; the steps of a satin on 8 ends are 3, 5",
    ],
    [
      "a float of no length",
      `${leastRecipe}limits: { float: 0 mm }`,
      "5:18: limits.float is 0 mm; expected a whole number of threads from 1, or a length above 0",
    ],
    [
      "more open cuts than there are",
      `${leastRecipe}limits: { open-cuts: 101 % }`,
      "5:22: limits.open-cuts is 101 %; a share goes up to 100 %",
    ],
  ])("%s", (_what, source, answer) => {
    expect(answerTo(source)).toBe(answer);
  });
});

describe("a hostile file is refused at once", () => {
  it("a file over 16 MiB", () => {
    expect(answerTo(" ".repeat(2 ** 24 + 1))).toBe(
      "1:1: the file is larger than 16 MiB, the most that is read",
    );
  });

  it.each(["[", "{", "- ", "? ", "a: ", "!!x [", "&a ["])("%j upon %j upon itself", (piece) => {
    expect(answerTo(`recipe: 1\ntitle: ${piece.repeat(100_000)}`)).toMatch(/^\d+:\d+: \S/);
  });

  it("sections indented ever deeper", () => {
    const stairs = Array.from({ length: 2000 }, (_, i) => `${" ".repeat(i)}a:`).join("\n");
    expect(answerTo(stairs)).toBe("64:65: lists and sections lie too deep in one another here");
  });

  it("aliases that double with each line", () => {
    const doubled = Array.from({ length: 60 }, (_, i) => `  b${i + 1}: &b${i + 1} [*b${i}, *b${i}]`).join(
      "\n",
    );
    expect(answerTo(`recipe: 1\nlifts:\n  b0: &b0 [1]\n${doubled}\n`)).toBe(
      "23:14: with the aliases written out, the file is larger than 16 MiB",
    );
  });

  it("an alias within what it stands for", () => {
    expect(answerTo("recipe: 1\nlifts: &l { rows: [1], picks: *l }\n")).toBe(
      "2:31: an alias stands here within the value it stands for",
    );
  });

  it.each([
    ["more than 1000000 rows", "    #\n".repeat(1_000_001)],
    ["more than 100000 columns", `    ${"#".repeat(100_001)}\n`],
  ])("a picture with %s", (what, squares) => {
    const picture = `lifts:\n  picks: 2\n  picture: |\n${squares}`;
    expect(answerTo(least(/lifts:.*\n/, picture))).toBe(`6:12: lifts.picture has ${what}`);
  });
});

describe("a harmless answer is given to", () => {
  it.each(["__proto__", "constructor", "hasOwnProperty", "toString"])("the key %s", (key) => {
    expect(answerTo(`${leastRecipe}${key}: { ends: 2 }\n`)).toContain(`5:1: unknown key "${key}"`);
    expect(answerTo(least("ends: 2,", `${key}: 2,`))).toContain(`3:10: unknown key "${key}" in units`);
    const block = `lifts: { picks: 2, blocks: { ${key}: { rows: [1] } }, order: [${key}] }\n`;
    expect(soundRecipe(least(/lifts:.*\n/, block), "named").draft.lifts).toEqual([[1]]);
    expect(answerTo(least(/lifts:.*\n/, block.replace(`[${key}]`, "[valueOf]")))).toContain(
      "no block is called",
    );
    expect(Object.getPrototypeOf({}).ends).toBeUndefined();
  });

  it("a title that steers the terminal", () => {
    expect(answerTo(`${leastRecipe}title: "\\e[2J moth"\n`)).toBe(
      "5:8: the text holds the control character U+001B",
    );
    expect(answerTo(`${leastRecipe}title: \u001b[2J\n`)).toBe(
      "5:8: this is not a text file: it holds the control character U+001B",
    );
    expect(answerTo(`${leastRecipe}"\\e[2J": 1\n`)).toBe(
      '5:1: unknown key "<U+001B>[2J"; the keys here are recipe, title, ground, units, lifts, pieces, colours, yarns, cloth, project, measured, loom, limits, waive, stated, formulas, notes',
    );
  });

  it("numbers beyond all looms", () => {
    expect(answerTo(least("ends: 2", "ends: 1e400"))).toContain("3:16: units.ends must be a whole number");
    expect(answerTo(least("ends: 2", `ends: ${"9".repeat(400)}`))).toContain("3:16: units.ends must be");
    expect(answerTo(least("ends: 2", "ends: 99999999999999999999"))).toContain("3:16: units.ends is");
    expect(answerTo(least("threading: 1 2 }", "threading: 99999999999999999999 }"))).toContain(
      "3:30: units.threading: shaft 999999999999",
    );
  });
});

it("every refusal names the file, the line and the column, and repeats them in its message", () => {
  const error = refusal(() => soundRecipe("recipe: 1\n", "runner.recipe.yaml"));
  expect(error).toBeInstanceOf(FileError);
  expect(error.code).toBe("missing-key");
  expect(error.place).toMatchObject({ file: "runner.recipe.yaml", line: 1, column: 1 });
  expect(error.message).toBe(`runner.recipe.yaml:1:1: ${error.sentence}`);
});

it("no line of a whole recipe can be left out without being noticed or harmless", () => {
  const lines = wholeRecipe.split("\n");
  for (let i = 0; i < lines.length; i++) {
    const source = lines.filter((_, j) => j !== i).join("\n");
    try {
      soundRecipe(source, "runner");
    } catch (error) {
      expect(error).toBeInstanceOf(FileError);
    }
  }
});
