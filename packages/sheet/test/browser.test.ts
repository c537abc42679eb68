import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import axe from "axe-core";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { exercise, makeSheet, toHtml } from "../src/index.js";
import { bareRecipe, exampleRecipe, smallDraft } from "./recipes.js";
import { titles } from "./titles.js";

const executablePath = process.env["DRAWCORD_BROWSER"] ?? "/usr/bin/chromium";
if (!existsSync(executablePath)) {
  throw new Error(`no browser at ${executablePath}: run "npm run browser", or name one in DRAWCORD_BROWSER`);
}

const widths = { phone: 360, desktop: 1280 } as const;

const examples = {
  runner: () => makeSheet(exampleRecipe("runner"), { units: "both" }),
  napkin: () => makeSheet(exampleRecipe("napkin")),
  band: () => makeSheet(exampleRecipe("band")),
  "faulty runner": () => makeSheet(exampleRecipe("faulty-runner")),
};

const oddities = {
  exercise: () => exercise(makeSheet(exampleRecipe("band"))),
  "bare recipe": () => makeSheet(bareRecipe(smallDraft)),
  "title without a blank": () =>
    makeSheet(bareRecipe(smallDraft, { title: titles["300 characters without a blank"]! })),
};

const cases = [
  ...Object.entries(examples).map(([name, make]) => [name, ["phone", "desktop"], make] as const),
  ...Object.entries(oddities).map(([name, make]) => [name, ["phone"], make] as const),
] as const;

/** What the accessibility checker found; run on the page, so written as text. */
const CHECK = `axe.run(document, {
  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  resultTypes: ["violations"],
}).then(({ violations, passes }) => ({
  passes: passes.length,
  violations: violations.map(({ id, nodes }) => id + ": " + nodes[0].html),
}))`;

interface Found {
  readonly passes: number;
  readonly violations: readonly string[];
}

describe("in a browser", () => {
  let browser: Browser;
  const folder = mkdtempSync(join(tmpdir(), "drawcord-sheet-"));
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  async function opened(html: string, act: (page: Page, requests: string[]) => Promise<void>) {
    const file = join(folder, "sheet.html");
    writeFileSync(file, html);
    const context = await browser.newContext({
      viewport: { width: widths.phone, height: 800 },
      bypassCSP: true,
    });
    try {
      const page = await context.newPage();
      const requests: string[] = [];
      page.on("request", (request) => requests.push(request.url()));
      await page.goto(pathToFileURL(file).href);
      await page.evaluate(axe.source);
      await act(page, requests);
    } finally {
      await context.close();
    }
  }

  it.each(cases)(
    "the page of the %s on a %s passes the accessibility checker and asks for nothing",
    async (_, devices, make) => {
      await opened(toHtml(make()), async (page, requests) => {
        for (const device of devices) {
          await page.setViewportSize({ width: widths[device], height: 800 });
          const found = await page.evaluate<Found>(CHECK);
          expect(found.violations, device).toEqual([]);
          expect(found.passes, device).toBeGreaterThan(15);
          const over = await page.evaluate<number>(
            "document.documentElement.scrollWidth - window.innerWidth",
          );
          expect(over, device).toBeLessThanOrEqual(0);
        }
        expect(requests.length).toBe(1);
        expect(requests[0]).toMatch(/^file:.*sheet\.html$/);
      });
    },
    120_000,
  );

  it("the checker finds the fault that is put in: a picture without its text", async () => {
    const html = toHtml(oddities["bare recipe"]()).replaceAll(/<title id="[^"]*">[^<]*<\/title>/g, "");
    await opened(html, async (page) => {
      const { violations } = await page.evaluate<Found>(CHECK);
      expect(violations.join()).toContain("svg-img-alt");
    });
  });
});
