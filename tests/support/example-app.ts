/** The example app of the docs, built and opened in a real browser. */
import { createReadStream } from "node:fs";
import { createServer } from "node:http";
import { extname, join } from "node:path";
import type { AddressInfo } from "node:net";
import { type Browser, chromium, type Page } from "playwright-core";
import { browserForTests } from "../scripts/find-browser.mjs";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
};

/** Nothing but what the page itself brings. */
const POLICY =
  "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self'; connect-src 'none'; base-uri 'none'";

/** A page that stands open, and what it complained of. */
export interface OpenPage {
  readonly page: Page;
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

/** Serves a folder of built files under a strict policy, and opens its page. */
export async function openFolder(folder: string): Promise<OpenPage> {
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname;
    const file = path === "/" ? "/index.html" : path;
    response.setHeader("Content-Security-Policy", POLICY);
    response.setHeader("Content-Type", TYPES[extname(file)] ?? "application/octet-stream");
    createReadStream(join(folder, file))
      .on("error", () => response.writeHead(404).end())
      .pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const browser: Browser = await chromium.launch({ executablePath: browserForTests(), args: ["--no-sandbox"] });
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => {
    const isIcon = message.location().url.endsWith("/favicon.ico");
    if (message.type() === "error" && !isIcon) complaints.push(message.text());
  });
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  return {
    page,
    complaints,
    close: async () => {
      await browser.close();
      server.close();
    },
  };
}
