import { DrawcordError } from "@drawcord/base";
import { findCauses, mend } from "@drawcord/causes";
import { check, checkGrid } from "@drawcord/check";
import { drawPixels, drawSvg } from "@drawcord/draw";
import {
  draftPlaces,
  formatRecipe,
  kindOf,
  read,
  readInkedPng,
  readPbm,
  readPng,
  readRecipe,
  readTextChart,
  readWif,
  soundRecipe,
  soundWif,
  writePbm,
  writePng,
} from "@drawcord/files";
import { followPlan } from "@drawcord/follow";
import * as grid from "@drawcord/grid";
import { groundFromWeave, parseWeave } from "@drawcord/ground";
import { exerciseOf } from "@drawcord/lesson";
import { checkRecipe } from "@drawcord/review";
import { makeSheet } from "@drawcord/sheet";
import {
  checkDraft,
  draftSize,
  expand,
  liftPlaces,
  parseLifts,
  parseRows,
  parseShafts,
  parseThreading,
} from "@drawcord/units";
import { parseQuantity, parseReed, parseSley, parseYarn, tex } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";

const nonsense = [undefined, null, {}, Number.NaN, 42, true, [], [[]], () => "", Symbol("moth"), new Date(0)];

/** The functions that a text, a draft, a grid, a recipe or a file comes in by. */
const doors = {
  ...{ parseThreading, parseRows, parseShafts, parseWeave, groundFromWeave },
  ...{ parseQuantity, parseReed, parseSley, parseYarn, tex },
  ...{ parseLifts, liftPlaces },
  ...{ expand, checkDraft, draftSize, check, findCauses, mend },
  ...{ checkGrid, drawPixels, drawSvg, writePng, writePbm },
  ...{ toText: grid.toText, mirror: grid.mirror, turn: grid.turn, transpose: grid.transpose },
  ...{ upsideDown: grid.upsideDown, complement: grid.complement, rowCounts: grid.rowCounts },
  ...{ columnCounts: grid.columnCounts, toBooleans: grid.toBooleans, fromData: grid.fromData },
  ...{ fromText: grid.fromText, tile: grid.tile, crop: grid.crop, paste: grid.paste, and: grid.and },
  ...{ kindOf, read, readRecipe, soundRecipe, formatRecipe, readWif, soundWif, draftPlaces },
  ...{ readTextChart, readPng, readPbm, readInkedPng },
  ...{ checkRecipe, makeSheet, followPlan, exerciseOf },
};

describe.each(Object.entries(doors))("%s", (_, door) => {
  it("answers nonsense as a caller's mistake, with a code and a sentence", () => {
    for (const value of nonsense) {
      let thrown: unknown;
      try {
        (door as (...args: readonly unknown[]) => unknown)(value, "moth");
      } catch (error) {
        thrown = error;
      }
      expect(thrown, String(value)).toBeInstanceOf(DrawcordError);
      expect((thrown as DrawcordError).code).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect((thrown as DrawcordError).message).not.toMatch(/is not a function|undefined \(|Cannot read/);
    }
  });
});

it("text or bytes are one to the door that tells the kind of a file", () => {
  for (const text of ["[WIF]\nVersion=1.1", "#.\n.#", "recipe: 1", "P1 1 1 0", "\uFEFF[WIF]\n"]) {
    expect(kindOf(text)).toBe(kindOf(new TextEncoder().encode(text)));
    expect(kindOf(Buffer.from(text))).toBe(kindOf(text));
  }
});
