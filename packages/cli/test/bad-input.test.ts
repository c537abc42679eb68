import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

/** A recipe that checks clean; each test spoils a line of it. */
const good = `recipe: 1
title: Small diamond
ground: { weave: broken twill }
units:
  ends: 4
  threading: X 1-3 2-1 X
lifts:
  picks: 4
  rows: [1, 2, 3, 2, 1]
`;

const explicit = (step: string) =>
  good.replace(
    "ground: { weave: broken twill }",
    `ground:
  shafts: 4
  threading: 1 2 3 4
  steps:
    - { raise: 4, sink: 1 }
    - ${step}`,
  );

/** Runs a command on one file with this content. */
async function told(content: string | Uint8Array, argv: readonly string[] = ["check", "bad.yaml"]) {
  const cwd = folder();
  writeFileSync(join(cwd, "bad.yaml"), content);
  return run(argv, { cwd });
}

it.each(["check", "expand"])("%s takes the good recipe", async (command) => {
  expect(await told(good, [command, "bad.yaml"])).toMatchObject({ status: 0, stderr: "" });
});

/** Lists of lists of lists, each naming the one before nine times over. */
const bomb = `${good}notes:
  - &a0 [moth, moth, moth]
${Array.from({ length: 20 }, (_, i) => `  - &a${i + 1} [${Array(9).fill(`*a${i}`).join(", ")}]`).join("\n")}
`;

/** What is wrong, the text, and what is said. */
const refused: readonly (readonly [what: string, content: string | Uint8Array, sentence: string])[] = [
  ["an empty file", "", "bad.yaml:1:1: the file is empty"],
  ["a file of blanks", " \n\n\t\n", "bad.yaml:1:1: the file is empty"],
  [
    "what is not YAML",
    "recipe: 1\nlifts: [1, 2\n",
    "bad.yaml:3:1: a bracket before this is not closed; expected ]",
  ],
  [
    "a binary file",
    Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46),
    "bad.yaml:1:1: this is not a text file in UTF-8: a byte here is no character",
  ],
  [
    "a picture that is cut short",
    Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13),
    "bad.yaml:1:13: the PNG picture is cut short",
  ],
  [
    "a draft without ends",
    "[WIF]\nVersion=1.1\n",
    "bad.yaml:1:1: the draft has no ends: it needs [THREADING]",
  ],
  [
    "a binary file that is text at first",
    Buffer.from(`${good}\0\0\u0001`),
    "bad.yaml:10:1: this is not a text file: it holds the control character U+0000",
  ],
  [
    "UTF-16",
    Buffer.from(`\ufeff${good}`, "utf16le"),
    "bad.yaml:1:1: the file is saved as UTF-16; save it as UTF-8",
  ],
  [
    "two documents",
    `${good}---\n${good}`,
    "bad.yaml:11:1: a second document begins here; a file holds one recipe",
  ],
  ["a list", "- 1\n- 2\n", "bad.yaml:1:1: a recipe must be a section of keys; a list was found"],
  [
    "an unknown key",
    good.replace("threading:", "thredding:"),
    'bad.yaml:6:3: unknown key "thredding" in units; did you mean "threading"?',
  ],
  [
    "an unknown section",
    `${good}weather: fine\n`,
    'bad.yaml:10:1: unknown key "weather"; the keys here are recipe, title, ground, units, lifts, pieces, colours, yarns, cloth, project, measured, loom, limits, waive, stated, formulas, notes',
  ],
  [
    "a wrong type",
    good.replace("ends: 4", "ends: four"),
    'bad.yaml:5:9: units.ends: "four" was found; expected numbers from 1 such as 4, or 4*10 for ten alike',
  ],
  [
    "a list where a map belongs",
    good.replace("{ weave: broken twill }", "[broken twill]"),
    "bad.yaml:3:1: ground must be a section of keys; a list was found",
  ],
  [
    "a fraction of a thread",
    good.replace("ends: 4", "ends: 2.5"),
    "bad.yaml:5:9: units.ends must be a whole number or text or a list; 2.5 was found",
  ],
  ["a missing section", good.replace(/lifts:[\s\S]*/, ""), 'bad.yaml:1:1: a recipe needs the key "lifts"'],
  [
    "a newer version",
    good.replace("recipe: 1", "recipe: 2"),
    "bad.yaml:1:9: the recipe is in version 2 of the format; this Drawcord reads version 1, so a newer one is needed",
  ],
  ["no version", good.replace("recipe: 1\n", ""), 'bad.yaml:1:1: a recipe needs the key "recipe"'],
  [
    "an unknown weave",
    good.replace("broken twill", "broken twil"),
    'bad.yaml:3:25: ground.weave: found "twil" where "twill" was expected',
  ],
  [
    "shaft 0 in the threading",
    good.replace("X 1-3", "X 0-3"),
    "bad.yaml:6:16: units.threading: shaft 0 was found; shafts are counted from 1",
  ],
  [
    "shaft 0 in a lift",
    good.replace("[1, 2,", "[0, 2,"),
    "bad.yaml:9:10: lifts.rows, item 1: shaft 0 was found; shafts are counted from 1",
  ],
  [
    "a ground shaft above the harness",
    explicit("{ raise: 5, sink: 3 }"),
    "bad.yaml:8:16: ground.steps, item 2.raise names shaft 5; the ground harness has 4 shafts",
  ],
  [
    "a shaft both raised and sunk",
    explicit("{ raise: 2 3, sink: 3 }"),
    "bad.yaml:8:7: ground.steps, item 2 both raises and sinks ground shaft 3",
  ],
  [
    "an unbalanced bracket",
    good.replace("X 1-3 2-1 X", "X (1-3 2-1 X"),
    'bad.yaml:6:16: units.threading: the bracket "(" is never closed; expected a ")" after it',
  ],
  [
    "a bracket too many",
    good.replace("X 1-3 2-1 X", "X 1-3) 2-1 X"),
    'bad.yaml:6:19: units.threading: the bracket ")" closes nothing; expected a "(" before it',
  ],
  [
    "*0",
    good.replace("X 1-3", "X*0 1-3"),
    'bad.yaml:6:16: units.threading: "0" was found after "*"; expected how many times, 1 or more',
  ],
  [
    "a huge repeat",
    good.replace("X 1-3", "X*99999999 1-3"),
    "bad.yaml:6:14: units.threading: the threading comes to more than 1000000 units",
  ],
  [
    "a number past all counting",
    good.replace("X 1-3", "X*999999999999999999999999 1-3"),
    "bad.yaml:6:14: units.threading: the threading comes to more than 1000000 units",
  ],
  [
    "repeats of repeats",
    good.replace("X 1-3", "((((((1-9)*99)*99)*99)*99)*99)*99"),
    "bad.yaml:6:31: units.threading: the threading comes to more than 1000000 units",
  ],
  [
    "a huge run of shafts",
    good.replace("X 1-3", "1-99999999"),
    "bad.yaml:6:16: units.threading: shaft 99999999 was found; the highest shaft read is 100000",
  ],
  [
    "no units",
    good.replace("X 1-3 2-1 X", '""'),
    "bad.yaml:6:14: units.threading: the threading names no units",
  ],
  [
    "no rows",
    good.replace("[1, 2, 3, 2, 1]", "[]"),
    "bad.yaml:9:3: lifts.rows is an empty list; at least one entry is needed",
  ],
  [
    "a tab for indentation",
    good.replace("  ends: 4", "\tends: 4"),
    "bad.yaml:5:1: a tab stands where the line is indented; indent with blanks",
  ],
  [
    "aliases that explode",
    bomb,
    "bad.yaml:18:10: with the aliases written out, the file is larger than 16 MiB",
  ],
  [
    "a cloth too large to work out",
    good.replace("ends: 4", "ends: 60000").replace("picks: 4", "picks: 60000"),
    "bad.yaml:8:10: lifts.picks: the cloth has 420000 ends and 300000 picks; the most worked out is 1048576 of each and 2147483648 interlacements",
  ],
];

describe("a recipe that cannot be used", () => {
  it.each(refused)("%s", async (_, content, sentence) => {
    for (const command of ["check", "expand"]) {
      expect(await told(content, [command, "bad.yaml"])).toEqual({
        status: 2,
        stdout: "",
        stderr: `${sentence}\n`,
      });
    }
  });
});

describe("a file that cannot be read", () => {
  const cwd = folder();
  mkdirSync(join(cwd, "folder"));
  writeFileSync(join(cwd, "runner.recipe.yaml"), good);

  it.each([
    ["runer.recipe.yaml", 'runer.recipe.yaml: there is no such file; did you mean "runner.recipe.yaml"?'],
    ["no/such/folder.yaml", "no/such/folder.yaml: there is no such file"],
    ["runner.recipe.yaml/x", "runner.recipe.yaml/x: a part of this path is a file, not a folder"],
    ["no\u001bM", "no<U+001B>M: there is no such file"],
  ])("%j is answered with a sentence by every command", async (name, sentence) => {
    for (const command of ["check", "expand"]) {
      expect(await run([command, name], { cwd })).toEqual({ status: 2, stdout: "", stderr: `${sentence}\n` });
    }
  });

  it("a folder is looked through for recipes, and is none itself", async () => {
    expect(await run(["check", "folder/"], { cwd })).toEqual({
      status: 2,
      stdout: "",
      stderr: "folder/: no recipe or draft (**/*.recipe.yaml, **/*.recipe.yml, **/*.wif) in this folder\n",
    });
    const expanded = await run(["expand", "folder"], { cwd });
    expect(expanded).toEqual({
      status: 2,
      stdout: "",
      stderr: "folder: this is a folder; name a file in it\n",
    });
  });

  it("a pattern that fits nothing is said to", async () => {
    expect(await run(["check", "*.draft"], { cwd })).toEqual({
      status: 2,
      stdout: "",
      stderr: "*.draft: no file has a name like this\n",
    });
  });

  it("a file over 16 MiB is refused without being read to its end", async () => {
    const large = await told(Buffer.alloc(17 * 2 ** 20, "#"));
    const sentence = "bad.yaml: the file is larger than 16 MiB, the most that is read\n";
    expect(large).toEqual({ status: 2, stdout: "", stderr: sentence });
  });

  it("nor is more read from a pipe", async () => {
    let taken = 0;
    const endless = (async function* () {
      for (;;) {
        taken += 2 ** 20;
        yield Buffer.alloc(2 ** 20, "#");
      }
    })();
    const { status, stderr } = await run(["check", "-"], { stdin: endless });
    expect(status).toBe(2);
    expect(stderr).toBe("standard input: the file is larger than 16 MiB, the most that is read\n");
    expect(taken).toBe(17 * 2 ** 20);
  });

  it("never stops the others", async () => {
    const { status, stdout, stderr } = await run(["check", "none.yaml", "runner.recipe.yaml", "folder"], {
      cwd,
    });
    expect(status).toBe(2);
    expect(stdout).toMatch(
      /^runner\.recipe\.yaml {2}Small diamond\n[\s\S]*\n0 findings in 1 file, 2 files not usable, \d+ of \d+ rules ran; not long-stretch, large-area: no limit is set\n$/,
    );
    expect(stderr.split("\n")).toHaveLength(3);
  });
});

describe("an option that cannot be used", () => {
  it.each([
    [
      ["check", "bad.yaml", "--format", "xml"],
      'drawcord check: --format takes one of pretty, json, ndjson, sarif, github, markdown, not "xml"',
    ],
    [
      ["expand", "bad.yaml", "--format", "pdf"],
      'drawcord expand: --format takes one of text, pbm, png, svg, wif, json, not "pdf"',
    ],
    [
      ["check", "bad.yaml", "--fail-on", "never"],
      'drawcord check: --fail-on takes one of error, warning, note, not "never"',
    ],
    [["expand", "bad.yaml", "two.yaml"], 'drawcord expand takes FILE; "two.yaml" is one too many'],
    [["check"], "drawcord check needs a FILE: drawcord check FILE..."],
    [["chekc", "bad.yaml"], 'drawcord has no command "chekc"; did you mean "check"?'],
  ])("%j", async (argv, sentence) => {
    expect(await told(good, argv)).toEqual({ status: 2, stdout: "", stderr: `${sentence}\n` });
  });
});

describe("what looks odd and is no fault", () => {
  const report = async (content: string) =>
    (await told(content, ["check", "bad.yaml", "--format", "json"])).stdout;

  it.each([
    ["a byte order mark", `\ufeff${good}`],
    ["Windows line ends", good.replaceAll("\n", "\r\n")],
    ["old Macintosh line ends", good.replaceAll("\n", "\r")],
    ["tabs between the units", good.replace("X 1-3 2-1 X", "X\t1-3\t\t2-1 X")],
    ["no line end at the close", good.trimEnd()],
    ["commas between the units", good.replace("X 1-3 2-1 X", '"X, 1-3, 2-1, X"')],
  ])("%s", async (_, content) => {
    expect(JSON.parse(await report(content))).toEqual(JSON.parse(await report(good)));
  });

  it("a pattern shaft that no unit hangs on is a finding and no refusal", async () => {
    const { status, stdout, stderr } = await told(good.replace("[1, 2, 3,", "[1, 2 9, 3,"));
    expect([status, stderr]).toEqual([1, ""]);
    expect(stdout).toContain("error  cause  line 9\n  row 2 draws shaft 9, on which no unit hangs");
  });
});
