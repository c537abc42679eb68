import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { soundWif } from "@drawcord/files";
import { partToSvg, toHtml } from "@drawcord/page";
import axe from "axe-core";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { browserForTests } from "../../../tests/scripts/find-browser.mjs";
import { toSvg } from "../../page/src/drawing/svg.js";
import { makeDraftSheet, makeSheet, partNames } from "../src/index.js";
import { bareRecipe, exampleRecipe, exampleSheet, smallDraft } from "./recipes.js";
import { titles } from "./titles.js";

const executablePath = browserForTests();

const widths = { phone: 360, desktop: 1280 } as const;

const towel = new URL("../../../shared/drafts/towel.wif", import.meta.url);

const examples = {
  runner: () => makeSheet(exampleRecipe("runner"), { units: "both" }),
  napkin: () => exampleSheet("napkin"),
  band: () => exampleSheet("band"),
  "faulty runner": () => exampleSheet("faulty-runner"),
  seasons: () => makeSheet(exampleRecipe("seasons"), { parts: partNames }),
  towel: () => makeDraftSheet(soundWif(readFileSync(towel), "towel.wif").draft, { parts: partNames }),
};

const oddities = {
  "bare recipe": () => makeSheet(bareRecipe(smallDraft)),
  "title without a blank": () =>
    makeSheet(bareRecipe(smallDraft, { title: titles["300 characters without a blank"]! })),
};

const cases = [
  ...Object.entries(examples).map(([name, make]) => [name, ["phone", "desktop"], make] as const),
  ...Object.entries(oddities).map(([name, make]) => [name, ["phone"], make] as const),
] as const;

/**
 * What the accessibility checker finds: on a phone in all of the page, on a desktop but for the inside of pictures, which is the
 * same at any width. It is run on the page, so written as text.
 */
const check = (
  width: number,
) => `axe.run(${width === widths.phone ? "document" : '{ exclude: ["svg > *"] }'}, {
  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  resultTypes: ["violations"],
}).then(({ violations, passes }) => ({
  passes: passes.length,
  violations: violations.map(({ id, nodes }) => id + ": " + nodes[0].html),
}))`;

/** Words on one line of which one runs more than a hair over the next; run on the page, so written as text. */
const OVERLAPS = `(() => {
  const boxes = [...document.querySelectorAll("text")].map((text) => {
    const { left, right } = text.getBoundingClientRect();
    return { left, right, base: text.getCTM().f + text.y.baseVal[0].value * text.getCTM().d, said: text.textContent };
  });
  return boxes.flatMap((a) => boxes
    .filter((b) => Math.abs(a.base - b.base) < 0.5 && a.left < b.left && a.right > b.left + 1)
    .map((b) => a.said + " over " + b.said));
})()`;

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
          const found = await page.evaluate<Found>(check(widths[device]));
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

  it.each(["runner", "napkin"] as const)(
    "no words of a part of the %s as SVG run over those beside them, whatever fonts there are",
    async (name) => {
      const sheet = exampleSheet(name);
      const page = await browser.newPage();
      for (const part of sheet.parts) {
        await page.setContent(partToSvg(sheet, part));
        expect(await page.evaluate<readonly string[]>(OVERLAPS), part.name).toEqual([]);
      }
      await page.close();
    },
    120_000,
  );

  it("a line of SVG that runs from right to left begins at the right and ends at the left", async () => {
    const page = await browser.newPage();
    const line = {
      kind: "text",
      y: 12,
      text: "ראנר (עש) 12!",
      size: 10,
      face: "serif",
      fill: "#000",
    } as const;
    for (const at of [{ x: 95, anchor: "end" }, { x: 10 }] as const) {
      await page.setContent(
        toSvg({ width: 100, height: 20, shapes: [{ ...line, ...at }] }, { alt: "a line" }),
      );
      const [first, last, left, right] = await page.evaluate<[number, number, number, number]>(
        `(() => { const text = document.querySelector("text"), box = text.getBBox();
          const middle = (i) => { const { x, width } = text.getExtentOfChar(i); return x + width / 2; };
          return [middle(0), middle(text.getNumberOfChars() - 1), box.x, box.x + box.width]; })()`,
      );
      expect(last).toBeLessThan(left + 5);
      expect(first).toBeGreaterThan(right - 8);
      expect("anchor" in at ? right : left).toBeCloseTo(at.x, 1);
    }
    await page.close();
  });

  it("the checker finds the fault that is put in: a picture without its text", async () => {
    const html = toHtml(oddities["bare recipe"]()).replaceAll(/<title id="[^"]*">[^<]*<\/title>/g, "");
    await opened(html, async (page) => {
      const { violations } = await page.evaluate<Found>(check(widths.phone));
      expect(violations.join()).toContain("svg-img-alt");
    });
  });
});
