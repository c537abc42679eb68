import fc from "fast-check";
import { getDocument, type PDFDocumentProxy } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { plainText } from "../../page/src/document/text.js";
import { textWidth } from "../../page/src/drawing/metrics.js";
import type { Shape } from "../../page/src/drawing/shape.js";
import { formulaBox } from "../../page/src/formula/boxes.js";
import { formulaText } from "../../page/src/formula/text.js";
import type { TypesetFormula } from "../../page/src/formula/types.js";
import { layDocument } from "../../page/src/layout/document.js";
import { papers } from "../../page/src/print/pdf.js";
import { toPdf } from "../../page/src/print/to-pdf.js";
import { draft } from "../../units/test/arbitraries.js";
import type { Sheet } from "../src/index.js";
import { makeSheet } from "../src/index.js";
import { bareRecipe, examplePdf, exampleRecipe, exampleSheet, smallDraft } from "./recipes.js";
import { titles } from "./titles.js";

/** The text of a PDF, page by page, by a general library; blanks are left out, for they are a matter of taste there. */
async function textOfPdf(bytes: Uint8Array): Promise<string[]> {
  const pdf: PDFDocumentProxy = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    pages.push(items.map((item) => ("str" in item ? item.str : "")).join("\ufffc"));
  }
  await pdf.destroy();
  return pages;
}

const dense = (text: string) => text.replaceAll(/[\s\ufffc]/gu, "");

/** Every text of a sheet that a reader must find on paper. */
function textsOf(sheet: Sheet): string[] {
  return [
    sheet.title,
    sheet.subtitle,
    ...sheet.parts.flatMap(({ title, blocks }) => [
      title,
      ...blocks.flatMap((block) => {
        if (block.kind === "paragraph") return [plainText(block.text)];
        if (block.kind === "table")
          return [
            block.caption,
            ...block.columns.map((one) => one.title),
            ...block.rows.flat().map(plainText),
          ];
        if (block.kind === "pictures") return block.pictures.map(({ caption }) => caption);
        return [block.title, block.result, block.source, ...block.symbols.map(plainText)];
      }),
    ]),
  ];
}

/** Every text inside a drawing. */
function labels(shapes: readonly Shape[]): string[] {
  return shapes.flatMap((shape) =>
    shape.kind === "group" ? labels(shape.shapes) : shape.kind === "text" ? [shape.text] : [],
  );
}

describe("a PDF", () => {
  it.each([
    ["runner", "a4"],
    ["napkin", "a4"],
    ["band", "letter"],
    ["faulty-runner", "a4"],
  ] as const)(
    "of the %s on %s holds every text, every number and every label of its sheet as text",
    async (name, paper) => {
      const sheet = exampleSheet(name);
      const pages = await textOfPdf(await examplePdf(name, paper));
      const whole = dense(pages.join(""));
      expect(textsOf(sheet).filter((text) => !whole.includes(dense(text)))).toEqual([]);
      const blocks = sheet.parts.flatMap((part) => part.blocks);
      const formulas = blocks.flatMap((block) =>
        block.kind === "working" ? [block.formula, block.substitution] : [],
      );
      // A formula is set in type or, where it is too long for that, on a line.
      const set = (formula: TypesetFormula) => labels(formulaBox(formula, 4).shapes).join("");
      expect(
        formulas.filter((one) => ![set(one), formulaText(one)].some((text) => whole.includes(dense(text)))),
      ).toEqual([]);
      const items = new Set(pages.join("\ufffc").split("\ufffc").map(dense));
      const drawn = blocks.flatMap((block) =>
        block.kind === "pictures" ? block.pictures.flatMap((one) => labels(one.drawing.shapes)) : [],
      );
      expect(drawn.length).toBeGreaterThan(50);
      const isThere = (label: string) => (/\s/.test(label) ? whole.includes(dense(label)) : items.has(label));
      expect(drawn.filter((label) => !isThere(label))).toEqual([]);
    },
    120_000,
  );

  it("is the same byte for byte for the same recipe", async () => {
    const again = await toPdf(makeSheet(exampleRecipe("band")), "letter");
    expect(Buffer.compare(await examplePdf("band", "letter"), again)).toBe(0);
  });

  it.each(Object.entries(titles))(
    "holds a title with %s, set in letters that its fonts have",
    async (name, title) => {
      const bytes = await toPdf(makeSheet(bareRecipe(smallDraft, { title })));
      const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
      const { info } = (await pdf.getMetadata()) as { readonly info: { readonly Title?: string } };
      await pdf.destroy();
      expect(info.Title).toBe(title);
      const [first] = await textOfPdf(bytes);
      if (name === "both directions") {
        // The order in which such a line is copied is the reader's own; its letters are all there.
        const sorted = (text: string) => [...dense(text).normalize("NFKC")].sort().join("");
        const letters = sorted(first!);
        for (const letter of sorted(title)) expect(letters).toContain(letter);
      } else {
        expect(dense(first!).normalize("NFKC")).toContain(dense(title).normalize("NFKC"));
      }
    },
  );

  it("numbers its pages, and heads all but the first with sheet and part", async () => {
    const pages = await textOfPdf(await examplePdf("runner", "a4"));
    expect(pages.length).toBeGreaterThan(6);
    expect(pages.length).toBeLessThanOrEqual(8);
    for (const [i, page] of pages.entries()) {
      expect(dense(page)).toContain(`${i + 1}/${pages.length}`);
      if (i > 0) expect(dense(page)).toContain(dense("Moth and lantern runner"));
    }
  });

  it("of a piece of 1000 ends and 2000 picks takes a few megabytes", async () => {
    const shafts = 40;
    const big = {
      ...smallDraft,
      threading: Array.from({ length: 250 }, (_, unit) => [((unit * 7) % shafts) + 1]),
      lifts: Array.from({ length: 500 }, (_, row) =>
        Array.from({ length: shafts }, (_, i) => i + 1).filter(
          (shaft) => (shaft * 13 + row * row * 5 + ((row * shaft) >> 3)) % 3 === 0,
        ),
      ),
    };
    const bytes = await toPdf(makeSheet(bareRecipe(big)));
    expect(bytes.length).toBeLessThan(3_000_000);
    expect(bytes.length).toBeGreaterThan(50_000);
  });
});

/** The box that shapes fill, in mm. */
function bounds(
  shapes: readonly Shape[],
  x = 0,
  y = 0,
  scale = 1,
): { right: number; bottom: number; left: number; top: number } {
  const box = {
    left: Number.POSITIVE_INFINITY,
    top: Number.POSITIVE_INFINITY,
    right: Number.NEGATIVE_INFINITY,
    bottom: Number.NEGATIVE_INFINITY,
  };
  const add = (left: number, top: number, right: number, bottom: number) => {
    box.left = Math.min(box.left, x + left * scale);
    box.top = Math.min(box.top, y + top * scale);
    box.right = Math.max(box.right, x + right * scale);
    box.bottom = Math.max(box.bottom, y + bottom * scale);
  };
  for (const shape of shapes) {
    if (shape.kind === "rect") add(shape.x, shape.y, shape.x + shape.width, shape.y + shape.height);
    else if (shape.kind === "text") {
      const width = textWidth(shape.text, shape.size, shape.face);
      const left = shape.x - (shape.anchor === "end" ? width : shape.anchor === "middle" ? width / 2 : 0);
      add(left, shape.y - shape.size * 0.7, left + width, shape.y);
    } else if (shape.kind === "group") {
      const inner = bounds(
        shape.shapes,
        x + shape.x * scale,
        y + shape.y * scale,
        scale * (shape.scale ?? 1),
      );
      if (Number.isFinite(inner.left)) {
        box.left = Math.min(box.left, inner.left);
        box.top = Math.min(box.top, inner.top);
        box.right = Math.max(box.right, inner.right);
        box.bottom = Math.max(box.bottom, inner.bottom);
      }
    }
  }
  return box;
}

describe("the parts on their pages", () => {
  const height = papers.a4.height - 42;

  it.each(["runner", "napkin", "band", "faulty-runner", "seasons"] as const)(
    "of the %s: each begins once, in order, and no page but the last is nearly empty",
    (name) => {
      const sheet = exampleSheet(name);
      const { pages } = layDocument(sheet, 170, height);
      expect(pages.flatMap(({ begins }) => begins)).toEqual(sheet.parts.map(({ title }) => title));
      for (const { filled } of pages.slice(0, -1)) expect(filled).toBeGreaterThan(0.4 * height);
    },
  );

  it("of the runner take eight pages at the most, none of them under a third full but the last", () => {
    for (const paper of ["a4", "letter"] as const) {
      const height = papers[paper].height - 42;
      const { pages } = layDocument(exampleSheet("runner"), 170, height);
      expect(pages.length).toBeLessThanOrEqual(8);
      for (const { filled } of pages.slice(0, -1)) expect(filled).toBeGreaterThan(height / 3);
    }
  });
});

describe("a page", () => {
  it.each(["a4", "letter"] as const)(
    "of %s holds all that is set on it: nothing is cut off, nothing runs over its edge",
    (paper) => {
      const height = papers[paper].height - 42;
      const title = fc.constantFrom(...Object.values(titles));
      fc.assert(
        fc.property(draft(), title, (from, name) => {
          const made = makeSheet(bareRecipe(from, { title: name, notes: name }));
          for (const { shapes } of layDocument(made, 170, height).pages) {
            const { left, top, right, bottom } = bounds(shapes);
            expect(left).toBeGreaterThan(-0.5);
            expect(top).toBeGreaterThan(-0.5);
            expect(right).toBeLessThan(170.5);
            expect(bottom).toBeLessThan(height + 0.5);
          }
        }),
        { numRuns: 40 },
      );
    },
  );

  it.each(["runner", "napkin", "band", "faulty-runner"] as const)("of the %s is within its edges", (name) => {
    const sheet = makeSheet(exampleRecipe(name), { units: "both" });
    for (const paper of ["a4", "letter"] as const) {
      const height = papers[paper].height - 42;
      const { pages } = layDocument(sheet, 170, height);
      for (const { shapes } of pages) {
        const { right, bottom } = bounds(shapes);
        expect(right).toBeLessThan(170.5);
        expect(bottom).toBeLessThan(height + 0.5);
      }
    }
  });
});
