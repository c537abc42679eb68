import { copyFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { rules } from "@drawcord/check";
import { parseThreading } from "@drawcord/units";
import { formulas } from "@drawcord/yarn";
import axe from "axe-core";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { errorCodes } from "../docs/support/error-codes.js";
import { browserForTests } from "./scripts/find-browser.mjs";
import { serve } from "./scripts/serve.mjs";
import { drawcord } from "./support/built.js";
import { folder } from "./support/folder.js";
import { root } from "./support/packages.js";

const site = join(root, "docs/.vitepress/dist");
if (!existsSync(join(site, "index.html")))
  throw new Error("these tests look at the built site: npm run site");

/** Of the runner. */
const THREADING = "X*2 13 X 4-2 (1-12 11-2)*3 1-4 X 13 X*2";
const runner = join(root, "shared/recipes/runner.recipe.yaml");

describe("the site in a browser", () => {
  let served: Awaited<ReturnType<typeof serve>>;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  const faults: string[] = [];

  beforeAll(async () => {
    served = await serve(site, "/somewhere/else/");
    browser = await chromium.launch({ executablePath: browserForTests(), args: ["--no-sandbox"] });
    context = await browser.newContext({ acceptDownloads: true, viewport: { width: 1280, height: 900 } });
    page = await context.newPage();
    page.on("pageerror", (error) => faults.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    page.on("requestfailed", (request) => {
      // A page that is left lets go of what it was fetching.
      const why = request.failure()?.errorText ?? "";
      if (why !== "net::ERR_ABORTED") faults.push(`${request.url()} failed: ${why}`);
    });
    page.on("request", (request) => {
      const { protocol } = new URL(request.url());
      if (protocol.startsWith("http") && !request.url().startsWith(served.url))
        faults.push(`${request.url()} is elsewhere`);
    });
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  const verdict = () => page.locator(".verdict");
  const paper = () => page.locator(".cm-content");
  const atBench = async () => {
    await page.goto(served.url);
    await paper().waitFor();
    await page.locator(".size", { hasText: "ends" }).waitFor();
  };
  /** What stands on the paper, whole, though only what is seen of it is in the page. */
  const textOnPaper = () =>
    page.evaluate<string>(
      "(({ cmTile, cmView }) => String((cmTile ?? cmView).view.state.doc))(document.querySelector('.cm-content'))",
    );
  const drop = (name: string, bytes: Uint8Array) =>
    page
      .locator('input[type="file"]')
      .setInputFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });

  it("draws a cloth that was checked, and says so", async () => {
    await atBench();
    await expect.poll(() => verdict().textContent()).toMatch(/^nothing found, \d+ of \d+ rules looked$/);
    expect(await page.locator(".private").textContent()).toMatch(/leaves this device/);
  });

  it("names the cause of a slip at its line, and mends it", async () => {
    const before = await textOnPaper();
    const slipped = before.replace("1-4 X 13", "1-3 7 X 13");
    expect(slipped).not.toBe(before);
    const cause = page.locator(".cause").first();
    await paper().press("Control+a");
    await page.keyboard.insertText(slipped);
    await cause.waitFor();
    expect(await cause.textContent()).toMatch(/unit/);
    await cause.getByRole("button", { name: "see the mend" }).click();
    await page.locator(".mend ins, .mend del").first().waitFor();
    await page.getByRole("button", { name: "mend it" }).click();
    await expect.poll(() => verdict().textContent()).toMatch(/^nothing found/);
    const mended = (await textOnPaper()).split("\n").find((line) => line.includes("threading:"));
    expect(parseThreading(mended!.split("threading: ")[1]!)).toEqual(parseThreading(THREADING));
    // And undo takes the mend back.
    await page.getByRole("button", { name: "undo" }).click();
    await cause.waitFor();
    await page.getByRole("button", { name: "undo" }).click();
    await expect.poll(textOnPaper).toBe(before);
  });

  it("tells why a crossing is as it is, by the keyboard alone", async () => {
    await page.locator(".cloth-view canvas").focus();
    for (const key of ["+", "+", "ArrowRight", "ArrowUp"]) await page.keyboard.press(key);
    await expect
      .poll(() => page.locator("#why").textContent())
      .toMatch(/End 2 is threaded on ground shaft 2/);
    await page.getByRole("button", { name: "handle 3", exact: true }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^step 1:/ }).focus();
    await page.keyboard.press("Enter");
    await expect
      .poll(() => page.locator(".shed p").textContent())
      .toMatch(/treadle step 1, handles 3: \d+ ends up of 324/);
  });

  it("saves every format to the byte as the command writes it", async () => {
    const cwd = folder();
    copyFileSync(runner, join(cwd, "cloth.recipe.yaml"));
    const recipe = "cloth.recipe.yaml";
    const commands: Readonly<Record<string, readonly string[]>> = {
      wif: ["expand", recipe, "--format", "wif", "-o", "cloth.wif"],
      png: ["expand", recipe, "--format", "png", "-o", "cloth.png"],
      svg: ["expand", recipe, "--format", "svg", "-o", "cloth.svg"],
      html: ["sheet", recipe, "-o", "cloth.html"],
      pdf: ["sheet", recipe, "-o", "cloth.pdf"],
      follow: ["follow", recipe, "-o", "cloth-loom.html"],
    };
    await page.locator(".save summary").click();
    for (const [as, args] of Object.entries({ recipe: [], ...commands })) {
      const waiting = page.waitForEvent("download");
      await page.locator(`[data-save="${as}"]`).click();
      const download = await waiting;
      const name = download.suggestedFilename();
      const path = await download.path();
      if (args.length > 0) expect((await drawcord(args, { cwd })).stderr).toBe("");
      expect(readFileSync(path).equals(readFileSync(join(cwd, name))), name).toBe(true);
    }
    await page.locator(".save summary").click();
  });

  it("opens a draft, a chart and a picture through the one door", async () => {
    await drop("towel.wif", readFileSync(join(root, "shared/drafts/towel.wif")));
    await expect.poll(textOnPaper).toMatch(/^\[WIF\]/);
    await expect.poll(() => verdict().textContent()).toMatch(/warning/);
    await drop("moth.txt", Buffer.from("#..#\n.##.\n"));
    await expect.poll(() => page.locator(".size").textContent()).toMatch(/4 ends × 2 picks/);
    const cwd = folder();
    writeFileSync(join(cwd, "moth.txt"), "#..#\n.##.\n####\n");
    await drawcord(["expand", "moth.txt", "--format", "png", "-o", "moth.png"], { cwd });
    await drop("moth.png", readFileSync(join(cwd, "moth.png")));
    await expect.poll(textOnPaper).toBe("#..#\n.##.\n####\n");
  });

  it("follows a link that holds a recipe, and works without a network", async () => {
    await page.goto(`${served.url}rules/open-cut.html`);
    await page.locator(".fails .to-bench").first().click();
    await paper().waitFor();
    await expect.poll(textOnPaper).toMatch(/title: the same pair begun one end later/);
    await expect.poll(() => page.locator(".marks").textContent()).toMatch(/open-cut/);
    await page.getByRole("button", { name: "make a link" }).click();
    await expect.poll(() => page.url()).toMatch(/#recipe=/);
    await page.evaluate("navigator.serviceWorker.ready.then(() => {})");
    await context.setOffline(true);
    try {
      await page.reload();
      await paper().waitFor();
      await expect.poll(() => page.locator(".size").textContent()).toMatch(/12 ends × 12 picks/);
    } finally {
      await context.setOffline(false);
    }
  });

  it("marks all that is wrong with a text, each at its line, with the way to its page", async () => {
    await atBench();
    await paper().press("Control+a");
    await page.keyboard.insertText(
      "recipe: 1\nunits: { ends: 4, thredding: 1 2 }\nground: { weave: satn 8 }\n",
    );
    await expect.poll(() => page.locator(".marks li.problem").count()).toBeGreaterThan(1);
    await expect.poll(() => page.locator(".cm-lintRange-error").count()).toBeGreaterThan(1);
    const link = await page.locator(".marks li.problem a").first().getAttribute("href");
    expect(readFileSync(join(site, "codes.html"), "utf8")).toContain(`id="${link!.split("#")[1]}"`);
  });

  it("holds the class's loom as the command of the guide writes it", async () => {
    const cwd = folder();
    const line = /^drawcord (practice .*)$/m.exec(readFileSync(join(root, "docs/guide/class.md"), "utf8"))!;
    const args = line[1]!.replace(/shared\S+/, runner).split(" ");
    expect((await drawcord(args, { cwd })).status).toBe(0);
    const written = readFileSync(join(cwd, "practice.html"));
    expect(written.equals(readFileSync(join(site, "practice.html")))).toBe(true);
    await page.goto(`${served.url}guide/class.html`);
    await page.locator("iframe.practice").scrollIntoViewIfNeeded();
    await page.frameLocator("iframe.practice").getByRole("heading").first().waitFor();
  });

  it.each([
    "index.html",
    "guide/first-cloth.html",
    "guide/class.html",
    "practice.html",
    "rules/index.html",
    "rules/open-cut.html",
    "formulas/warp-length.html",
    "weaves.html",
    "codes.html",
  ])("%s is clean by axe, fits a phone, and does not shift", async (path) => {
    await page.setViewportSize({ width: 390, height: 800 });
    await page.goto(served.url + path);
    if (path === "index.html") await page.locator(".size", { hasText: "ends" }).waitFor();
    const shift = await page.evaluate<number>(
      "new Promise((done) => { let sum = 0; new PerformanceObserver((list) => {" +
        "for (const one of list.getEntries()) if (!one.hadRecentInput) sum += one.value })" +
        ".observe({ type: 'layout-shift', buffered: true }); setTimeout(() => done(sum), 50) })",
    );
    expect(shift).toBeLessThan(0.02);
    await page.evaluate(axe.source);
    const { violations } = await page.evaluate<{ violations: { id: string; nodes: { html: string }[] }[] }>(
      "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'best-practice'] })",
    );
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html.slice(0, 160)}`)).toEqual([]);
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(390);
    await page.setViewportSize({ width: 1280, height: 900 });
  });

  it("asks for nothing elsewhere, and no page is at fault", () => expect(faults).toEqual([]));
});

describe("what the bench loads", () => {
  /** Bytes of files as a server sends them, compressed. */
  const weight = (...files: readonly string[]) =>
    files.reduce((sum, file) => sum + gzipSync(readFileSync(join(site, file)), { level: 9 }).length, 0);
  const html = readFileSync(join(site, "index.html"), "utf8");
  const first = [...html.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map(([, file]) => file!);
  const assets = readdirSync(join(site, "assets"));
  const named = (name: string) => `assets/${assets.find((file) => file.startsWith(`${name}-`))!}`;

  it("is small before the editor, and with it and all that checks", () => {
    expect(first.length).toBeGreaterThan(4);
    const before = weight("index.html", named("worker"), ...first);
    expect(before).toBeLessThan(200_000);
    const editor = readdirSync(join(site, "assets/chunks")).find((file) => file.startsWith("editor."))!;
    const whole = before + weight(`assets/chunks/${editor}`, named("look"), named("check-recipe"));
    expect(whole).toBeLessThan(450_000);
  });
});

describe("the pages of the site", () => {
  const pages = readdirSync(site, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".html"),
  );
  const read = new Map(pages.map((file) => [file, readFileSync(join(site, file), "utf8")]));
  const anchors = new Map(
    [...read].map(([file, html]) => [
      file,
      new Set([...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!)),
    ]),
  );

  it("lead nowhere but to pages and places that are there", () => {
    const dead: string[] = [];
    let links = 0;
    for (const [file, html] of read) {
      if (file === "404.html") continue;
      for (const [, href] of html.matchAll(/<a [^>]*?href="([^"]*)"/g)) {
        if (/^(?:https?:|mailto:)/.test(href!)) continue;
        links++;
        const url = new URL(href!.replaceAll("&amp;", "&"), `http://here/${file}`);
        const path = url.pathname.slice(1);
        const to = path === "" || path.endsWith("/") ? `${path}index.html` : decodeURIComponent(path);
        const anchor = decodeURIComponent(url.hash.slice(1));
        if (!existsSync(join(site, to))) dead.push(`${file}: ${href}`);
        else if (anchor !== "" && !anchor.startsWith("recipe=") && anchors.get(to)?.has(anchor) !== true) {
          dead.push(`${file}: ${href}, no such place`);
        }
      }
    }
    expect(links).toBeGreaterThan(1000);
    expect([...new Set(dead)]).toEqual([]);
  });

  it("have one for every rule and every formula, and a place for every code of an error", () => {
    for (const { name } of rules) expect(read.has(`rules/${name}.html`), name).toBe(true);
    for (const id of Object.keys(formulas)) expect(read.has(`formulas/${id}.html`), id).toBe(true);
    const codes = errorCodes(root);
    expect(codes.length).toBeGreaterThan(80);
    expect(codes.filter(({ code }) => anchors.get("codes.html")?.has(code) !== true)).toEqual([]);
    expect(codes.filter(({ meanings }) => meanings.length === 0)).toEqual([]);
  });
});
