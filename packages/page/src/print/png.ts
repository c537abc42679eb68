import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { initWasm, Resvg } from "@resvg/resvg-wasm";
import { fontBytes } from "./fonts.js";

/** Pixels a side at the most; past this a picture is made coarser. */
const MOST = 8000;

/** How a picture is made of dots. */
export interface PngOptions {
  /** Dots an inch; default 200, and fewer where a side would pass 8000 dots. */
  readonly dpi?: number;
}

/**
 * An SVG of this package as a PNG, set in the same fonts as the PDF whatever fonts the machine has.
 * @param svg with its size in mm, as `partToSvg` gives it
 * @param options how many dots an inch it has
 * @example [...(await toPng(pictureToSvg(picture), { dpi: 20 })).subarray(1, 4)] // [80, 78, 71]
 */
export async function toPng(svg: string, options: PngOptions = {}): Promise<Uint8Array> {
  const [, fontBuffers] = await Promise.all([ready(), fontBytes()]);
  const [width, height] = sizeOf(svg);
  const dpi = Math.min(options.dpi ?? 200, (MOST * 25.4) / Math.max(width, height));
  const image = new Resvg(leftToRight(svg.replaceAll("data-role", "class")), {
    fitTo: { mode: "width", value: Math.max(1, Math.round((width * dpi) / 25.4)) },
    background: "#ffffff",
    font: {
      fontBuffers,
      loadSystemFonts: false,
      defaultFontFamily: "Source Serif 4",
      serifFamily: "Source Serif 4",
      sansSerifFamily: "Source Sans 3",
    },
  });
  try {
    const rendered = image.render();
    try {
      return rendered.asPng();
    } finally {
      rendered.free();
    }
  } finally {
    image.free();
  }
}

/**
 * The renderer knows no direction of a line: one that runs from right to left is told by the marks of an isolate around it
 * (Unicode Standard Annex 9), and its start and end change places.
 */
function leftToRight(svg: string): string {
  const anchors: Readonly<Record<string, string>> = { start: "end", middle: "middle", end: "start" };
  return svg.replace(
    /(<text [^>]*?) direction="rtl"(?: text-anchor="(\w+)")?([^>]*>)(.*?)<\/text>/g,
    (_, before: string, anchor: string | undefined, after: string, text: string) =>
      `${before} text-anchor="${anchors[anchor ?? "start"]!}"${after}\u2067${text}\u2069</text>`,
  );
}

function sizeOf(svg: string): [width: number, height: number] {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!;
  return [Number(width), Number(height)];
}

let started: Promise<void> | undefined;

/** The renderer is loaded when it is first asked for, and once. */
function ready(): Promise<void> {
  started ??= readFile(createRequire(import.meta.url).resolve("@resvg/resvg-wasm/index_bg.wasm")).then(
    (wasm) => initWasm(wasm),
  );
  return started;
}
