import process from "node:process";
import { deflateSync } from "node:zlib";
import { expect, it } from "vitest";
import { writeChunks } from "../../src/charts/png/chunks.js";
import { FileError, formatRecipe, read } from "../../src/index.js";
import { processorTime } from "./processor-time.js";

/**
 * An eighth of a mebibyte of anything: what is not read in linear time takes minutes with it. `FUZZ_SIZE` makes it more;
 * the long fuzz of the package reads four times as much.
 */
const size = Number(process.env["FUZZ_SIZE"] ?? 2 ** 17);
/** Of the processor's time, which other work on the machine does not lengthen. */
const mostMilliseconds = 5000 * Math.max(1, size / 2 ** 17);

const recipe = `recipe: 1
ground: { shafts: 2, threading: 1 2, steps: [{ raise: 1, sink: 2 }, { raise: 2, sink: 1 }] }
units: { ends: 2, threading: 1 2 }
lifts:
  picks: 2
`;

/** A head, and after it one piece over and over, or the pieces that are made for 1, 2, 3 and so on. */
function long(head: string, piece: string | ((i: number) => string)): Uint8Array {
  const parts = [head];
  for (let i = 1, length = head.length; length < size; i++) {
    const part = typeof piece === "string" ? piece : piece(i);
    parts.push(part);
    length += part.length;
  }
  return bytesOf(parts.join(""));
}

/** So many pieces that they fill the file, where a piece takes one byte divided by the share. */
const share = (of: number) => Math.round(of * size);

const bytesOf = (text: string) => new TextEncoder().encode(text);

/** A recipe whose lifts are made of one block, and of the lines of its order. */
function ordered(block: string, line: string | ((i: number) => string)): Uint8Array {
  const lifts = `lifts:\n  picks: 2\n  blocks: { moth: { rows: [${block}] } }\n  order:\n`;
  return long(recipe.replace(/lifts:[\s\S]*/, lifts), line);
}

/** A recipe with another threading of its units. */
function threaded(threading: string): Uint8Array {
  return long(recipe.replace("threading: 1 2 }", `threading: ${threading} }`), "  rows: [1]\n");
}

/** A PNG of 8 by 8 greys, with these parts of compressed data. */
function png(...squares: readonly Uint8Array[]): Uint8Array {
  const header = Uint8Array.of(0, 0, 0, 8, 0, 0, 0, 8, 8, 0, 0, 0, 0);
  return writeChunks([{ type: "IHDR", data: header }, ...squares.map((data) => ({ type: "IDAT", data }))]);
}

it.each<[string, () => Uint8Array]>([
  ["rows in a list", () => long(`${recipe}  rows:\n`, "  - 1\n")],
  ["rows in a text", () => long(`${recipe}  rows: |\n`, "   1\n")],
  ["rows of all shafts", () => long(`${recipe}  rows: |\n`, (i) => `   ${(i % 1000) + 1}-100000\n`)],
  ["rows in a picture", () => long(`${recipe}  picture: |\n`, "    #.#.#.#.#.#.#.\n")],
  ["a picture in one row", () => long(`${recipe}  picture: |\n    `, "#.")],
  ["keys", () => long("", (i) => `k${i}: 1\n`)],
  ["the same key", () => long("", "recipe: 1\n")],
  ["a threading", () => long(recipe.replace("threading: 1 2 }", "threading:"), " 1")],
  [
    "brackets around a million units",
    () => threaded(`${"(".repeat(share(0.75))}1*999999${")".repeat(share(0.75))}`),
  ],
  [
    "units on all shafts",
    () => threaded(`(${Array.from({ length: share(0.27) }, (_, i) => i + 1).join("+")})*1000000`),
  ],
  ["rows of all shafts a million times", () => long(`${recipe}  rows:\n`, "  - 1-100000 *1000000\n")],
  ["changes of a block", () => ordered("1*900000", `    - moth${" upside-down".repeat(share(0.15))}\n`)],
  ["changes of blocks", () => ordered("1*900000", "    - moth mirrored fitted to 1 row\n")],
  ["changes to all shafts", () => ordered("1*900", "    - moth exchanged on 1-20000\n")],
  ["shafts of a change", () => ordered("1", `    - moth mirrored on${" 1".repeat(share(0.75))}\n`)],
  ["changes within changes", () => ordered("1", `    - moth${" *1 every-other".repeat(share(0.11))}\n`)],
  [
    "the same rows in many blocks",
    () =>
      long(
        `${recipe}  order: [a0]\n  blocks:\n    a0: { rows: &rows [${"1,".repeat(share(0.19))}1] }\n`,
        (i) => `    a${i}: { rows: *rows }\n`,
      ),
  ],
  [
    "a million rows in many blocks",
    () => long(`${recipe}  order: [a1]\n  blocks:\n`, (i) => `    a${i}: { rows: [1*1000000] }\n`),
  ],
  [
    "the same picture in many blocks",
    () =>
      long(
        `${recipe}  order: [a0]\n  blocks:\n    a0:\n      picture: &moth |\n${"        #.#\n".repeat(share(0.057))}`,
        (i) => `    a${i}: { picture: *moth }\n`,
      ),
  ],
  [
    "steps that move all shafts",
    () =>
      long("recipe: 1\nground:\n  shafts: 1024\n  threading: 1\n  steps:\n", (i) =>
        i === 1 ? "    - &all { raise: 1-512, sink: 513-1024 }\n" : "    - *all\n",
      ),
  ],
  [
    "wefts",
    () => {
      const names = Array.from({ length: share(0.015) }, (_, i) => `the-weft-${i}`);
      const steps = names.map((name) => `{ raise: 1, weft: ${name} }`).join(", ");
      const yarns = names.map((name) => `  ${name}: { count: 10/2 Ne }\n`).join("");
      return long(
        `${recipe.replace(/steps: .*/, `steps: [${steps}] }`)}  rows: [1]\nyarns:\n${yarns}`,
        "#\n",
      );
    },
  ],
  [
    "blank lines in a comment",
    () => bytesOf(`${recipe}  rows: [1]\n# a\n${"\n".repeat(share(0.75))}# b\ntitle: a\n`),
  ],
  ["brackets in a threading", () => long(`recipe: 1\nunits:\n  threading: `, "(")],
  ["blanks", () => long("recipe: 1\ntitle: a", " ")],
  ["escapes", () => long('recipe: 1\ntitle: "', "\\n")],
  ["anchors", () => long("", (i) => `- &a${i} *a${Math.max(1, i - 1)}\n`)],
  ["comments", () => long("a: 1\n", "#\n")],
  ["documents", () => long("", "---\n")],
  ["ends of a draft", () => long("[WIF]\n[THREADING]\n", (i) => `${i}=1\n`)],
  ["shafts of an end", () => long("[WIF]\n[THREADING]\n1=", "1,")],
  ["sections of a draft", () => long("[WIF]\n", (i) => `[S${i}]\n`)],
  ["semicolons", () => long("[WIF]\n[WARP]\nThreads=1", " ;")],
  ["blanks in a number", () => bytesOf(`[WIF]\n[WARP]\nThreads=1${" ".repeat(size)}x`)],
  [
    "blanks in a colour",
    () =>
      bytesOf(
        `[WIF]\n[WARP]\nThreads=1\n[WEFT]\nThreads=1\n[LIFTPLAN]\n[COLOR TABLE]\n1=1${" ".repeat(size)}x`,
      ),
  ],
  [
    "digits of a spacing",
    () => bytesOf(`[WIF]\n[WARP]\nThreads=1\nSpacing=${"1".repeat(size)}x\n[WEFT]\nThreads=1\n[LIFTPLAN]\n`),
  ],
  ["squares of a bitmap", () => long("P1\n200000 1\n", "0 ")],
  ["comments of a bitmap", () => long("P1\n", "#\n")],
  ["rows of a chart", () => long("", ".\n")],
  ["a chart in one row", () => long("", "#.")],
  ["a PNG that unpacks to a thousand times its size", () => png(deflateSync(new Uint8Array(2 ** 28)))],
  ["parts of a PNG", () => png(...Array.from({ length: share(0.15) }, () => new Uint8Array(0)))],
])("a long file of %s is answered soon", { timeout: 120_000 }, (_what, make) => {
  const bytes = make();
  const start = processorTime();
  try {
    const { kind } = read(bytes, "long");
    if (kind === "recipe") formatRecipe(bytes, "long");
  } catch (error) {
    expect(error).toBeInstanceOf(FileError);
    expect((error as FileError).message.length).toBeLessThan(1500);
  }
  expect(processorTime() - start).toBeLessThan(mostMilliseconds);
});
