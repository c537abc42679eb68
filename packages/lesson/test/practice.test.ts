import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { exerciseOf, practicePage, practicePlan, shedOf } from "@drawcord/lesson";
import { toHtml } from "@drawcord/page";
import axe from "axe-core";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { browserForTests } from "../../../tests/scripts/find-browser.mjs";
import { isRight, judgedOf } from "../src/practice/checked.js";
import { exampleRecipe } from "./recipes.js";

const recipe = exampleRecipe("runner");
const plan = practicePlan(recipe);

describe("a shed", () => {
  it("is what the two harnesses make, for every treadle and every set of handles", () => {
    for (const [i, { raise, sink }] of plan.treadles.entries()) {
      for (let bits = 0; bits < 2 ** plan.handles.length; bits++) {
        const handles = plan.handles.filter((_, at) => (bits >> at) & 1);
        const shed = shedOf(plan, i + 1, handles);
        for (const [end, { shaft, unit }] of plan.ends.entries()) {
          const hangsOn = recipe.draft.threading[unit - 1] ?? [];
          const drawn = hangsOn.some((handle) => handles.includes(handle));
          expect(shed[end]!.raised).toBe(raise.includes(shaft) || (drawn && !sink.includes(shaft)));
        }
      }
    }
  });
});

describe("an answer", () => {
  it("counts as the key says, with its unit or without, and a number within what is allowed", () => {
    const wide = { counts: ["24.5 cm"], within: 0.1 };
    expect(["24.5", "24,6 cm", "24.4cm"].map((text) => isRight(wide, text))).toEqual([true, true, true]);
    expect(["24.7", "", "cm"].map((text) => isRight(wide, text))).toEqual([false, false, false]);
    expect(isRight({ counts: ["324 ends"] }, "324")).toBe(true);
    expect(isRight({ counts: ["324 ends"] }, "325 ends")).toBe(false);
    expect(isRight({ counts: ["3", "7"] }, "7")).toBe(true);
    expect(isRight({ counts: ["41 42"] }, "41, 42")).toBe(true);
    expect(isRight({ counts: ["41 42"] }, "41")).toBe(false);
    for (const { answers } of exerciseOf(recipe, { level: 2, tasks: ["numbers", "plan", "cut", "sett"] })
      .sheets[0]!.tasks) {
      for (const answer of answers)
        expect(isRight(judgedOf(answer)!, answer.answer), answer.question).toBe(true);
    }
  });
});

/** What the accessibility checker found; run on the page, so written as text. */
const CHECK = `axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] })
  .then(({ violations, passes }) => ({
    passes: passes.length,
    violations: violations.map(({ id, nodes }) => id + ": " + nodes[0].html),
    beside: document.documentElement.scrollWidth - window.innerWidth,
  }))`;

describe("the page to practise on", () => {
  const folder = mkdtempSync(join(tmpdir(), "drawcord-practice-"));
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: browserForTests(), args: ["--no-sandbox"] });
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  async function open(html: string, width = 900): Promise<Page> {
    const file = join(folder, "page.html");
    writeFileSync(file, html);
    const context = await browser.newContext({ bypassCSP: true, viewport: { width, height: 800 } });
    const page = await context.newPage();
    await page.goto(pathToFileURL(file).href);
    return page;
  }

  const ups = (page: Page): Promise<readonly boolean[]> =>
    page.evaluate(
      `[...document.querySelectorAll("#ends tr")].map((row) => row.children[3].textContent === "up")`,
    );

  it("is worked by keys alone: a treadle and a handle make the shed, and picks are thrown and taken out", async () => {
    const page = await open(practicePage(recipe));
    const handle = plan.handles[0]!;
    await page.focus(`#handles button:first-child`);
    await page.keyboard.press("Space");
    await page.focus(`#treadles button:nth-child(2)`);
    await page.keyboard.press("Enter");
    expect(await ups(page)).toEqual(shedOf(plan, 2, [handle]).map(({ raised }) => raised));
    expect(await page.textContent("#said")).toContain(`Treadle 2, handles ${handle}: ends`);
    await page.focus("#throw");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Enter");
    expect(await page.locator("#cloth rect").count()).toBe(3 * plan.ends.length);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.textContent("#said")).toBe("Pick 2 is taken out.");
    expect(await page.locator("#cloth rect").count()).toBe(2 * plan.ends.length);
    await page.context().close();
  });

  it("judges answers where that is allowed, and else has none in it", async () => {
    const options = { tasks: ["cut"], seed: 4 } as const;
    const { answers } = exerciseOf(recipe, options).sheets[0]!.tasks[0]!;
    const page = await open(practicePage(recipe, { ...options, check: true }));
    for (const [i, { answer }] of answers.entries()) await page.fill(`#task-1-${i}`, i === 0 ? "99" : answer);
    await page.keyboard.press("Enter");
    expect(await page.textContent("#task-1-said")).toBe(
      `${answers.length - 1} of ${answers.length} are right.`,
    );
    expect(await page.textContent("#task-1-0-mark")).toBe("not yet");
    await page.context().close();
    const silent = practicePage(recipe, options);
    expect(silent).toContain('"judged":[]');
    expect(silent).not.toContain('type="submit"');
  });

  it("and a class bound as one page pass the accessibility checker on a phone", async () => {
    const page = await open(toHtml(exerciseOf(recipe, { level: 2, count: 2 }).bound), 390);
    await page.addScriptTag({ content: axe.source });
    const { beside, violations } = (await page.evaluate(CHECK)) as {
      violations: readonly string[];
      beside: number;
    };
    expect(violations).toEqual([]);
    expect(beside).toBeLessThanOrEqual(0);
    await page.context().close();
  });

  it.each([360, 1200])("passes the accessibility checker %i wide, and asks for nothing", async (width) => {
    const page = await open(practicePage(recipe, { tasks: ["plan", "slip", "cut"], check: true }), width);
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.addScriptTag({ content: axe.source });
    const found = (await page.evaluate(CHECK)) as {
      passes: number;
      violations: readonly string[];
      beside: number;
    };
    expect(found.violations).toEqual([]);
    expect(found.passes).toBeGreaterThan(10);
    expect(found.beside).toBeLessThanOrEqual(0);
    expect(asked).toEqual([]);
    await page.context().close();
  });
});
