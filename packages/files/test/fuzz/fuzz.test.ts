import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { fromText } from "@drawcord/grid";
import { describe, expect, it } from "vitest";
import { crc32 } from "../../src/charts/png/crc.js";
import {
  draftOfRecipe,
  FileError,
  formatRecipe,
  read,
  soundRecipe,
  starterRecipe,
  writePbm,
  writePng,
  writeTextChart,
  writeWif,
} from "../../src/index.js";
import { meaning } from "../recipe/meaning.js";
import { leastRecipe, wholeRecipe } from "../samples.js";
import { mutate, type Random, randomFrom } from "./mutate.js";
import { processorTime } from "./processor-time.js";

/** Broken files of each kind, and half as many recipes; `FUZZ_RUNS` and `FUZZ_SEED` make it more, or others: see `fuzz` in the manifest. */
const runs = Number(process.env["FUZZ_RUNS"] ?? 3000);
const seed = Number(process.env["FUZZ_SEED"] ?? 1125);
/** No small file may take more of the processor's time, on the slowest of machines. */
const mostMilliseconds = 5000;

/** Inputs that once broke something stay here, and new ones come here. */
const kept = fileURLToPath(new URL("kept/", import.meta.url));

/**
 * Reads a file; anything but a reading or a sentence with its place is a fault of the reader. A recipe that is read is laid
 * out too, where asked for: that must leave what it means alone, and be done with in one go.
 */
function tryToRead(bytes: Uint8Array, { layOut = false } = {}): "read" | "refused" {
  const start = processorTime();
  try {
    const { kind } = read(bytes, "fuzz");
    if (kind === "recipe" && layOut) {
      const laidOut = formatRecipe(bytes, "fuzz");
      expect(meaning(laidOut)).toEqual(meaning(bytes));
      expect(formatRecipe(laidOut, "fuzz")).toBe(laidOut);
    }
    return "read";
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    expect(error.message).toMatch(/^fuzz:[1-9]\d*:[1-9]\d*: \S.{3,1500}$/);
    // No control character of the file reaches a terminal.
    expect(error.message).not.toMatch(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/u);
    return "refused";
  } finally {
    expect(processorTime() - start).toBeLessThan(mostMilliseconds);
  }
}

/** As `tryToRead`; keeps the input for ever when the reader fails. */
function tryAndKeep(bytes: Uint8Array, name: string, options: { layOut: boolean }): "read" | "refused" {
  try {
    return tryToRead(bytes, options);
  } catch (error) {
    mkdirSync(kept, { recursive: true });
    writeFileSync(`${kept}/${name}`, bytes);
    throw error;
  }
}

const encode = (text: string) => new TextEncoder().encode(text);
const moth = fromText("#..#\n.##.\n####");
const recipe = soundRecipe(leastRecipe, "least");
const blocks = `recipe: 1
ground: { weave: satin, ends: 5 }
units: { ends: 5 5 10, threading: (1-2) X }
lifts:
  picks: 5
  blocks: { moth: { rows: [1, 1 2] }, line: { picture: "#.\\n.#" } }
  order: [moth *2 every-other turned, line exchanged on 1-2, moth framed 1 row of 1]
`;

const whole: Readonly<Record<string, readonly Uint8Array[]>> = {
  recipe: [leastRecipe, blocks, wholeRecipe, starterRecipe(), formatRecipe(blocks, "blocks")].map(encode),
  wif: [writeWif(draftOfRecipe(recipe)), writeWif(draftOfRecipe(recipe, { shedding: "tie-up" }))].map(encode),
  chart: [encode(writeTextChart(moth)), writePbm(moth), writePbm(moth, { kind: "P1" })],
  png: [writePng(moth), writePng(moth, { scale: 3, warp: "#b8860b" })],
};

/** Puts the check sums of a PNG right again, so that its faults get past them. */
function sealed(bytes: Uint8Array): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  for (let offset = 8; offset + 12 <= copy.length; ) {
    const end = offset + 12 + view.getUint32(offset);
    if (end > copy.length) break;
    view.setUint32(end - 4, crc32(copy.subarray(offset + 4, end - 4)));
    offset = end;
  }
  return copy;
}

function broken(kind: string, files: readonly Uint8Array[], random: Random): Uint8Array {
  const bytes = mutate(files[Math.floor(random() * files.length)]!, random);
  return kind === "png" && random() < 0.8 ? sealed(bytes) : bytes;
}

describe("a broken file is read or refused in a sentence with its place, and soon", () => {
  it.each(Object.entries(whole))("%s", { timeout: 120_000 + 20 * runs }, (kind, files) => {
    const random = randomFrom(seed);
    // A recipe takes some ten times as long as a file of another kind.
    const times = kind === "recipe" ? runs / 2 : runs;
    const seen = { read: 0, refused: 0 };
    for (const file of files) expect(tryToRead(file)).toBe("read");
    for (let run = 0; run < times; run++) {
      const bytes = broken(kind, files, random);
      // To lay a recipe out takes long, so it is done to some of them.
      seen[tryAndKeep(bytes, `${kind}-${seed}-${run}.input`, { layOut: run % 8 === 0 })]++;
    }
    // Some faults are harmless and some are not: else the faults would prove nothing.
    expect(seen.read).toBeGreaterThan(times / 200);
    expect(seen.refused).toBeGreaterThan(times / 5);
  });
});

describe("what once broke something", () => {
  const names = readdirSync(kept).sort();

  it("is kept", () => {
    expect(names.length).toBeGreaterThan(4);
  });

  it.each(names)("%s is refused, or read and laid out", (name) => {
    expect(["read", "refused"]).toContain(tryToRead(readFileSync(`${kept}/${name}`), { layOut: true }));
  });
});
