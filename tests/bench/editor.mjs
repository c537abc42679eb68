/**
 * A key stroke in the example app, on a recipe of 400 ends and 1,500 picks: what the main thread does for it, layout and
 * paint and all, and when the new report and the causes are there. Run by `npm run bench`.
 */
import { createReadStream, mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { build } from "vite";
import { browserForTests } from "../scripts/find-browser.mjs";
import { line, ms, within } from "./table.mjs";

const root = fileURLToPath(new URL("../../docs/example-app", import.meta.url));
const KEYS = 40;

/** 100 units of 4 ends in points on 20 shafts, 375 rows of 4 picks. */
function recipe() {
  const rows = Array.from({ length: 375 }, (_, row) => {
    const first = 1 + ((row * 3) % 17);
    return `    - ${first}-${first + 3}`;
  });
  return `recipe: 1
title: Wide
ground: { weave: broken twill }
units: { ends: 4, threading: (1-20 19-2)*2 1-20 19-17 X }
lifts:
  picks: 4
  rows:
${rows.join("\n")}
`;
}

const median = (values) => values.toSorted((a, b) => a - b)[values.length >> 1];

export async function editor() {
  const folder = mkdtempSync(join(tmpdir(), "drawcord-editor-"));
  const logLevel = "silent";
  await build({
    configFile: false,
    logLevel,
    root,
    base: "./",
    build: { outDir: folder },
    worker: { format: "es" },
  });
  const types = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css" };
  const server = createServer(({ url }, response) => {
    const file = url === "/" ? "/index.html" : url;
    response.setHeader("Content-Type", types[extname(file)] ?? "application/octet-stream");
    createReadStream(join(folder, file))
      .on("error", () => response.writeHead(404).end())
      .pipe(response);
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  const browser = await chromium.launch({ executablePath: browserForTests(), args: ["--no-sandbox"] });
  try {
    const page = await browser.newPage();
    await page.goto(`http://127.0.0.1:${server.address().port}/`);
    await page.waitForSelector("body[data-explained]");
    // To fill a text area types it line by line; a paste is one stroke.
    await page.evaluate((text) => {
      const area = document.querySelector("textarea");
      area.value = text;
      area.dispatchEvent(new Event("input"));
    }, recipe());
    await page.waitForSelector("body[data-explained='2']", { timeout: 60_000 });
    const session = await page.context().newCDPSession(page);
    // Processor time of the thread: what else this machine does is not counted.
    await session.send("Performance.enable", { timeDomain: "threadTicks" });
    const worked = async () => {
      const { metrics } = await session.send("Performance.getMetrics");
      return metrics.find(({ name }) => name === "TaskDuration").value * 1000;
    };
    const own = [];
    const shown = [];
    const explained = [];
    for (let key = 0; key < KEYS; key++) {
      const before = await worked();
      // A shaft more in a row of its own, and out again.
      const times = await page.evaluate(
        ([add, id]) =>
          new Promise((resolve) => {
            const area = document.querySelector("textarea");
            const began = performance.now();
            let seen;
            const observer = new MutationObserver(() => {
              const now = performance.now() - began;
              if (document.body.dataset.shown === id) seen ??= now;
              if (document.body.dataset.explained !== id) return;
              observer.disconnect();
              resolve([seen, now]);
            });
            observer.observe(document.body, { attributes: true });
            area.focus();
            const at = area.value.indexOf("    - ", area.value.length / 2) + 6;
            area.setSelectionRange(at, add ? at : at + 3);
            document.execCommand(add ? "insertText" : "delete", false, add ? "20 " : undefined);
          }),
        [key % 2 === 0, String(key + 3)],
      );
      own.push((await worked()) - before);
      shown.push(times[0]);
      explained.push(times[1]);
    }
    return { own: median(own), shown: median(shown), explained: median(explained) };
  } finally {
    await browser.close();
    server.close();
    rmSync(folder, { recursive: true });
  }
}

const { explained, own, shown } = await editor();
line("a key stroke on 400 x 1,500, in the median", "", "target");
line("  main thread", ms(own), within(own, 16, "ms"));
line("  the report is there", ms(shown), within(shown, 60, "ms"));
line("  the causes are there", ms(explained), "");
