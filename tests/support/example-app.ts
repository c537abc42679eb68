import { createReadStream } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { expect } from "vitest";
import { browserForTests } from "../scripts/find-browser.mjs";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
};

/** Nothing but what the page itself brings. */
const POLICY =
  "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self'; connect-src 'none'; base-uri 'none'";

/**
 * Serves the built example app under a strict policy, opens it in a browser, and uses it as a weaver would: a slip is named
 * and set right, a broken text is underlined, and nothing is complained of.
 */
export async function useExampleApp(folder: string): Promise<void> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const file = pathname === "/" ? "/index.html" : pathname;
    response.setHeader("Content-Security-Policy", POLICY);
    response.setHeader("Content-Type", TYPES[extname(file)] ?? "application/octet-stream");
    createReadStream(join(folder, file))
      .on("error", () => response.writeHead(404).end())
      .pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const browser = await chromium.launch({ executablePath: browserForTests(), args: ["--no-sandbox"] });
  try {
    const page = await browser.newPage();
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(String(error)));
    page.on("console", (message) => {
      const isIcon = message.location().url.endsWith("/favicon.ico");
      if (message.type() === "error" && !isIcon) complaints.push(message.text());
    });
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    const area = page.locator("textarea");

    // The recipe that it begins with has a slip in its threading.
    await page.locator("ul li", { hasText: "unit 13 hangs on shaft 5" }).waitFor();
    expect(await page.locator("canvas").evaluate(sizeOf)).toEqual([68, 60]);
    const levels = await Promise.all(["error", "warning", "note"].map((level) => underlined(page, level)));
    expect(levels.flat()).toContain("5");
    await page.getByRole("button", { name: "Set it right" }).click();
    await page.locator("ul li").waitFor({ state: "detached" });
    expect(await area.inputValue()).toContain("X 1-8 7-1 X");

    await area.fill((await area.inputValue()).replace("[1, 1-2", "[1, 1-q").replace("title", "titel"));
    await page.locator("ol li", { hasText: "titel" }).waitFor();
    expect(await underlined(page, "error")).toEqual(["titel", "q"]);
    expect(complaints).toEqual([]);
  } finally {
    await browser.close();
    server.close();
  }
}

/** How wide and high the cloth is drawn. */
function sizeOf(canvas: { getAttribute(name: string): string | null }): readonly number[] {
  return [Number(canvas.getAttribute("width")), Number(canvas.getAttribute("height"))];
}

/** The texts that are underlined as of a level, in their order. */
async function underlined(page: Page, level: string): Promise<readonly string[]> {
  return page.evaluate<string[]>(
    `[...CSS.highlights.get(${JSON.stringify(level)})].map(({ startContainer, startOffset, endOffset }) =>
       startContainer.data.slice(startOffset, endOffset))`,
  );
}
