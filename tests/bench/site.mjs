/**
 * The bench of the site in a browser: the first cloth on a phone as the browser's own tools emulate it, a cause at its
 * line, a key stroke on a recipe of 400 ends and 1,500 picks, and how far the layout shifts. Run by `npm run site:speed`
 * upon a built site.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { browserForTests } from "../scripts/find-browser.mjs";
import { serve } from "../scripts/serve.mjs";
import { line, ms, within } from "./table.mjs";

const from = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const KEYS = 20;

/** The two networks of a phone that the browser's tools offer: bytes a second, and milliseconds to an answer. */
const NETWORKS = [
  ["fast 4G", 1_012_500, 165],
  ["slow 4G", 180_000, 562.5],
];

/** 100 units of 4 ends in points on 20 shafts, 375 rows of 4 picks. */
const wide = `recipe: 1
title: Wide
ground: { weave: broken twill }
units: { ends: 4, threading: (1-20 19-2)*2 1-20 19-17 X }
lifts:
  picks: 4
  rows:
${Array.from({ length: 375 }, (_, row) => `    - ${1 + ((row * 3) % 17)}-${4 + ((row * 3) % 17)}`).join("\n")}
`;

const median = (values) => values.toSorted((a, b) => a - b)[values.length >> 1];
const view = "(({ cmTile, cmView }) => (cmTile ?? cmView).view)(document.querySelector('.cm-content'))";
const put = (page, text) =>
  page.evaluate(
    `(${view}).dispatch({ changes: { from: 0, to: (${view}).state.doc.length, insert: ${JSON.stringify(text)} } })`,
  );

const served = await serve(from("docs/.vitepress/dist"), "/", { packed: true });
const browser = await chromium.launch({ executablePath: browserForTests(), args: ["--no-sandbox"] });

async function opened(options, prepare = async () => {}) {
  const context = await browser.newContext({ serviceWorkers: "block", ...options });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await page.addInitScript(() => {
    globalThis.shift = 0;
    new PerformanceObserver((list) => {
      for (const one of list.getEntries()) if (!one.hadRecentInput) globalThis.shift += one.value;
    }).observe({ type: "layout-shift", buffered: true });
    new MutationObserver((_, watcher) => {
      if (document.querySelector(".size")?.textContent.includes("ends") !== true) return;
      watcher.disconnect();
      requestAnimationFrame(() => requestAnimationFrame(() => (globalThis.drawn = performance.now())));
    }).observe(document, { subtree: true, childList: true, characterData: true });
  });
  await prepare(session);
  await page.goto(served.url);
  await page.waitForFunction("globalThis.drawn");
  return { context, page, session };
}

async function onPhone([name, downloadThroughput, latency]) {
  const { context, page } = await opened(
    { viewport: { width: 412, height: 823 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true },
    async (session) => {
      await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
      await session.send("Network.enable");
      await session.send("Network.emulateNetworkConditions", {
        offline: false,
        latency,
        downloadThroughput,
        uploadThroughput: downloadThroughput,
      });
    },
  );
  const seen = await page.evaluate("globalThis.drawn");
  const painted = await page.evaluate(
    "performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0",
  );
  await page.locator(".report").waitFor();
  await page.locator(".cm-content").waitFor();
  const shift = await page.evaluate("globalThis.shift");
  await context.close();
  line(`the first cloth on a phone, ${name}, 4 times slower`, ms(seen), within(seen, 2000, "ms"));
  line("  the first words", ms(painted));
  line("  shift of the layout", shift.toFixed(4), within(shift, 0, ""));
}

async function atDesk() {
  const { context, page, session } = await opened({ viewport: { width: 1280, height: 900 } });
  await page.locator(".cm-content").waitFor();
  const runner = readFileSync(from("shared/recipes/runner.recipe.yaml"), "utf8");
  const slipped = runner.replace("1-4 X 13", "1-3 7 X 13");
  const waits = [];
  for (let i = 0; i < 7; i++) {
    const wait = page.evaluate(
      () =>
        new Promise((resolve) => {
          const began = performance.now();
          const watcher = new MutationObserver(() => {
            if (document.querySelector(".cause") === null || document.querySelector(".cm-lintRange") === null)
              return;
            watcher.disconnect();
            resolve(performance.now() - began);
          });
          watcher.observe(document.body, { subtree: true, childList: true });
        }),
    );
    await put(page, slipped);
    waits.push(await wait);
    await put(page, runner);
    await page.waitForFunction("document.querySelector('.cause') === null");
    await page.locator(".verdict", { hasText: "nothing found" }).waitFor();
    await page.waitForTimeout(500);
  }
  line("a cause at its line, in the median", ms(median(waits)), within(median(waits), 500, "ms"));
  line(
    "  at the first slip, what looks for causes still to be loaded",
    ms(waits[0]),
    within(waits[0], 500, "ms"),
  );

  await put(page, wide);
  await page.locator(".size", { hasText: "1500 picks" }).waitFor();
  await page.waitForTimeout(3000);
  // Processor time of the thread: what else this machine does is not counted.
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const worked = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "TaskDuration").value * 1000;
  };
  const at = wide.indexOf("    - ", wide.length / 2) + 6;
  await page.evaluate(
    `(${view}).dispatch({ selection: { anchor: ${at} }, scrollIntoView: true }); (${view}).focus()`,
  );
  await page.waitForTimeout(500);
  const rest = await worked();
  await page.waitForTimeout(1000);
  const idle = (await worked()) - rest;
  const strokes = [];
  for (let key = 0; key < KEYS; key++) {
    const before = await worked();
    if (key % 2 === 0) await page.keyboard.insertText("20 ");
    else {
      await page.evaluate(
        `(${view}).dispatch({ changes: { from: ${at}, to: ${at + 3} }, userEvent: "delete" })`,
      );
    }
    await page.waitForTimeout(1000);
    strokes.push((await worked()) - before - idle);
  }
  const stroke = median(strokes);
  line(
    "a key stroke at 400 x 1,500, all that follows from it, in the median",
    ms(stroke),
    within(stroke, 16, "ms"),
  );
  await context.close();
}

try {
  line("the bench of the site", "", "target");
  for (const network of NETWORKS) await onPhone(network);
  await atDesk();
} finally {
  await browser.close();
  await served.close();
}
