import { drawSvg } from "@drawcord/draw";
import {
  coloursIn,
  draftOfRecipe,
  drawdownIn,
  FileError,
  type Reading,
  type Recipe,
  shaftDraftOfCloth,
  titleIn,
  writePng,
  writeWif,
} from "@drawcord/files";
import type { SaveAs } from "./messages.js";
import { readBench } from "./reading.js";

/** A file to save. */
export interface SavedFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

const FILES: Readonly<Record<SaveAs, readonly [name: string, type: string]>> = {
  recipe: ["cloth.recipe.yaml", "application/yaml"],
  wif: ["cloth.wif", "text/plain"],
  png: ["cloth.png", "image/png"],
  svg: ["cloth.svg", "image/svg+xml"],
  html: ["cloth.html", "text/html"],
  pdf: ["cloth.pdf", "application/pdf"],
  follow: ["cloth-loom.html", "text/html"],
};

/**
 * What stands on the bench as a file, to the byte as the command writes it.
 * @param text of a sound recipe, a draft or a chart
 * @param as the format
 * @throws {FileError} for what cannot be read; `bad-value` for a format that what stands there has not
 */
export async function saved(text: string, as: SaveAs): Promise<SavedFile> {
  const [name, type] = FILES[as];
  const content = await contentOf(text, as);
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : new Uint8Array(content);
  return { name, type, bytes };
}

async function contentOf(text: string, as: SaveAs): Promise<string | Uint8Array> {
  if (as === "recipe") return text;
  const { problems, reading } = await readBench(text);
  const [first] = problems;
  if (first !== undefined)
    throw new FileError(first.code, first.sentence, "the bench", { ...first, line: 1, column: 1 });
  const found = reading!;
  switch (as) {
    case "wif":
      return writeWif(draftOf(found));
    case "png":
      return writePng(drawdownIn(found), coloursIn(found));
    case "svg": {
      const title = titleIn(found);
      return drawSvg(drawdownIn(found), { ...coloursIn(found), ...(title !== undefined && { title }) });
    }
    case "html":
      return (await import("./sheet.js")).sheetHtml(recipeOf(found));
    case "pdf":
      return (await import("./pdf.js")).sheetPdf(recipeOf(found));
    case "follow":
      return (await import("./follow.js")).loomPage(recipeOf(found));
  }
}

function draftOf(reading: Reading) {
  switch (reading.kind) {
    case "recipe":
      return draftOfRecipe(reading.recipe);
    case "draft":
      return reading.draft;
    case "chart":
      return shaftDraftOfCloth(reading.chart);
  }
}

function recipeOf(reading: Reading): Recipe {
  if (reading.kind === "recipe") return reading.recipe;
  const sentence = "only a recipe has a sheet and lifts to follow";
  throw new FileError("bad-value", sentence, "the bench", {
    line: 1,
    column: 1,
    offset: 0,
    end: { line: 1, column: 1, offset: 0 },
  });
}
