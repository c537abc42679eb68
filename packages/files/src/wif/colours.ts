import { type Colour, colourOf } from "@drawcord/draw";
import { printable } from "../printable.js";
import { tell } from "../tree/problems.js";
import type { Ini } from "./ini.js";
import { badValue, bare, numbered, numberList, tried } from "./values.js";

/** The most colours of a palette. */
const mostColours = 2 ** 16;

/**
 * The colour table by number, its values brought from the palette's range to 0 to 255. Empty when the file has none, or
 * has its colours in another form than red, green and blue. A range without width, and a colour outside it, are told and
 * left out.
 */
export function readPalette(ini: Ini): ReadonlyMap<number, Colour> {
  const table = ini.sections.get("color table");
  const palette = ini.sections.get("color palette")?.entries;
  const form = palette?.get("form");
  if (table === undefined || (form !== undefined && bare(form).toLowerCase() !== "rgb")) return new Map();
  const range = palette?.get("range");
  const ends = range === undefined ? [0, 255] : tried(ini, range, numberList);
  if (ends === undefined) return new Map();
  const [least = 0, most = 0] = ends;
  if (range !== undefined && ends.length !== 2) {
    tell(ini.problems, badValue(ini, range, "the range of the colours has two numbers, such as 0,255"));
    return new Map();
  }
  if (range !== undefined && !(most > least)) {
    const sentence = `the colours range from ${least} to ${most}; expected the lower number first`;
    tell(ini.problems, badValue(ini, range, sentence));
    return new Map();
  }
  return new Map(
    numbered(ini, table, mostColours, "colours").flatMap(([number, entry]): [number, Colour][] => {
      const parts = tried(ini, entry, numberList);
      if (parts === undefined) return [];
      if (parts.length !== 3 || parts.some((part) => part < least || part > most)) {
        const sentence = `colour ${number} is ${printable(bare(entry), 40)}; expected red, green and blue from ${least} to ${most}`;
        tell(ini.problems, badValue(ini, entry, sentence));
        return [];
      }
      const [red, green, blue] = parts.map((part) => Math.round(((part - least) / (most - least)) * 255));
      return [[number, colourOf([red!, green!, blue!])]];
    }),
  );
}
