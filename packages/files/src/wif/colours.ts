import type { Colour } from "../charts/colours.js";
import type { Ini } from "./ini.js";
import { badValue, numbered, numberList } from "./values.js";

/** The most colours of a palette. */
const mostColours = 2 ** 16;

/**
 * The colour table by number, its values brought from the palette's range to 0 to 255. Empty when the file has none.
 * @throws {FileError} `bad-draft` for a range without width, and for a colour outside it
 */
export function readPalette(ini: Ini): ReadonlyMap<number, Colour> {
  const table = ini.sections.get("color table");
  if (table === undefined) return new Map();
  const range = ini.sections.get("color palette")?.entries.get("range");
  const [least = 0, most = 255] = range === undefined ? [] : numberList(ini, range);
  if (range !== undefined && !(most > least)) {
    throw badValue(ini, range, `the colours range from ${least} to ${most}; expected the lower number first`);
  }
  return new Map(
    numbered(ini, table, mostColours, "colours").map(([number, entry]) => {
      const parts = numberList(ini, entry);
      if (parts.length !== 3 || parts.some((part) => part < least || part > most)) {
        const sentence = `colour ${number} is ${entry.value.slice(0, 40)}; expected red, green and blue from ${least} to ${most}`;
        throw badValue(ini, entry, sentence);
      }
      return [number, colourOf(parts.map((part) => ((part - least) / (most - least)) * 255))];
    }),
  );
}

function colourOf(parts: readonly number[]): Colour {
  return `#${parts.map((part) => Math.round(part).toString(16).padStart(2, "0")).join("")}`;
}
