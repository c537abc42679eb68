import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import axe from "axe-core";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { browserForTests } from "./scripts/find-browser.mjs";
import { serve } from "./scripts/serve.mjs";
import { root } from "./support/packages.js";

const site = join(root, "docs/.vitepress/dist");
if (!existsSync(join(site, "index.html")))
  throw new Error("these tests look at the built site: npm run site");

/** A page of every kind; `npm run site:look` looks at all there are. */
const SAMPLE = ["index.html", "guide/class.html", "rules/open-cut.html", "formulas/warp-length.html"];

const pages =
  process.env["SITE_LOOK"] === "all"
    ? readdirSync(site, { recursive: true, encoding: "utf8" }).filter(
        (file) => file.endsWith(".html") && !file.startsWith("reference/"),
      )
    : SAMPLE;

/** A phone, a tablet and a desk. */
const WIDTHS = [390, 820, 1280] as const;

describe("every page, on a phone, a tablet and a desk", () => {
  let served: Awaited<ReturnType<typeof serve>>;
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    served = await serve(site, "/");
    browser = await chromium.launch({ executablePath: browserForTests(), args: ["--no-sandbox"] });
    const context = await browser.newContext({ serviceWorkers: "block", reducedMotion: "reduce" });
    await context.addInitScript(axe.source);
    page = await context.newPage();
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  const faults = async () => {
    const { violations } = await page.evaluate<{ violations: { id: string; nodes: { html: string }[] }[] }>(
      "axe.run(document, { resultTypes: ['violations'], runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'] })",
    );
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html.slice(0, 160)}`);
  };

  it.each(pages)("%s is clean by axe, light and dark, and scrolls no way but down", async (path) => {
    await page.setViewportSize({ width: WIDTHS[0], height: 800 });
    await page.goto(served.url + path);
    if (path === "index.html") await page.locator(".report").waitFor();
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 800 });
      expect(
        await page.evaluate("document.documentElement.scrollWidth"),
        `${width} wide`,
      ).toBeLessThanOrEqual(width);
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme });
        if (path !== "practice.html")
          await page.waitForFunction(
            `document.documentElement.classList.contains("dark") === ${colorScheme === "dark"}`,
          );
        expect(await faults(), `${colorScheme}, ${width} wide`).toEqual([]);
      }
    }
  });
});
