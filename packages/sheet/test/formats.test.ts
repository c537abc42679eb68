import { colourOf, mixed, parseColour, type Rgb } from "@drawcord/draw";
import { fromText } from "@drawcord/grid";
import { partToSvg, pictureToSvg, toHtml, toMarkdown } from "@drawcord/page";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import type { Part } from "../../page/src/document/types.js";
import { textWidth } from "../../page/src/drawing/metrics.js";
import { toSvg } from "../../page/src/drawing/svg.js";
import { setLines, wrap } from "../../page/src/layout/wrap.js";
import { toPng } from "../../page/src/print.js";
import type { Sheet } from "../src/index.js";
import { partNames } from "../src/index.js";
import { blocks } from "../src/pictures/blocks.js";
import { pageOf, textOf } from "./read-back.js";
import { bareRecipe, exampleRecipe, fullSheet, smallDraft } from "./recipes.js";
import { titles } from "./titles.js";

const partOf = (sheet: Sheet, name: string): Part => sheet.parts.find((part) => part.name === name)!;

describe("a sheet", () => {
  it("has its parts in one order, each with something in it", () => {
    const { parts } = fullSheet(exampleRecipe("runner"));
    expect(parts.map(({ name }) => name)).toEqual(partNames);
    for (const part of parts) expect(part.blocks.length).toBeGreaterThan(0);
  });

  it("warns of a heavy lift, of unmended errors, and of the wash", () => {
    const faulty = fullSheet(exampleRecipe("faulty-runner"));
    const saidIn = (name: string) => textOf(pageOf(toHtml({ ...faulty, parts: [partOf(faulty, name)] })));
    expect(saidIn("cloth")).toMatch(/The recipe has \d+ errors?\. Do not wind the warp until/);
    expect(saidIn("ground")).toMatch(/The heaviest lift is row \d+: \d+ units at once, [\d.]+ kg of lingos/);
    expect(saidIn("cautions")).toContain("weave a sample, wash it");
  });

  it("of the runner bears a clean bill, and names each rule that had no limit to go by", () => {
    const sheet = fullSheet(exampleRecipe("runner"));
    const said = textOf(pageOf(toHtml({ ...sheet, parts: [partOf(sheet, "findings")] })));
    expect(said).toMatch(
      /A clean bill: 0 findings, 30 of 32 rules ran; not long-stretch, large-area: no limit is set\./,
    );
  });

  it("of the faulty runner marks every finding that has a place by a shape as well as a colour", () => {
    const findings = partOf(fullSheet(exampleRecipe("faulty-runner")), "findings");
    const list = findings.blocks.find((block) => block.kind === "table" && block.id === "findings-list");
    const picture = findings.blocks.flatMap((block) => (block.kind === "pictures" ? block.pictures : []))[0]!;
    const svg = pictureToSvg(picture);
    expect(list?.kind === "table" && list.rows.length).toBeGreaterThan(0);
    expect(svg).toContain("#d55e00");
    expect(svg).toContain(">1</text>");
    // The triangle of an error: three lines and no curve.
    expect(svg).toMatch(/<path d="M[\d.]+ [\d.]+L[\d.]+ [\d.]+L[\d.]+ [\d.]+z" fill="#d55e00"/);
  });
});

describe("Markdown", () => {
  it.each(Object.entries(titles))("keeps a title with %s", (_, title) => {
    const [first] = toMarkdown(fullSheet(bareRecipe(smallDraft, { title }))).split("\n");
    const read = first!.replace(/^# /, "").replace(/\\([!-/:-@[-`{-~])/g, "$1");
    expect(read).toBe(title);
    expect(first).not.toMatch(/(^|[^\\])[<>[\]*`]/);
  });

  it("holds every row of every table in as many cells as it has columns", () => {
    const sheet = fullSheet(exampleRecipe("band"));
    const lines = toMarkdown(sheet).split("\n");
    const cells = (line: string) => line.replaceAll("\\|", "").split("|").length - 2;
    const tables = sheet.parts.flatMap(({ blocks: list }) => list.filter((block) => block.kind === "table"));
    for (const { caption, columns, rows } of tables.filter(({ rising }) => !rising)) {
      const start = lines.findIndex((line) => line.replaceAll("\\", "") === `*${caption}*`) + 2;
      const body = lines.slice(start, start + rows.length + 2);
      expect(body.map(cells)).toEqual(Array.from({ length: rows.length + 2 }, () => columns.length));
    }
  });
});

describe("a part as SVG", () => {
  it.each(Object.entries(titles))("keeps a title with %s, cut only where its lines end", (_, title) => {
    const sheet = fullSheet(bareRecipe(smallDraft, { title }));
    for (const part of sheet.parts) {
      const svg = partToSvg(sheet, part);
      expect(XMLValidator.validate(svg)).toBe(true);
      const texts = [...svg.matchAll(/<text [^>]*>(.*?)<\/text>/g)].map(([, text]) =>
        text!.replaceAll(/<[^>]*>/g, ""),
      );
      const shown = new XMLParser().parse(`<t>${texts.join("")}</t>`) as { readonly t: string };
      const dense = (text: string) => text.replaceAll(/\s/g, "");
      expect(dense(decoded(shown.t)).startsWith(dense(title))).toBe(true);
    }
  });
});

/** The parser leaves numbered entities as they are. */
function decoded(text: string): string {
  return text.replaceAll("&#39;", "'");
}

describe("the working of a number", () => {
  const sheet = fullSheet(exampleRecipe("runner"), { units: "imperial" });
  const working = { ...sheet, parts: [partOf(sheet, "working")] };

  it("sets the index of a letter small and below the line, a letter as a digit", () => {
    for (const text of [toHtml(working), toMarkdown(working)]) {
      expect(text).toContain("S<sub>m</sub> = ");
      expect(text).toContain("T<sub>1</sub> = ");
    }
    const type = { size: 3, lead: 4, face: "serif", strong: "serif-bold" } as const;
    const words = [{ text: "S" }, { text: "m", low: true }, { text: " = 2" }];
    const [letter, index, rest] = setLines(wrap(words, 100, type), 0, 0, 100, type);
    expect(index!.size).toBeLessThan(letter!.size);
    expect(index!.y).toBeGreaterThan(letter!.y);
    expect(rest).toMatchObject({ size: letter!.size, y: letter!.y });
    expect(rest!.x - index!.x).toBeCloseTo(textWidth("m", index!.size, "serif"), 6);
  });

  it("gives its result in the units of the sheet, and as it is said elsewhere", () => {
    const results = working.parts[0]!.blocks.flatMap((block) =>
      block.kind === "working" ? [block.result] : [],
    );
    expect(results).toContain("10.63 in, said as 10 5/8 in");
  });
});

describe("a PNG", () => {
  it("of a part shows the colours of its threads, in the same dots each time", async () => {
    const sheet = fullSheet(exampleRecipe("band"));
    const svg = partToSvg(sheet, partOf(sheet, "cloth"));
    const [first, second] = [await toPng(svg, { dpi: 150 }), await toPng(svg, { dpi: 150 })];
    expect(Buffer.compare(first, second)).toBe(0);
    const { width, data } = PNG.sync.read(Buffer.from(first));
    expect(width).toBe(Math.round((200 * 150) / 25.4));
    const seen = new Set<string>();
    for (let i = 0; i < data.length; i += 4) seen.add(colourOf([data[i]!, data[i + 1]!, data[i + 2]!]));
    expect(seen).toContain("#efe6d2");
    expect(seen).toContain("#b07d2b");
  });

  it("sets letters of every script that it promises", async () => {
    const blank = await toPng(
      partToSvg({ title: " ", subtitle: "", parts: [] }, { name: "chart", title: " ", blocks: [] }),
      { dpi: 60 },
    );
    for (const title of ["עש", "فراشة", "🦋", "Żubr", "Мотылёк"]) {
      const shown = await toPng(
        partToSvg({ title, subtitle: "", parts: [] }, { name: "chart", title: " ", blocks: [] }),
        { dpi: 60 },
      );
      expect(dark(shown)).toBeGreaterThan(dark(blank) + 8);
    }
  });

  it("sets a line that runs from right to left with its first letter at the right and its last signs at the left", async () => {
    const line = {
      kind: "text",
      y: 12,
      text: `ש${".".repeat(30)}`,
      size: 10,
      face: "serif",
      fill: "#000",
    } as const;
    for (const at of [{ x: 95, anchor: "end" }, { x: 10 }] as const) {
      const svg = toSvg({ width: 100, height: 20, shapes: [{ ...line, ...at }] }, { alt: "a line" });
      const { width, height, data } = PNG.sync.read(Buffer.from(await toPng(svg, { dpi: 60 })));
      // The dots lie on the baseline: above them there is nothing but the letter.
      const columns = Array.from({ length: width }, (_, x) => x).filter((x) =>
        Array.from({ length: Math.floor(height * 0.45) }, (_, y) => data[(y * width + x) * 4]!).some(
          (red) => red < 128,
        ),
      );
      expect(columns.length, `${at.x}`).toBeGreaterThan(2);
      expect(Math.min(...columns) / width, `${at.x}`).toBeGreaterThan(0.75);
    }
  });
});

/** Dots that are more black than white. */
function dark(png: Uint8Array): number {
  const { data } = PNG.sync.read(Buffer.from(png));
  let count = 0;
  for (let i = 0; i < data.length; i += 4) if (data[i]! < 128) count++;
  return count;
}

describe("cloth whose threads run together", () => {
  it("has in each block the mix of its own threads", () => {
    const grid = fromText("#.##\n##..\n.#..\n....");
    const [warp, weft]: [Rgb, Rgb] = [parseColour("white")!, parseColour("indigo")!];
    const cuts = {
      ends: [
        { start: 0, end: 2 },
        { start: 2, end: 4 },
      ],
      picks: [
        { start: 0, end: 2 },
        { start: 2, end: 4 },
      ],
    };
    const shapes = blocks(grid, { warp: [warp, warp, warp, warp], weft: [weft, weft, weft, weft] }, cuts, {
      x: 0,
      y: 0,
      sx: 1,
      sy: 1,
    });
    const colourAt = (x: number, y: number) =>
      shapes.find((shape) => shape.kind === "path" && shape.d.includes(`M${x} ${y}h`)) as
        | { fill: string }
        | undefined;
    const share = (raised: number) =>
      colourOf(
        mixed([
          [warp, raised],
          [weft, 4 - raised],
        ]),
      );
    expect(colourAt(0, 0)?.fill).toBe(share(3));
    expect(colourAt(2, 0)?.fill).toBe(share(2));
    expect(colourAt(0, 2)?.fill).toBe(share(1));
    expect(colourAt(2, 2)?.fill).toBe(share(0));
  });
});
