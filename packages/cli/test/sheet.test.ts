import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { byTag, pageOf, tableOf, textOf } from "../../sheet/test/read-back.js";
import { run } from "./run.js";

const recipe = (name: string) => join(import.meta.dirname, `../../../shared/recipes/${name}.recipe.yaml`);
const least = `recipe: 1
title: "../../<b>Runner</b>"
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X 1-3 2 1 X }
lifts: { picks: 4, rows: [1, 2, 1 3, none] }
`;

/** A folder with the least recipe in it, and a call of the command there. */
function atWork() {
  const cwd = folder();
  writeFileSync(join(cwd, "least.recipe.yaml"), least);
  return { cwd, sheet: (...argv: string[]) => run(["sheet", "least.recipe.yaml", ...argv], { cwd }) };
}

const files = (cwd: string) =>
  readdirSync(cwd)
    .filter((name) => name !== "least.recipe.yaml")
    .sort();

/**
 * Whether a cell says a measure: as it is, or a short length finer than the plan, or the whole gram beside it, since a plan
 * has a weight rounded once before it is rounded to be said.
 */
function isRounded(cell: string, measure: string): boolean {
  if (cell === measure) return true;
  const number = (text: string, unit: string) => new RegExp(`^([\\d.]+) ${unit}$`).exec(text)?.[1];
  const [fine, whole] = [number(cell, "m"), number(measure, "m")];
  if (fine !== undefined && whole !== undefined) return Math.round(Number(fine)) === Number(whole);
  const setts = [number(cell, "per cm"), number(measure, "per cm")].map(Number);
  if (Math.abs(setts[0]! - setts[1]!) < 0.11) return true;
  const [said, told] = [number(cell, "g"), number(measure, "g")];
  return said !== undefined && told !== undefined && Number(told) - Number(said) === 1;
}

describe("drawcord sheet", () => {
  it.each([
    ["least.html", "<!doctype html>"],
    ["least.pdf", "%PDF-1.7"],
    ["least.md", "# \\../../\\<b\\>Runner"],
  ])("writes %s by its ending", async (name, begins) => {
    const { cwd, sheet } = atWork();
    const { status, stdout, stderr } = await sheet("-o", name);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toContain(`${name} was written`);
    expect(readFileSync(join(cwd, name), "latin1").startsWith(begins)).toBe(true);
  });

  it.each(["faulty-runner", "seasons"])("says of the %s what check says on its last line", async (name) => {
    const { cwd } = atWork();
    const said = (await run(["check", recipe(name)], { cwd })).stdout.trimEnd().split("\n").at(-1)!;
    await run(["sheet", recipe(name), "-o", "s.html", "--part", "findings", "--part", "cautions"], { cwd });
    const text = textOf(pageOf(readFileSync(join(cwd, "s.html"), "utf8"))).replaceAll(/\s+/g, " ");
    expect(text.split(said).length).toBe(3);
  });

  it("names the letters that its fonts lack, and that HTML keeps", async () => {
    const { cwd } = atWork();
    const stdin = least.replace("<b>Runner</b>", "Żubr мотылёк ψ שלום مرحبا 🦋👩🏽‍🌾 織 工 織");
    for (const name of ["a.pdf", "a.png"]) {
      const { status, stderr } = await run(["sheet", "-", "-o", name, "--part", "chart"], { cwd, stdin });
      expect({ status, stderr }).toEqual({
        status: 0,
        stderr: `${name}: its fonts have no 織 工; an empty box stands for each; .html, .svg and .md keep them\n`,
      });
    }
    expect((await run(["sheet", "-", "-o", "a.html"], { cwd, stdin })).stderr).toBe("");
  });

  it("writes one part, or a file a part, as a picture", async () => {
    const { cwd, sheet } = atWork();
    expect((await sheet("-o", "chart.svg", "--part", "chart")).status).toBe(0);
    expect((await sheet("-o", "two.png", "--part", "chart", "--part", "corner")).status).toBe(0);
    expect(files(cwd)).toEqual(["chart.svg", "two-chart.png", "two-corner.png"]);
    expect(readFileSync(join(cwd, "chart.svg"), "utf8")).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
    expect(readFileSync(join(cwd, "two-chart.png")).subarray(1, 4).toString()).toBe("PNG");
  });

  // 14 threads a cm are 14 x 2.54 = 35.56 an inch; 200 mm are 200 / 25.4 = 7.874 inches, 63 eighths.
  it.each([
    ["metric", "14 per cm", "20 cm"],
    ["imperial", "35.6 per inch", "7 7/8 in"],
    ["both", "14 per cm (35.6 per inch)", "20 cm (7 7/8 in)"],
  ])("prints %s measures", async (units, sett, width) => {
    const cwd = folder();
    await run(["sheet", recipe("band"), "-o", "a.html", "--part", "project", "--units", units], { cwd });
    const page = pageOf(readFileSync(join(cwd, "a.html"), "utf8"));
    const of = (id: string) =>
      Object.fromEntries(tableOf(page, id).map((row) => [row["What"], row["How much"]]));
    expect(of("sizes")["Sett"]).toBe(sett);
    expect(of("sizes")["Width in the reed"]).toBe(width);
  });

  it.each([
    ["a4", "595.28 841.89", "size:a4"],
    ["letter", "612 792", "size:letter"],
  ])("prints on %s, from a browser too", async (paper, points, size) => {
    const { cwd, sheet } = atWork();
    for (const name of ["a.pdf", "a.html"]) await sheet("-o", name, "--part", "chart", "--paper", paper);
    const [, width, height] = /MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(
      readFileSync(join(cwd, "a.pdf"), "latin1"),
    )!;
    expect(`${Number(Number(width).toFixed(2))} ${Number(Number(height).toFixed(2))}`).toBe(points);
    expect(readFileSync(join(cwd, "a.html"), "utf8")).toContain(size);
  });

  it("puts the pictures of Markdown beside it", async () => {
    const { cwd, sheet } = atWork();
    await sheet("-o", "least.md");
    const page = readFileSync(join(cwd, "least.md"), "utf8");
    const pictures = [...page.matchAll(/\]\(<([^>]+)>\)/g)].map(([, name]) => name!);
    expect(pictures.length).toBeGreaterThan(4);
    expect(files(cwd)).toEqual(["least.md", ...pictures].sort());
  });

  it.each([
    ["runner", (text: string) => text],
    ["napkin", (text: string) => text],
    ["band", (text: string) => text],
    [
      "band in a reed that does not go with its sett",
      (text: string) => text.replace("sett: 14", "sett: 12.3").replace(/^ +sley: 2\n/m, ""),
    ],
  ])(
    "prints every number of the plan of the %s, and works out those that a formula gave",
    async (name, change) => {
      const cwd = folder();
      const stdin = change(readFileSync(recipe(name.split(" ")[0]!), "utf8"));
      const parts = ["project", "ground", "working"].flatMap((part) => ["--part", part]);
      await run(["sheet", "-", "-o", "a.html", ...parts], { cwd, stdin });
      const page = pageOf(readFileSync(join(cwd, "a.html"), "utf8"));
      const plan = JSON.parse((await run(["plan", "-", "--format", "json"], { stdin })).stdout);
      const { assumed, loom, reed, ...rest } = plan;
      const pairsOf = (id: string) =>
        Object.fromEntries(tableOf(page, id).map((row) => [row["What"], row["How much"]]));

      const [share] = saidIn(rest.firmness.share);
      const named = {
        Ends: rest.ends,
        Units: rest.units,
        Lingos: rest.lingos,
        "Width of the dents used": reed.width,
        "Width in the reed": rest.widthInReed,
        "Width on the loom": rest.clothWidth,
        "Finished width": rest.finishedWidth,
        "Picks in a piece": rest.picks,
        "Cloth woven for a piece": rest.clothLength,
        "Finished length of a piece": rest.finishedLength,
        "Warp of a piece": rest.warpOfPiece,
        "Length of the warp": rest.warpLength,
        Pieces: rest.pieces,
        "Warp left over": rest.leftOver,
        "Weight of the finished cloth": rest.clothWeight,
      };
      const numbers = pairsOf("project-numbers");
      expect(numbers).toMatchObject({
        ...Object.fromEntries(Object.entries(named).map(([what, measure]) => [what, saidIn(measure)[0]])),
        "Sett as a share of the closest": `${share}: ${rest.firmness.words}`,
        Reed: reed.count,
        Sley: reed.sley,
        "Dents used": `${reed.dents}`,
        "Ends in the dents": reed.ends,
      });
      // A plan has it rounded once before, to two decimals.
      const closest = Number.parseFloat(numbers["Closest sett in the ground weave"]!);
      expect(Math.abs(closest - rest.firmness.closest.value)).toBeLessThan(0.0551);
      const harness = textOf(page);
      expect(harness).toContain(`${loom.needs.lingos} lingos`);
      expect(harness).toContain(`${loom.needs.treadles} treadles and ${loom.needs.ties} ties`);
      const yarns = tableOf(page, "materials");
      for (const yarn of [{ name: "warp", ...rest.warpYarn }, ...rest.weftYarn]) {
        const row = yarns.find((one) => one["Yarn"] === yarn.name)!;
        const [length, weight] = saidIn([yarn.length, yarn.mass]);
        expect(row["Length"]).toBe(length);
        expect(isRounded(row["Weight"]!, weight!)).toBe(true);
      }
      for (const { packages, yarns: alike } of rest.buy) {
        const row = yarns.find((one) => one["Yarn"] === alike[0])!;
        expect(row["To buy"]).toMatch(new RegExp(`^${packages} of `));
      }

      // Whatever else a plan measures stands in one of the tables. How far a reed is off is said as above or below, if it is.
      const cells = ["given", "project-numbers", "materials"].flatMap((id) =>
        tableOf(page, id).flatMap((row) =>
          Object.values(row).flatMap((cell) => cell.split(/: |, | above | below /)),
        ),
      );
      // What is bought, and what each piece takes, is said in the cells "To buy" and in a part of its own.
      const { buy: _, woven: __, ...measured } = rest;
      const measures = saidIn([measured, reed]).flatMap((one) =>
        one === "0 %" ? [] : [one.replace(/^-/, "")],
      );
      expect(measures.length).toBeGreaterThan(20);
      expect(measures.filter((measure) => !cells.some((cell) => isRounded(cell, measure)))).toEqual([]);
      const said = textOf(page);
      for (const { meaning, value, unit, why } of assumed) {
        expect(said).toContain(`${meaning}, ${asSaid([value, unit].join(" ").trim())} (${why})`);
      }

      const working = byTag(page, "section").find(({ attrs }) =>
        attrs.some(({ value }) => value === "working"),
      )!;
      const results = byTag(working, "strong").map(textOf);
      const { ends, units, lingos, sett, picks, pieces, weftYarn, ...worked } = measured;
      const lengths = weftYarn.map(({ length, mass }: Readonly<Record<string, unknown>>) => [length, mass]);
      for (const measure of measuresIn([worked, lengths])) {
        expect(
          results.some((result) => isWorkedOut(result, measure)),
          measure,
        ).toBe(true);
      }
    },
  );
});

/** The measures of a JSON value as a weaver says them: 5133 mm as 5.13 m, 270 mm as 27 cm. */
function saidIn(json: unknown): string[] {
  return measuresIn(json).map(asSaid);
}

/** Whether the result of a working, to five figures at the most, is what a plan measures, rounded as plans are. */
function isWorkedOut(result: string, measure: string): boolean {
  const inMm = { mm: 1, cm: 10, m: 1000 } as Readonly<Record<string, number>>;
  const read = (text: string) => {
    const [, number, unit = ""] = /^(-?[\d.]+) ?([^,]*)/.exec(text)!;
    return { value: Number(number) * (inMm[unit] ?? 1), unit: unit in inMm ? "mm" : unit, number: number! };
  };
  const [end] = result.split(", said as ");
  const [found, wanted] = [read(end!.split(" = ").at(-1)!), read(measure)];
  const decimals = wanted.number.split(".")[1]?.length ?? 0;
  const half = (0.5 * 10 ** -decimals * wanted.value) / (Number(wanted.number) || 1);
  const near = Math.abs(found.value - wanted.value) <= half * 1.001 + wanted.value * 5e-5;
  return near && found.unit === wanted.unit;
}

function asSaid(measure: string): string {
  const [, number, unit = ""] = /^(-?[\d.]+) ?(.*)$/.exec(measure)!;
  const value = Number(number);
  // A half goes up, as a pocket calculator's user rounds.
  const to = (decimals: number, by = 1) =>
    `${Math.floor((value / by) * 10 ** decimals + 0.5 + 1e-9) / 10 ** decimals}`;
  if (unit === "mm" && value >= 1000) {
    return value >= 100_000 ? `${Math.round(value / 1000)} m` : `${(value / 1000).toFixed(2)} m`;
  }
  if (unit === "mm") return value < 10 ? `${to(1)} mm` : `${to(1, 10)} cm`;
  if (unit === "g" && value >= 1000) return `${(value / 1000).toFixed(2)} kg`;
  if (unit === "g") return `${to(value < 10 ? 1 : 0)} g`;
  if (unit === "per cm" || unit === "%") return `${to(1)} ${unit}`;
  return unit === "g/m²" ? `${to(0)} ${unit}` : measure;
}

/** Every `{ value, unit }` of a JSON value, however deep, as a sheet prints it. */
function measuresIn(json: unknown): string[] {
  if (typeof json !== "object" || json === null) return [];
  if ("value" in json && "unit" in json)
    return [
      `${json.value} ${json.unit}`.trim().replace(/\/m2$/, "/m²"),
      ...Object.values(json).flatMap(measuresIn),
    ];
  return Object.values(json).flatMap(measuresIn);
}

describe("what cannot be", () => {
  it.each([
    ["no file named", [], "drawcord sheet: name the file to write, as in -o runner.pdf"],
    [
      "a format that there is not",
      ["-o", "a.docx"],
      "a.docx has the ending .docx; a sheet is written as .html, .pdf, .svg, .png, .md",
    ],
    ["no ending", ["-o", "sheet"], "sheet has no ending; a sheet is written as .html, .pdf, .svg, .png, .md"],
    [
      "a part that there is not",
      ["-o", "a.pdf", "--part", "lift"],
      'drawcord sheet: --part takes one of cloth, project, warping, threading, ground, chart, lifts, cautions, corner, sections, sticks, pick-up, working, findings, glossary, not "lift"; did you mean "lifts"?',
    ],
    [
      "a folder that there is not",
      ["-o", "no/a.html"],
      "no/a.html: there is no such folder; nothing was written",
    ],
    [
      "paper of no such size",
      ["-o", "a.pdf", "--paper", "a9"],
      'drawcord sheet: --paper takes one of a4, letter, not "a9"',
    ],
  ])("%s is told in a sentence, and nothing is written", async (_, argv, sentence) => {
    const { cwd, sheet } = atWork();
    const { status, stdout, stderr } = await sheet(...argv);
    expect(stderr.split("\n")[0]).toContain(sentence);
    expect({ status, stdout, files: files(cwd) }).toEqual({ status: 2, stdout: "", files: [] });
  });

  it("an existing file is left alone unless told otherwise, and so are all that go with it", async () => {
    const { cwd, sheet } = atWork();
    writeFileSync(join(cwd, "two-corner.svg"), "mine");
    const argv = ["-o", "two.svg", "--part", "chart", "--part", "corner"];
    const { status, stderr } = await sheet(...argv);
    expect(status).toBe(2);
    expect(stderr).toContain("two-corner.svg is there already; --force replaces it; nothing was written");
    expect(files(cwd)).toEqual(["two-corner.svg"]);
    expect((await sheet(...argv, "--force")).status).toBe(0);
    expect(readFileSync(join(cwd, "two-corner.svg"), "utf8")).not.toBe("mine");
  });

  it("a piece too long for any paper", async () => {
    const { cwd } = atWork();
    const long = least.replace("[1, 2, 1 3, none]", "[1 *2000]");
    const { status, stderr } = await run(["sheet", "-", "-o", "a.pdf"], { cwd, stdin: long });
    expect(status).toBe(2);
    expect(stderr).toBe(
      "standard input: a piece of 28 ends and 8000 picks is 285 times as long one way as the other and fits no paper; a sheet shows up to 200 times\n",
    );
  });

  it("a colour that is none, and a project whose numbers cannot be", async () => {
    const { cwd } = atWork();
    const wrong = `${least}yarns: { warp: { count: 20/2 Ne, colour: "#12" } }\n`;
    expect((await run(["sheet", "-", "-o", "a.pdf"], { cwd, stdin: wrong })).stderr).toBe(
      'standard input: the colour "#12" is not written #rgb or #rrggbb\n',
    );
  });

  it("a folder that cannot be written to", async () => {
    const { cwd, sheet } = atWork();
    mkdirSync(join(cwd, "a.html"));
    expect((await sheet("-o", "a.html")).stderr).toContain(
      "a.html: this is a folder; name a file in it; nothing was written",
    );
  });
});
