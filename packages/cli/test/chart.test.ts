import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { crc32 } from "node:zlib";
import { soundRecipe, writePbm, writePng } from "@drawcord/files";
import { fromText, toText } from "@drawcord/grid";
import { checkRecipe } from "@drawcord/review";
import { chartOf } from "@drawcord/units";
import { encode } from "fast-png";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

const moth = "..#....\n.###...\n##.##.#\n#.#.#..\n.#.#..#";
const grid = fromText(moth);
const cwd = folder();
writeFileSync(join(cwd, "moth.txt"), moth);
writeFileSync(join(cwd, "moth.pbm"), writePbm(grid));
writeFileSync(join(cwd, "plain.pbm"), writePbm(grid, { kind: "P1" }));
writeFileSync(join(cwd, "moth.png"), writePng(grid, { scale: 5 }));
writeFileSync(join(cwd, "red.png"), writePng(grid, { warp: "#b02028", weft: "#f8f4e8" }));

/** A red, a green and a white square. */
const twoInks = Uint8Array.from([200, 0, 0, 0, 160, 0, 255, 255, 255]);
writeFileSync(join(cwd, "inks.png"), encode({ width: 3, height: 1, data: twoInks, channels: 3, depth: 8 }));
writeFileSync(join(cwd, "cut.png"), writePng(grid).subarray(0, 60));
writeFileSync(join(cwd, "huge.png"), claiming(60_000));
writeFileSync(join(cwd, "empty.txt"), "");
writeFileSync(join(cwd, "blank.txt"), "...\n...\n");
writeFileSync(join(cwd, "noise.bin"), Uint8Array.from([0, 255, 254, 1]));
const wide = Array.from({ length: 9 }, (_, row) =>
  Array.from({ length: 300 }, (_, unit) => (((unit + 1) >>> row) & 1 ? "#" : ".")).join(""),
);
writeFileSync(join(cwd, "wide.txt"), wide.join("\n"));

/** The picture with another width and height in its header. */
function claiming(side: number): Uint8Array {
  const bytes = Buffer.from(writePng(grid));
  bytes.writeUInt32BE(side, 16);
  bytes.writeUInt32BE(side, 20);
  bytes.writeUInt32BE(crc32(bytes.subarray(12, 29)), 29);
  return bytes;
}

const json = async (...argv: readonly string[]) => {
  const { stdout, stderr, status } = await run(["chart", ...argv, "--format", "json"], { cwd });
  expect([status, stderr]).toEqual([0, ""]);
  return JSON.parse(stdout) as {
    shafts: number;
    changes: number;
    threading: string;
    picture: string[];
    proved: boolean;
  };
};

describe("drawcord chart", () => {
  it("reads text, both kinds of PBM, and PNG by the square or by the pixel", async () => {
    const asText = await json("moth.txt");
    expect(asText).toMatchObject({ shafts: 4, changes: 0, threading: "1-3 2 1 X 4" });
    const { file: _, ...expected } = { file: "", ...asText };
    for (const argv of [
      ["moth.pbm"],
      ["plain.pbm"],
      ["moth.png", "--scale", "5"],
      ["red.png"],
      ["red.png", "--ink", "#b02028"],
    ]) {
      expect(await json(...argv)).toMatchObject({ ...expected, file: argv[0] });
    }
    expect(asText.picture.reverse().join("\n")).toBe(moth);
  });

  it("writes a recipe that weaves the chart and that check accepts", async () => {
    const { status, stdout } = await run(
      ["chart", "moth.txt", "--unit-ends", "4", "-o", "moth.recipe.yaml"],
      { cwd },
    );
    expect([status, stdout.includes("moth.recipe.yaml was written; drawcord check finds nothing")]).toEqual([
      0,
      true,
    ]);
    const recipe = soundRecipe(readFileSync(join(cwd, "moth.recipe.yaml")), "moth.recipe.yaml");
    expect(recipe.title).toBe("Moth");
    expect(new Set(recipe.draft.unitEnds)).toEqual(new Set([4]));
    expect(new Set(recipe.draft.picksPerRow)).toEqual(new Set([4]));
    expect(toText(chartOf(recipe.draft))).toBe(moth);
    expect(checkRecipe(recipe).findings).toEqual([]);
    const checked = await run(["check", "moth.recipe.yaml"], { cwd });
    expect(checked.status).toBe(0);
  });

  it("replaces a file only when told to", async () => {
    writeFileSync(join(cwd, "kept.yaml"), "mine");
    const refused = await run(["chart", "moth.txt", "-o", "kept.yaml"], { cwd });
    expect([refused.status, readFileSync(join(cwd, "kept.yaml"), "utf8")]).toEqual([2, "mine"]);
    expect((await run(["chart", "moth.txt", "-o", "kept.yaml", "--force"], { cwd })).status).toBe(0);
    expect(readFileSync(join(cwd, "kept.yaml"), "utf8")).toContain("recipe: 1");
  });

  it("finds the nearest picture with fewer shafts and shows the squares", async () => {
    const { shafts, changes, proved, picture } = await json("moth.txt", "--shafts", "2");
    expect(shafts).toBe(2);
    expect(proved).toBe(true);
    expect(picture.join("").replace(/[#.]/g, "")).toHaveLength(changes);
    const drawn = picture.map((row) => row.replaceAll("-", "#").replaceAll("+", "."));
    expect(drawn.reverse().join("\n")).toBe(moth);
  });

  it("says which units quarrel where a threading that is on the loom cannot weave the chart", async () => {
    const { stdout } = await run(["chart", "moth.txt", "--threading", "1-3 2 1 X*2"], { cwd });
    expect(stdout).toContain(
      "This threading cannot weave the chart as it is:\n  row 1: unit 7 should be drawn and is static\n  row 3: unit 7 should be drawn and is static\n",
    );
    const { stdout: fits } = await run(["chart", "moth.txt", "--threading", "1-7"], { cwd });
    expect(fits).not.toContain("cannot weave");
  });

  it("takes a threading that is on the loom, a cord a unit, points, a mirror, fewer lifts and more units", async () => {
    expect((await json("moth.txt", "--threading", "1-7")).changes).toBe(0);
    expect((await json("moth.txt", "--single-unit")).threading).toBe("1-7");
    expect((await json("moth.txt", "--symmetry", "point", "--shafts", "4")).threading).toMatch(/4/);
    const mirrored = await json("moth.txt", "--symmetry", "mirror", "--units", "9");
    expect(mirrored.threading).toMatch(/^X/);
    expect((await json("moth.txt", "--lifts", "3")).changes).toBeGreaterThan(0);
  });
});

describe("a picture or means that cannot be used", () => {
  const refused = [
    [
      ["inks.png"],
      "inks.png:1:1: the picture has no clear ink among #00a000 (1 square), #c80000 (1 square), #ffffff (1 square); name the colour of the ink",
    ],
    [["moth.txt", "--units", "6"], "moth.txt: the chart is 7 units wide; there are 6 units"],
    [["moth.txt", "--threading", "(1-3)*2"], "moth.txt: the chart is 7 units wide; there are 6 units"],
    [
      ["moth.txt", "--shafts", "201"],
      `drawcord chart: --shafts takes a whole number from 1 to 200, not "201"`,
    ],
    [
      ["wide.txt"],
      "the chart takes 300 pattern shafts, more than the 200 that are worked out; ask for fewer with --shafts, or for a cord a unit with --single-unit",
    ],
    [["empty.txt"], "empty"],
    [["blank.txt"], "blank.txt: the chart draws nothing; expected one square or more"],
    [["noise.bin"], "noise.bin: this is no chart; a text of # and ., a PBM or a PNG picture was expected"],
    [["cut.png"], "cut.png:1:"],
    [["huge.png"], "60000"],
    [["none.png"], "none.png: there is no such file"],
    [["moth.txt", "--shafts", "2", "--single-unit"], "--threading and --single-unit say how the units hang"],
    [["moth.txt", "--symmetry", "point"], "--symmetry point needs a number of shafts, --shafts N"],
    [["moth.txt", "--threading", "1-3*2"], `"*" was found after a run of shafts`],
    [["moth.txt", "--weave", "houndstooth"], "houndstooth"],
    [["moth.png", "--scale", "4"], "do not make whole squares of 4"],
  ] as const;

  it.each(refused)("%j: a sentence, and nothing is written", async (argv, sentence) => {
    const before = readdirSync(cwd);
    const { status, stdout, stderr } = await run(["chart", ...argv, "-o", "never.yaml"], { cwd });
    expect(stderr).toContain(sentence);
    expect([status, stdout, stderr.split("\n").length]).toEqual([2, "", 2]);
    expect(stderr).not.toMatch(/ {4}at |Error:/);
    expect(readdirSync(cwd)).toEqual(before);
  });
});

describe("drawcord chart of a recipe", () => {
  const lantern = `recipe: 1
# as the course weaves it
title: Lantern
ground: { weave: broken twill }
units: { ends: 4, threading: X 9 X 1-6 5-1 X 9 X }
lifts: { picks: 4, rows: [1-6 9, 2-6 9, 3 5 6 9, 4-6 9, 1 4 6 9, 1-6 9] }
`;
  writeFileSync(join(cwd, "lantern.recipe.yaml"), lantern);
  const columns = 17;

  it("finds the nearest on fewer shafts, keeps the borders, and writes the recipe with its comments", async () => {
    const found = await json("lantern.recipe.yaml", "--shafts", "4", "-o", "four.recipe.yaml");
    expect(found.shafts).toBe(4);
    expect(found.changes).toBeGreaterThan(0);
    for (const row of found.picture) expect([row[1], row[columns - 2]]).toEqual(["#", "#"]);
    const text = readFileSync(join(cwd, "four.recipe.yaml"), "utf8");
    expect(text).toContain("# as the course weaves it");
    const { draft } = soundRecipe(text, "four");
    const woven = toText(chartOf(draft)).replaceAll("#", "x");
    const shown = found.picture.map((row) => row.replaceAll(/[#+]/g, "x").replaceAll("-", "."));
    expect(woven.split("\n")).toEqual(shown.toReversed());
  });

  it("keeps the squares that a picture names, or says how many shafts they take", async () => {
    const mask = Array.from({ length: 6 }, (_, row) => (row === 3 ? "#" : ".").repeat(columns));
    writeFileSync(join(cwd, "mask.txt"), mask.join("\n"));
    const { picture } = await json("lantern.recipe.yaml", "--shafts", "4", "--keep", "mask.txt");
    // The lowest line of a picture is row 1.
    expect(picture[2]).toMatch(/^[#.]+$/);
    writeFileSync(join(cwd, "all.txt"), mask.map((row) => row.replaceAll(".", "#")).join("\n"));
    const refuse = async (...argv: string[]) => (await run(["chart", ...argv], { cwd })).stderr;
    expect(await refuse("lantern.recipe.yaml", "--shafts", "4", "--keep", "all.txt")).toContain(
      "may not change take 6",
    );
    expect(await refuse("lantern.recipe.yaml", "--keep", "moth.txt")).toContain(
      "the squares to keep are 5 rows x 7 units",
    );
    expect(await refuse("moth.txt", "--keep", "mask.txt")).toContain("--keep goes with a recipe");
    expect(await refuse("lantern.recipe.yaml", "--single-unit")).toContain("of a recipe --shafts");
  });

  it("asks one of several pieces, or all, and writes the recipe with its pieces", async () => {
    const pair = `recipe: 1
# as the course weaves it
ground: { weave: broken twill }
units: { ends: 4, threading: X 9 X 1-6 5-1 X 9 X }
lifts: { picks: 4, blocks: { fan: { rows: [1-6 9, 2-6 9, 3 5 6 9] }, bud: { rows: [4-6 9, 1 4 6 9] } } }
pieces:
  # woven first
  - { name: fans, count: 2, weft: gold, lifts: { order: [fan *2] } }
  - { name: buds, lifts: { order: [bud, fan] } }
colours: { weft: madder }
yarns: { gold: { count: 20/2 Ne }, madder: { count: 20/2 Ne } }
`;
    writeFileSync(join(cwd, "pair.recipe.yaml"), pair);
    const before = soundRecipe(pair, "pair").pieces.map(({ draft }) => toText(chartOf(draft)));
    const buds = await json("pair.recipe.yaml", "--piece", "buds");
    expect(buds.picture).toEqual(before[1]!.split("\n").toReversed());

    const whole = await json("pair.recipe.yaml", "--shafts", "4", "-o", "pair4.recipe.yaml");
    expect(whole.picture).toHaveLength(6 + 5);
    const text = readFileSync(join(cwd, "pair4.recipe.yaml"), "utf8");
    for (const comment of ["# as the course weaves it", "# woven first"]) expect(text).toContain(comment);
    const written = soundRecipe(text, "pair4");
    expect(written.pieces.map(({ count, name, wefts }) => [name, count, wefts[0]])).toEqual([
      ["fans", 2, "gold"],
      ["buds", 1, "madder"],
    ]);
    const woven = written.pieces.flatMap(({ draft }) => toText(chartOf(draft)).split("\n").toReversed());
    const shown = whole.picture.map((row) => row.replaceAll("+", "#").replaceAll("-", "."));
    expect(woven).toEqual(shown);

    await json("pair.recipe.yaml", "--piece", "fans", "--shafts", "4", "-o", "fans.recipe.yaml");
    const alone = soundRecipe(readFileSync(join(cwd, "fans.recipe.yaml")), "fans");
    expect(alone.pieces.map(({ name }) => name)).toEqual(["fans"]);
    expect(alone.yarns.map(({ name }) => name)).toEqual(["gold"]);
    const fans = readFileSync(join(cwd, "fans.recipe.yaml"), "utf8");
    for (const kept of [
      "# as the course weaves it",
      "lifts: { picks: 4, blocks: { fan: { rows: [1-3, 2 3, 3] } } }",
      "pieces:\n  # woven first\n  - { name: fans, count: 2, weft: gold, lifts: { order: [fan *2] } }\n",
    ])
      expect(fans).toContain(kept);
    const { stderr } = await run(["chart", "moth.txt", "--piece", "fans"], { cwd });
    expect(stderr).toContain("--piece goes with a recipe");
  });

  it("draws the squares that change", async () => {
    const { changes, picture } = await json(
      "lantern.recipe.yaml",
      "--shafts",
      "4",
      "--picture",
      "lantern.svg",
    );
    const svg = readFileSync(join(cwd, "lantern.svg"), "utf8");
    const areas = [...svg.matchAll(/<path fill="(#\w+)" d="([^"]*)"/g)].map(([, colour, path]) => ({
      colour,
      squares: [...path!.matchAll(/h(\d+)v(\d+)h-/g)].reduce(
        (sum, [, w, h]) => sum + Number(w) * Number(h),
        0,
      ),
    }));
    const count = (sign: string) => picture.join("").split(sign).length - 1;
    expect(areas.map(({ squares }) => squares)).toEqual([count("#"), count("+"), count("-")]);
    expect(count("+") + count("-")).toBe(changes);
  });

  it("says where a symmetry saves shafts at no loss", async () => {
    writeFileSync(
      join(cwd, "wide.recipe.yaml"),
      lantern.replace("1-6 5-1", "1-6 10-14").replaceAll(/\[.*\]/g, "[1 14, 2 13 6, 3 12 6, 4 11, 5 10, 6]"),
    );
    const { stdout } = await run(["chart", "wide.recipe.yaml"], { cwd });
    expect(stdout).toContain("6 shafts for 12 weave the same squares: the right half mirrors the left");
  });
});

it("drawcord chart frames a picture in a border that turns its corners", async () => {
  writeFileSync(join(cwd, "line.txt"), "##\n#.");
  const { picture } = await json("moth.txt", "--border", "line.txt");
  expect(picture).toHaveLength(5 + 4);
  expect(picture[0]).toBe(picture.at(-1));
  const { stderr } = await run(["chart", "lantern.recipe.yaml", "--border", "line.txt"], { cwd });
  expect(stderr).toContain("--border goes with a picture");
});
