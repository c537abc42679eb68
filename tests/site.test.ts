import { copyFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { rules } from "@drawcord/check";
import { parseThreading } from "@drawcord/units";
import { formulas } from "@drawcord/yarn";
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
const band = join(root, "shared/recipes/band.recipe.yaml");

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
  const put = (name: string, bytes: Uint8Array) =>
    page
      .locator('input[type="file"]')
      .setInputFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
  const drop = async (name: string, bytes: Uint8Array) => {
    const held = await page.evaluateHandle(`(() => {
      const held = new DataTransfer();
      held.items.add(new File([Uint8Array.from(${JSON.stringify([...bytes])})], ${JSON.stringify(name)}));
      return held;
    })()`);
    await page.locator(".bench").dispatchEvent("drop", { dataTransfer: held });
  };

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
    // Underlined in the line in which the threading is written, and shown there before it is mended.
    const line = slipped.split("\n").findIndex((one) => one.includes("threading:")) + 1;
    await cause.getByRole("button", { name: "go to its line" }).click();
    await page.locator(".cm-line", { hasText: "threading:" }).locator(".cm-lintRange").first().waitFor();
    expect(await page.locator(".cm-activeLineGutter").first().textContent()).toBe(`${line}`);
    await cause.getByRole("button", { name: "see the mend" }).click();
    await page.locator(".mend ins, .mend del").first().waitFor();
    expect(await page.locator(".mend .line").first().textContent()).toBe(`line ${line}`);
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
    const recipe = "cloth.recipe.yaml";
    copyFileSync(band, join(cwd, recipe));
    const commands: Readonly<Record<string, readonly string[]>> = {
      wif: ["expand", recipe, "--format", "wif", "-o", "cloth.wif"],
      png: ["expand", recipe, "--format", "png", "-o", "cloth.png"],
      svg: ["expand", recipe, "--format", "svg", "-o", "cloth.svg"],
      html: ["sheet", recipe, "-o", "cloth.html"],
      pdf: ["sheet", recipe, "-o", "cloth.pdf"],
      follow: ["follow", recipe, "-o", "cloth-loom.html"],
    };
    const written = Promise.all(Object.values(commands).map((args) => drawcord(args, { cwd })));
    await put(recipe, readFileSync(band));
    await expect.poll(textOnPaper).toBe(readFileSync(band, "utf8"));
    await page.locator(".save summary").click();
    const saved = new Map<string, string>();
    for (const as of ["recipe", ...Object.keys(commands)]) {
      const waiting = page.waitForEvent("download");
      await page.locator(`[data-save="${as}"]`).click();
      const download = await waiting;
      saved.set(download.suggestedFilename(), await download.path());
    }
    await page.locator(".save summary").click();
    for (const { stderr } of await written) expect(stderr).toBe("");
    expect(saved.size).toBe(7);
    for (const [name, path] of saved)
      expect(readFileSync(path).equals(readFileSync(join(cwd, name))), name).toBe(true);
  });

  it("opens a draft, a chart and a picture through the one door", async () => {
    await drop("towel.wif", readFileSync(join(root, "shared/drafts/towel.wif")));
    await expect.poll(textOnPaper).toMatch(/^\[WIF\]/);
    await expect.poll(() => verdict().textContent()).toMatch(/warning/);
    await put("moth.txt", Buffer.from("#..#\n.##.\n"));
    await expect.poll(() => page.locator(".size").textContent()).toMatch(/4 ends × 2 picks/);
    const cwd = folder();
    writeFileSync(join(cwd, "moth.txt"), "#..#\n.##.\n####\n");
    await drawcord(["expand", "moth.txt", "--format", "png", "-o", "moth.png"], { cwd });
    await put("moth.png", readFileSync(join(cwd, "moth.png")));
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

  it("is gone through by the keyboard alone, and holds nobody fast", async () => {
    await atBench();
    await page.evaluate("document.querySelector('h1').setAttribute('tabindex', '-1')");
    await page.locator("h1").focus();
    const passed: string[] = [];
    for (let i = 0; i < 60 && !passed.includes("step 4: raises 1, sinks 4"); i++) {
      await page.keyboard.press("Tab");
      passed.push(
        await page.evaluate<string>(
          "(({ ariaLabel, textContent, localName }) => ariaLabel ?? (localName === 'canvas' ? localName : textContent.trim()))(document.activeElement)",
        ),
      );
      if (passed.at(-1) === "handle 2") await page.keyboard.press("Enter");
    }
    const order = ["save", "undo", "the recipe", "handle 1", "handle 13", "turn over", "step 1"].map((name) =>
      passed.findIndex((one) => one.startsWith(name)),
    );
    expect(order.every((at) => at >= 0)).toBe(true);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    await expect.poll(() => page.locator(".shed p").textContent()).toMatch(/no treadle, handles 2/);
  });

  it("reads well to one who hears it", async () => {
    const heard = await page.locator(".bench").ariaSnapshot();
    for (const part of [
      /^- region "the bench":/m,
      /textbox "the recipe"/,
      /group "handles":/,
      /button "handle 2" \[pressed\]/,
      /application "the face of the cloth, 324 ends and 1464 picks/,
      /heading "What was found" \[level=2\]/,
      /status: nothing found, \d+ of \d+ rules looked/,
      /region "rows of the weaving list"/,
      /heading "The report" \[level=2\]/,
      /heading "The numbers" \[level=2\]/,
    ])
      expect(heard).toMatch(part);
  });

  it("is searched, on the bench and without a network", async () => {
    await page.evaluate("navigator.serviceWorker.ready.then(() => {})");
    await context.setOffline(true);
    try {
      await page.reload();
      await page.locator(".size", { hasText: "ends" }).waitFor();
      await page
        .getByRole("button", { name: /Search/ })
        .first()
        .click();
      await page.locator(".VPLocalSearchBox input").fill("open-cut");
      await page.locator('.VPLocalSearchBox .result[href*="rules/open-cut"]').first().click();
      await page.getByRole("heading", { name: "open-cut", level: 1 }).waitFor();
    } finally {
      await context.setOffline(false);
    }
  });

  it("does not shift while the first cloth comes", async () => {
    await page.setViewportSize({ width: 390, height: 800 });
    await page.goto(served.url);
    await page.locator(".report").waitFor();
    await paper().waitFor();
    const shift = await page.evaluate<number>(
      "new Promise((done) => { let sum = 0; new PerformanceObserver((list) => {" +
        "for (const one of list.getEntries()) if (!one.hadRecentInput) sum += one.value })" +
        ".observe({ type: 'layout-shift', buffered: true }); setTimeout(() => done(sum), 50) })",
    );
    expect(shift).toBeLessThan(0.005);
    await page.setViewportSize({ width: 1280, height: 900 });
  });

  it("says what to do where it is opened from a file share", async () => {
    const alone = await context.newPage();
    await alone.goto(pathToFileURL(join(site, "index.html")).href);
    expect(await alone.locator(".from-file").textContent()).toMatch(/static server/);
    expect(await alone.locator(".from-file").isVisible()).toBe(true);
    await alone.goto(pathToFileURL(join(site, "rules/open-cut.html")).href);
    expect(await alone.locator("h1").first().textContent()).toMatch(/open-cut/);
    await alone.close();
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
