import type { ShaftDraft } from "@drawcord/check";
import type { BitGrid } from "@drawcord/grid";
import { readPbm } from "./charts/pbm.js";
import { looksLikePng } from "./charts/png/chunks.js";
import { readPng } from "./charts/png/read.js";
import { readTextChart } from "./charts/text.js";
import { needSource } from "./need.js";
import { soundRecipe } from "./recipe/read.js";
import type { Recipe } from "./recipe/types.js";
import { soundWif } from "./wif/read.js";

/** What was found in a file. */
export type Reading =
  | {
      /** What was found. */
      readonly kind: "recipe";
      /** The recipe. */
      readonly recipe: Recipe;
    }
  | {
      /** What was found. */
      readonly kind: "draft";
      /** The draft. */
      readonly draft: ShaftDraft;
      /** Sections of the file that were not used. */
      readonly ignored: readonly string[];
    }
  | {
      /** What was found. */
      readonly kind: "chart";
      /** Rows of the picture, the top row last. */
      readonly chart: BitGrid;
    };

/** The kinds of file that are read. */
export type FileKind = "recipe" | "wif" | "text chart" | "pbm" | "png";

/**
 * Reads a recipe, a draft or a chart, whichever a file holds.
 * @param bytes the whole file
 * @param name the name that errors bear; the kind is known by the content alone
 * @throws {FileError} with file, line and column, for everything that keeps the file from being read
 * @example read(new TextEncoder().encode("#.\n##\n"), "moth.txt").kind // "chart"
 */
export function read(bytes: Uint8Array, name: string): Reading {
  switch (kindOf(bytes)) {
    case "png":
      return { kind: "chart", chart: readPng(bytes, name) };
    case "pbm":
      return { kind: "chart", chart: readPbm(bytes, name) };
    case "text chart":
      return { kind: "chart", chart: readTextChart(bytes, name) };
    case "wif":
      return { kind: "draft", ...soundWif(bytes, name) };
    case "recipe":
      return { kind: "recipe", recipe: soundRecipe(bytes, name) };
  }
}

/** How much of a file is looked at to tell its kind. */
const lookedAt = 2 ** 16;

/**
 * The kind of a file by how it begins: a PNG's signature, `P1` or `P4`, a section in brackets on a line of its own (WIF),
 * a line of nothing but `#` and `.` (a chart, unless it is all `#`, which begins a comment); anything else may be a recipe.
 * @param source the bytes of the file, or its text
 * @throws {ArgumentError} `wrong-argument` for what is neither
 * @example kindOf("[WIF]\nVersion=1.1") // "wif"
 */
export function kindOf(source: Uint8Array | string): FileKind {
  needSource(source);
  if (typeof source !== "string" && looksLikePng(source)) return "png";
  const begin =
    typeof source === "string"
      ? source.slice(0, lookedAt)
      : new TextDecoder("latin1").decode(source.subarray(0, lookedAt));
  const text = begin.replace(/^(\u00EF\u00BB\u00BF|\uFEFF)/, "");
  if (/^P[14][\s#]/.test(text)) return "pbm";
  for (const line of text.split(/[\r\n]+/)) {
    const plain = line.trim();
    if (plain === "" || plain.startsWith(";")) continue;
    if (/^\[ *[a-z][^[\],]*\] *(;.*)?$/i.test(plain)) return "wif";
    if (!/^[#.]+$/.test(plain)) return "recipe";
    if (plain.includes(".")) return "text chart";
  }
  return /[#.]/.test(text) ? "text chart" : "recipe";
}
