import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { drawdownOfDraft } from "@drawcord/check";
import { soundWif, starterRecipe, writeWif } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { formatNames } from "../src/formats/formats.js";
import { run } from "./run.js";

const diamond = `recipe: 1
title: Small diamond
ground: { weave: broken twill }
units: { ends: 4, threading: X 1-3 2-1 X }
lifts: { picks: 4, rows: [1, 2, 3, 2, 1] }
`;
const wif = (title: string) => `[WIF]
Version=1.1
[TEXT]
Title=${title}
[WEAVING]
Shafts=2
[WARP]
Threads=4
[WEFT]
Threads=2
[THREADING]
1=1
2=2
3=1
4=2
[LIFTPLAN]
1=1
2=2
`;
/** Characters that a terminal obeys, but for the end of a line. */
const CONTROLS = /(?!\n)[\p{Cc}\u2028-\u202e\u2066-\u2069]/u;

/** What every command that reads a file says of one, in every format of text. */
const asked = [
  ...formatNames.map((format) => ["check", "--format", format]),
  ...["text", "json", "wif"].map((format) => ["expand", "--format", format]),
  ...["text", "json"].map((format) => ["plan", "--format", format]),
  ...["text", "json", "csv"].map((format) => ["lifts", "--format", format]),
  ...["text", "json", "csv"].map((format) => ["threading", "--format", format]),
  ["chart"],
  ["sheet", "-o", "sheet.md", "--part", "lifts", "--force"],
  ["sheet", "-o", "sheet.html", "--part", "lifts", "--force"],
  ["format", "--check"],
  ["format"],
];

describe("hostile files at the command", () => {
  it.each([
    ["in a recipe", diamond.replace("Small diamond", '"\\e[2J\\e]0;owned\\a\\x9b31m\\u202e"')],
    ["in a draft", wif("x \u009b31m\u202e\u0085")],
  ])("terminal codes %s are never printed raw", async (_, text) => {
    const cwd = folder();
    writeFileSync(join(cwd, "x.yaml"), text);
    for (const [command, ...options] of asked) {
      const { stderr, stdout } = await run([command!, "x.yaml", ...options], { cwd, isTerminal: false });
      // A draft's own lines end as the format has it.
      expect((stdout + stderr).replaceAll("\r\n", "\n"), `${command} ${options.join(" ")}`).not.toMatch(
        CONTROLS,
      );
    }
  });

  it("a line end in a text begins no line of its own, and no text is taken for marks", async () => {
    const cwd = folder();
    const text = JSON.stringify("moth\n::error::owned\n# owned\n<script>owned</script>\r\n| owned");
    const recipe = `${diamond.replace("title: Small diamond", `title: ${text}\nnotes: ${text}`)}limits: { float: 1 }
yarns: { warp: { count: 20/2 Ne, fibre: ${text}, colour: ${text} } }
waive: [{ rule: float-length, rows: 1, reason: ${text} }]
`;
    for (const [command, ...options] of asked) {
      writeFileSync(join(cwd, "x.yaml"), recipe);
      const { stderr, stdout } = await run([command!, "x.yaml", ...options], { cwd });
      expect(stdout + stderr, `${command} ${options.join(" ")}`).not.toMatch(/^(?:::error::|# |\| )owned/m);
    }
    const pages = ["sheet.md", "sheet.html"].map((name) => readFileSync(join(cwd, name), "utf8"));
    for (const page of pages) {
      expect(page).toContain("moth");
      expect(page).not.toContain("<script>owned");
    }
    expect(pages[0]).not.toMatch(/^(?:# |\| )owned/m);
  });

  it.each([
    ["a command", ["\u001b[2J\u009b"]],
    ["an option", ["check", "--\u001b[2J\u009b"]],
    ["a format", ["check", "x.yaml", "--format", "\u001b[2J\u009b"]],
    ["a rule", ["check", "x.yaml", "--rule", "\u001b[2J\u009b"]],
    ["a weave", ["ground", "\u001b[2J\u009b"]],
    ["a yarn", ["yarn", "\u001b[2J\u009b"]],
    ["a colour", ["expand", "x.yaml", "--format", "png", "--warp", "\u001b[2J\u009b"]],
    ["a file to write", ["format", "x.yaml", "-o", "no/\u001b[2J\u009b"]],
    ["a title", ["init", "--title", "\u001b[2J\u009b"]],
  ])("terminal codes in the name of %s are never printed raw", async (_, argv) => {
    const cwd = folder();
    writeFileSync(join(cwd, "x.yaml"), diamond);
    const { status, stderr, stdout } = await run(argv, { cwd });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^[^\n]+\n$/);
    expect(stderr).not.toMatch(CONTROLS);
  });

  it("terminal codes in the name of a file are never printed raw", async () => {
    const cwd = folder();
    const name = "a\u001b[2J\u009b.recipe.yaml";
    writeFileSync(join(cwd, name), diamond);
    for (const [command, ...options] of asked) {
      const { stderr, stdout } = await run([command!, name, ...options], { cwd });
      expect(stdout + stderr, `${command} ${options.join(" ")}`).not.toMatch(/(?![\r\n])\p{Cc}/u);
    }
  });

  it.each([
    ["__proto__", "__proto__: { draft: 1 }\n", 'x.yaml:6:1: unknown key "__proto__"'],
    ["constructor", "constructor: 1\n", 'x.yaml:6:1: unknown key "constructor"'],
    ["toString", "limits: { toString: 9 }\n", "x.yaml:6:"],
  ])("the key %s is a key like any other, and refused", async (_, line, sentence) => {
    const cwd = folder();
    writeFileSync(join(cwd, "x.yaml"), diamond + line);
    for (const command of ["check", "expand", "plan", "format"]) {
      const { status, stderr, stdout } = await run([command, "x.yaml"], { cwd });
      expect([status, stdout]).toEqual([2, ""]);
      expect(stderr.startsWith(sentence)).toBe(true);
    }
    expect(({} as Record<string, unknown>)["draft"]).toBeUndefined();
  });

  it("a block or a section of a draft may be called __proto__, and harms nothing", async () => {
    const cwd = folder();
    const blocks = "lifts: { picks: 4, blocks: { __proto__: { rows: [1, 2] } }, order: [__proto__*2] }\n";
    writeFileSync(join(cwd, "x.yaml"), diamond.replace(/lifts:.*\n/, blocks));
    const { status, stderr, stdout } = await run(["expand", "x.yaml"], { cwd });
    if (status === 2) expect(stderr).toMatch(/^x\.yaml:\d+:\d+: [^\n]+\n$/);
    else expect(stdout.split("\n")).toHaveLength(17);
    writeFileSync(join(cwd, "x.wif"), `${wif("t")}[__proto__]\n__proto__=1\n`);
    expect((await run(["check", "x.wif"], { cwd })).status).toBeLessThan(3);
    expect(({} as Record<string, unknown>)["rows"]).toBeUndefined();
  });

  it.each([
    ["enormous numbers", diamond.replace("ends: 4", `ends: ${"9".repeat(400)}`)],
    ["an enormous exponent", diamond.replace("ends: 4", "ends: 1e308")],
    ["deep brackets", `${diamond}notes: ${"[".repeat(50_000)}${"]".repeat(50_000)}\n`],
    ["deep sections", `${diamond}notes: ${"{a: ".repeat(20_000)}1${"}".repeat(20_000)}\n`],
    ["enormous counts in a draft", wif("t").replace("Threads=4", "Threads=999999999999999999999")],
    [
      "a draft past all memory",
      wif("t").replace("Threads=4", "Threads=1000000").replace("Threads=2", "Threads=1000000"),
    ],
  ])("%s are refused in one sentence with a place", async (_, text) => {
    const cwd = folder();
    writeFileSync(join(cwd, "x.yaml"), text);
    for (const command of ["check", "expand", "plan"]) {
      const { status, stderr, stdout } = await run([command, "x.yaml"], { cwd });
      expect([status, stdout]).toEqual([2, ""]);
      expect(stderr).toMatch(/^x\.yaml:\d+:\d+: [^\n]{1,400}\n$/);
    }
  });

  it("brackets in brackets, as deep as one likes, are read", async () => {
    const cwd = folder();
    const deep = `${"(".repeat(50_000)}1-3${")".repeat(50_000)}`;
    writeFileSync(join(cwd, "x.yaml"), diamond.replace("1-3", deep));
    expect(await run(["expand", "x.yaml"], { cwd })).toEqual(
      await run(["expand", "-"], { cwd, stdin: diamond }),
    );
  });

  it("a title with a path in it names a file in this folder", async () => {
    const cwd = folder();
    mkdirSync(join(cwd, "inner"));
    const inner = join(cwd, "inner");
    const { status } = await run(["init", "--title", "../../outside"], { cwd: inner });
    expect(status).toBe(0);
    expect(readdirSync(inner)).toEqual(["outside.recipe.yaml"]);
    expect(readdirSync(cwd)).toEqual(["inner"]);
  });

  it("a draft with a hostile title is written so that it can be read again", async () => {
    const cwd = folder();
    const hostile = diamond.replace("Small diamond", '"a\\n[WEAVING]\\nShafts=1"');
    writeFileSync(join(cwd, "x.yaml"), hostile);
    const { stderr, stdout } = await run(["expand", "x.yaml", "--format", "wif"], { cwd });
    expect(stderr).toBe("");
    const { draft } = soundWif(stdout, "w");
    expect(draft.shafts).toBeGreaterThan(1);
    expect(soundWif(writeWif(draft), "w").draft).toEqual(draft);
    expect(drawdownOfDraft(draft).columns).toBe(28);
  });
});

describe("a folder of a thousand recipes, ten of them broken", () => {
  it("has nine hundred and ninety reported and the ten named", async () => {
    const cwd = folder();
    mkdirSync(join(cwd, "archive"));
    const broken: string[] = [];
    for (let i = 0; i < 1000; i++) {
      const name = `${String(i).padStart(4, "0")}.recipe.yaml`;
      const isBroken = i % 100 === 37;
      if (isBroken) broken.push(`archive/${name}`);
      writeFileSync(
        join(cwd, "archive", name),
        isBroken ? starterRecipe().replace("units:", "unit:") : diamond,
      );
    }
    const argv = ["check", "archive", "--format", "ndjson", "--workers", "1"];
    const { status, stderr, stdout } = await run(argv, { cwd });
    expect(status).toBe(2);
    const told = stdout.trimEnd().split("\n");
    expect(told).toHaveLength(990);
    const files = told.map((line) => (JSON.parse(line) as { file: string }).file);
    expect(files).toEqual([...files].sort());
    expect(files.filter((file) => broken.includes(file))).toEqual([]);
    const sentences = stderr.trimEnd().split("\n");
    expect(sentences.map((sentence) => sentence.replace(/:\d+:\d+: .*/, ""))).toEqual(broken);
    expect(sentences.every((sentence) => sentence.includes('unknown key "unit"'))).toBe(true);
  }, 30_000);
});
