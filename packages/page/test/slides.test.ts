import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Document, toSlides } from "@drawcord/page";
import axe from "axe-core";
import { type Browser, chromium } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { browserForTests } from "../../../tests/scripts/find-browser.mjs";

const picture = {
  id: "square",
  caption: "A square",
  alt: "A filled square.",
  drawing: {
    width: 20,
    height: 20,
    shapes: [{ kind: "rect", x: 0, y: 0, width: 20, height: 20, fill: "#000000" }],
  },
} as const;

const document: Document = {
  title: "Lesson",
  subtitle: "of a morning",
  parts: [
    {
      name: "one",
      title: "One part",
      blocks: [
        { kind: "paragraph", text: "First." },
        { kind: "pictures", pictures: [picture, { ...picture, id: "again" }] },
        {
          kind: "table",
          id: "rows",
          caption: "Rows",
          columns: [{ title: "Row", kind: "head" }, { title: "What" }],
          rows: Array.from({ length: 12 }, (_, i) => [`${i + 1}`, `what ${i + 1}`]),
        },
      ],
    },
  ],
};

describe("slides", () => {
  const folder = mkdtempSync(join(tmpdir(), "drawcord-slides-"));
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: browserForTests(), args: ["--no-sandbox"] });
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  it("are one thing each, and step with the keys; the page passes the accessibility checker", async () => {
    const file = join(folder, "slides.html");
    writeFileSync(file, toSlides(document));
    const context = await browser.newContext({ bypassCSP: true, viewport: { width: 1280, height: 720 } });
    const page = await context.newPage();
    await page.goto(pathToFileURL(file).href);
    const seen = () => page.textContent(".slide:not([hidden])");
    // Title, text, two pictures, twelve rows on two slides.
    expect(await page.textContent("#where")).toBe("1 of 6");
    expect(await seen()).toContain("of a morning");
    await page.keyboard.press("ArrowRight");
    expect(await seen()).toContain("First.");
    for (const key of ["ArrowDown", "PageDown", " "]) await page.keyboard.press(key);
    expect(await page.textContent("#where")).toBe("5 of 6");
    expect(await seen()).toContain("what 8");
    expect(await seen()).not.toContain("what 9");
    await page.keyboard.press("End");
    await page.keyboard.press("ArrowRight");
    expect(await seen()).toContain("what 12");
    await page.click("#back");
    expect(await page.textContent("#where")).toBe("5 of 6");
    await page.keyboard.press("Home");
    expect(await page.evaluate("document.querySelectorAll('.slide:not([hidden])').length")).toBe(1);
    await page.addScriptTag({ content: axe.source });
    const found = await page.evaluate(
      `axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }).then(({ violations }) => violations.map(({ id, nodes }) => id + ": " + nodes[0].html))`,
    );
    expect(found).toEqual([]);
    await context.close();
  });

  it("let nothing in but their own script, and mark nothing up that a text says", () => {
    const html = toSlides({ ...document, title: "<script>alert(1)</script>" });
    expect(html).not.toContain("<script>alert");
    expect(html).toMatch(/script-src 'sha256-[^']+'/);
    expect(html).not.toMatch(/https?:\/\/(?!www\.w3\.org)/);
  });
});
