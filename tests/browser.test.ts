import { fileURLToPath } from "node:url";
import {
  draftOfRecipe,
  read,
  soundRecipe,
  starterRecipe,
  writePbm,
  writePng,
  writeTextChart,
  writeWif,
} from "@drawcord/files";
import { fromText } from "@drawcord/grid";
import { type Browser, chromium, type Page } from "playwright-core";
import { build, type Rollup } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { browserForTests } from "./scripts/find-browser.mjs";

const executablePath = browserForTests();

const latin = (text: string) => Uint8Array.from(text, (char) => char.charCodeAt(0));
const moth = fromText("#..#\n.##.\n####");
const draft = writeWif(draftOfRecipe(soundRecipe(starterRecipe(), "starter")));

/** A file of each kind, and some that are refused. */
const files: Readonly<Record<string, Uint8Array>> = {
  recipe: latin(starterRecipe()),
  draft: latin(draft),
  "draft of old Windows": latin(draft.replace("[TEXT]", "[TEXT]\r\nAuthor=\x93Foug\xe8re\x94 \x80 9")),
  "chart in text": latin(writeTextChart(moth)),
  PBM: writePbm(moth),
  PNG: writePng(moth, { scale: 3 }),
  "broken recipe": latin("recipe: 1\nthredding: 1\n"),
  "broken draft": latin("[WIF]\n[THREADING]\n1=moth\n"),
  "broken PNG": writePng(moth).slice(0, 60),
};

/** What a reading comes to, as text. The page runs the same code, so it names nothing from outside. */
function tell(reader: typeof read): (bytes: readonly number[]) => string {
  return (bytes) => {
    try {
      return JSON.stringify(reader(Uint8Array.from(bytes), "moth"), (_, value: unknown) =>
        value instanceof Uint32Array ? Array.from(value) : value,
      );
    } catch (error) {
      return String(error);
    }
  };
}

describe("the one door for files", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    const entry = "virtual:door";
    const door = fileURLToPath(new URL("../packages/files/src/index.ts", import.meta.url));
    const built = (await build({
      configFile: false,
      logLevel: "silent",
      resolve: { conditions: ["@drawcord/source", "browser", "module", "import", "default"] },
      plugins: [
        {
          name: "door",
          resolveId: (id) => (id === entry ? id : undefined),
          load: (id) =>
            id === entry
              ? `import { read } from ${JSON.stringify(door)}; globalThis.told = (${tell})(read);`
              : undefined,
        },
      ],
      build: { write: false, minify: false, rollupOptions: { input: entry } },
    })) as Rollup.RollupOutput;
    const [chunk] = built.output;
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
    page = await browser.newPage();
    await page.addScriptTag({ content: chunk.code, type: "module" });
    await page.waitForFunction("globalThis.told !== undefined");
  }, 120_000);
  afterAll(() => browser.close());

  it.each(Object.entries(files))("leads to the same %s in a browser", async (_, bytes) => {
    const there = await page.evaluate<string>(`told(${JSON.stringify([...bytes])})`);
    expect(there).toBe(tell(read)([...bytes]));
    expect(there.length).toBeGreaterThan(20);
  });
});
