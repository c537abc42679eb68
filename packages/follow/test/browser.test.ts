import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { followPage, followPlan } from "@drawcord/follow";
import { toText } from "@drawcord/grid";
import { expand, parseShafts, type UnitDraft } from "@drawcord/units";
import axe from "axe-core";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { browserForTests } from "../../../tests/scripts/find-browser.mjs";
import { exampleRecipe, smallRecipe } from "./recipes.js";

const executablePath = browserForTests();

/** What stands on the page, as its reader has it; run on the page, so written as text. */
const READ = `(() => {
  const text = (id) => document.getElementById(id).textContent;
  const lines = [...document.querySelectorAll("#moves > div")].map((line) =>
    [line.querySelector("dt").textContent, line.querySelector("dd").textContent]);
  return { row: text("row"), treadle: text("treadle"), weft: text("weft"), moves: Object.fromEntries(lines) };
})()`;

/** So many steps, each read and then gone past by a key; in the page, for a whole cloth key by key from outside takes long. */
const weaveOn = (picks: number) => `Array.from({ length: ${picks} }, (_, pick) => {
  const seen = ${READ};
  const key = [" ", "ArrowRight", "PageDown", "Enter", "ArrowDown"][pick % 5];
  document.activeElement.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  return seen;
})`;

/** One step of the page. */
interface Seen {
  readonly row: string;
  readonly treadle: string;
  readonly weft: string;
  readonly moves: Readonly<Record<string, string>>;
}

/** What the accessibility checker found, and what is too small for a finger; run on the page, so written as text. */
const CHECK = `axe.run(document, {
  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  resultTypes: ["violations"],
}).then(({ violations, passes }) => ({
  passes: passes.length,
  violations: violations.map(({ id, nodes }) => id + ": " + nodes[0].html),
  small: [...document.querySelectorAll("button, select, input")]
    .filter((part) => part.checkVisibility())
    .map((part) => [part.id || part.textContent, (part.closest("label.tick") ?? part).getBoundingClientRect()])
    .filter(([, { width, height }]) => width < 44 || height < 44)
    .map(([name]) => name),
  beside: document.documentElement.scrollWidth - window.innerWidth,
}))`;

interface Found {
  readonly passes: number;
  readonly violations: readonly string[];
  readonly small: readonly string[];
  readonly beside: number;
}

/** The handles that a line of the page names. */
function handlesIn(line = ""): readonly number[] {
  return /\d/.test(line) ? parseShafts(line.replaceAll("–", "-").trim()) : [];
}

/** What a treadle does, as the page says it. */
interface Tie {
  readonly raise: readonly number[];
  readonly sink: readonly number[];
}

/** The cloth that a weaver makes who does what the page says, on a loom threaded as the draft is. */
class Weaver {
  readonly cloth: string[] = [];
  readonly #draft: UnitDraft;
  readonly #shaftOfEnd: readonly number[];
  readonly #unitOfEnd: readonly number[];
  readonly #ties: readonly Tie[];
  #held = new Set<number>();

  constructor(draft: UnitDraft, ties: readonly Tie[]) {
    this.#draft = draft;
    this.#ties = ties;
    const { shaftOfEnd, unitOfEnd } = expand(draft);
    this.#shaftOfEnd = [...shaftOfEnd];
    this.#unitOfEnd = [...unitOfEnd];
  }

  /** Sits down to a loom whose handles are all at rest. */
  sitDown(): void {
    this.#held = new Set();
  }

  weave({ moves, treadle }: Seen): void {
    for (const handle of handlesIn(moves["Let go"])) expect(this.#held.delete(handle)).toBe(true);
    for (const handle of handlesIn(moves["Draw"])) this.#held.add(handle);
    if ("Hold" in moves) this.#held = new Set(handlesIn(moves["Hold"]));
    const { raise, sink } = this.#ties[Number(/\d+/.exec(treadle)?.[0] ?? 0) - 1] ?? { raise: [], sink: [] };
    const raised = this.#shaftOfEnd.map((shaft, end) => {
      if (raise.includes(shaft)) return "#";
      const drawn = this.#draft.threading[this.#unitOfEnd[end]!]?.some((handle) => this.#held.has(handle));
      return drawn && !sink.includes(shaft) ? "#" : ".";
    });
    this.cloth.push(raised.join(""));
  }

  /** The cloth as it is printed, the last pick on top. */
  text(): string {
    return this.cloth.toReversed().join("\n");
  }
}

describe("at the loom", () => {
  let browser: Browser;
  const folder = mkdtempSync(join(tmpdir(), "drawcord-follow-"));
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  const read = (page: Page) => page.evaluate<Seen>(READ);

  async function opened(context: BrowserContext, recipe = smallRecipe): Promise<Page> {
    const file = join(folder, "loom.html");
    writeFileSync(file, followPage(followPlan(recipe)));
    const page = await context.newPage();
    page.on("pageerror", (error) => {
      throw error;
    });
    await page.goto(pathToFileURL(file).href);
    return page;
  }

  /** Closes the page as a hand does: a moment after the last press, by when the browser has written down what it keeps. */
  async function leave(page: Page): Promise<void> {
    await page.waitForTimeout(300);
    await page.close();
  }

  async function atLoom(act: (context: BrowserContext) => Promise<void>, options = {}): Promise<void> {
    const context = await browser.newContext({ viewport: { width: 820, height: 1180 }, ...options });
    try {
      await act(context);
    } finally {
      await context.close();
    }
  }

  /** What the page says of its treadles. */
  async function tiesOn(page: Page) {
    const items = await page.locator("#ties li").allTextContents();
    return items.flatMap((item) => {
      const [, raise = "", sink = ""] =
        /^treadle \d+ (?:raises ([\d ]+))?(?:, )?(?:sinks ([\d ]+))?$/.exec(item) ?? [];
      return item.startsWith("treadle") ? [{ raise: handlesIn(raise), sink: handlesIn(sink) }] : [];
    });
  }

  it.each(["napkin", "band"])(
    "the %s is woven by keys, the page closed and opened in the middle, and it is the same cloth",
    async (name) => {
      const recipe = exampleRecipe(name);
      const { drawdown } = expand(recipe.draft);
      await atLoom(async (context) => {
        let page = await opened(context, recipe);
        const weaver = new Weaver(recipe.draft, await tiesOn(page));
        const half = Math.floor(drawdown.rows / 2) + 3;
        for (const seen of await page.evaluate<readonly Seen[]>(weaveOn(half))) weaver.weave(seen);
        await leave(page);
        page = await opened(context, recipe);
        const rest = drawdown.rows - half;
        for (const seen of await page.evaluate<readonly Seen[]>(weaveOn(rest))) weaver.weave(seen);
        expect(weaver.text()).toBe(toText(drawdown));
        expect(await page.textContent("#row-word")).toBe("The piece is woven");
        await page.keyboard.press("Space");
        expect(await page.textContent("#piece")).toContain("piece 2 of");
        expect((await read(page)).row).toBe("1");
      });
    },
  );

  it("begins the second mat with the first pick, and the last press changes nothing", async () => {
    await atLoom(async (context) => {
      let page = await opened(context);
      const { drawdown } = expand(smallRecipe.draft);
      const weaver = new Weaver(smallRecipe.draft, await tiesOn(page));
      for (const _ of [1, 2]) {
        weaver.sitDown();
        for (let pick = 0; pick < drawdown.rows; pick++) {
          if (pick % 5 === 4) {
            await leave(page);
            page = await opened(context);
          }
          weaver.weave(await read(page));
          await page.keyboard.press("Space");
        }
        await page.keyboard.press("Space");
      }
      expect(weaver.text()).toBe(`${toText(drawdown)}\n${toText(drawdown)}`);
      expect(await page.textContent("#row-word")).toBe("The last row is woven");
      expect(await page.textContent("#far-text")).toBe("3 of 3 rows · 12 of 12 picks · 100 %");
    });
  });

  it("goes back by keys and by touch, by rows with Shift, and a finger's button is not pressed by a pedal", async () => {
    await atLoom(
      async (context) => {
        const page = await opened(context);
        for (const key of ["Space", "Shift+ArrowRight", "Space", "ArrowLeft"]) await page.keyboard.press(key);
        expect(await page.textContent("#far-text")).toContain("4 of 12 picks");
        await page.tap("[data-do=back]");
        await page.keyboard.press("Space");
        expect(await page.textContent("#far-text")).toContain("4 of 12 picks");
        await page.tap("#on");
        expect(await page.textContent("#far-text")).toContain("5 of 12 picks");
        await page.keyboard.press("Shift+PageUp");
        expect(await page.textContent("#far-text")).toContain("4 of 12 picks");
      },
      { hasTouch: true },
    );
  });

  it("goes to a row and a pick, and writes nothing of it into the log", async () => {
    await atLoom(async (context) => {
      const page = await opened(context);
      await page.click("[data-do=go]");
      await page.selectOption("#go-turn", "1");
      await page.fill("#go-row", "2");
      await page.fill("#go-pick", "3");
      await page.click("#go .main");
      expect(await page.textContent("#piece")).toBe("piece 2 of 2");
      expect(await page.textContent("#far-text")).toContain("6 of 12 picks");
      await page.click("[data-do=log]");
      expect(await page.textContent("#log-rows")).toBe("nothing is woven yet");
    });
  });

  it("marks a slip, leads back through the picks to it, and weaves on", async () => {
    await atLoom(async (context) => {
      const page = await opened(context);
      for (let i = 0; i < 6; i++) await page.keyboard.press("Space");
      await page.click("[data-do=slip]");
      await page.fill("#slip-note", "treadle 4 for 3");
      await page.click("#slip .main");
      for (let i = 0; i < 3; i++) await page.keyboard.press("Space");
      await page.click("#out-tool");
      expect(await page.inputValue("#out-row")).toBe("2");
      expect(await page.inputValue("#out-pick")).toBe("2");
      await page.click("#out .main");
      const seen: string[] = [];
      for (let i = 0; i < 4; i++) {
        const { row, treadle } = await read(page);
        seen.push(`${row}: ${treadle}`);
        expect(await page.textContent("#row-word")).toBe("Take out row");
        await page.keyboard.press("Space");
      }
      expect(seen).toEqual(["3: Treadle 1", "2: Treadle 4", "2: Treadle 3", "2: Treadle 2"]);
      expect(await page.textContent("#row-word")).toBe("Row");
      expect((await read(page)).treadle).toBe("Treadle 2");
      await page.click("[data-do=log]");
      const rows = await page.locator("#log-rows tr td:nth-child(3)").allTextContents();
      expect(rows).toEqual(["wove, piece 1 of 2, rows 1 to 3", "took out, piece 1 of 2, rows 2 to 3"]);
      expect(await page.textContent("#log-slips")).toContain("row 2, pick 2 of it: treadle 4 for 3");
      await page.click("#log [type=submit]");
      await page.click("[data-do=slip]");
      await page.getByText("It is put right").click();
      await page.click("[data-do=log]");
      expect(await page.textContent("#log-slips")).toBe("none");
    });
  });

  it("knows several weavers by name, and keeps who wove what over closing", async () => {
    await atLoom(async (context) => {
      let page = await opened(context);
      for (const name of ["Ana", "Bo"]) {
        await page.click("[data-do=weavers]");
        await page.fill("#weaver-new", name);
        await page.click("#weavers .main");
        await page.keyboard.press("Space");
      }
      await leave(page);
      page = await opened(context);
      expect(await page.textContent("#weaver")).toBe("Bo");
      await page.click("[data-do=weavers]");
      await page.getByLabel("Ana").check();
      await page.click("#weavers .main");
      await page.keyboard.press("Space");
      await page.click("[data-do=log]");
      expect(await page.locator("#log-rows td:nth-child(2)").allTextContents()).toEqual(["Ana", "Bo", "Ana"]);
      await page.emulateMedia({ media: "print" });
      expect(await page.locator("#log-rows").isVisible()).toBe(true);
      expect(await page.locator("#stage").isVisible()).toBe(false);
    });
  });

  it("says when the recipe on the warp has changed, and when the browser keeps nothing", async () => {
    await atLoom(async (context) => {
      const [piece] = smallRecipe.pieces;
      let page = await opened(context);
      await page.keyboard.press("Space");
      await leave(page);
      const draft = { ...piece!.draft, lifts: [[2], [2], [3]] };
      page = await opened(context, { ...smallRecipe, pieces: [{ ...piece!, draft }] });
      expect(await page.textContent("#warning")).toContain("The recipe has changed");
      expect(await page.textContent("#far-text")).toContain("1 of 12 picks");
      expect(await page.textContent("#kept")).toContain("on this device alone");
      await leave(page);
      await context.addInitScript(
        `Object.defineProperty(window, "localStorage", { get() { throw new Error("shut off"); } })`,
      );
      page = await opened(context);
      await page.keyboard.press("Space");
      expect(await page.textContent("#kept")).toContain("This browser keeps nothing");
      expect(await page.textContent("#far-text")).toContain("1 of 12 picks");
    });
  });

  it("reads aloud only when asked, and keeps the screen on", async () => {
    await atLoom(async (context) => {
      await context.addInitScript(`
        window.said = []; window.locks = [];
        speechSynthesis.speak = ({ text }) => said.push(text);
        navigator.wakeLock.request = async (kind) => { locks.push(kind); return { released: false, release: async () => locks.push("let go") }; };`);
      const page = await opened(context);
      await page.keyboard.press("Space");
      expect(await page.evaluate("said")).toEqual([]);
      await page.click("[data-do=setup]");
      await page.check("#set-aloud");
      await page.uncheck("#set-awake");
      await page.click("#setup [type=submit]");
      await page.keyboard.press("Space");
      expect(await page.evaluate("said")).toEqual(["Treadle 3, from the left."]);
      expect(await page.evaluate("locks")).toEqual(["screen", "let go"]);
    });
  });

  const looks = [
    ["phone", 360, 740, "light"],
    ["tablet", 820, 1180, "dark"],
  ] as const;

  it.each(looks)(
    "on a %s of %i by %i, %s, passes the accessibility checker and asks for nothing",
    async (_, width, height, colorScheme) => {
      await atLoom(
        async (context) => {
          const requests: string[] = [];
          context.on("request", (request) => requests.push(request.url()));
          const page = await opened(context, exampleRecipe("napkin"));
          await page.evaluate(axe.source);
          for (const open of ["", "go", "slip", "out", "weavers", "log", "setup"]) {
            if (open !== "") await page.click(`[data-do=${open}]`);
            const found = await page.evaluate<Found>(CHECK);
            expect(found, open).toMatchObject({ violations: [], small: [], beside: 0 });
            expect(found.passes).toBeGreaterThan(15);
            if (open === "") for (let i = 0; i < 80; i++) await page.keyboard.press("Space");
            else await page.keyboard.press("Escape");
          }
          expect(requests.length).toBe(1);
        },
        { viewport: { width, height }, colorScheme, bypassCSP: true },
      );
    },
  );
});
