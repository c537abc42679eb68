import { parseThreading, type UnitShafts } from "@drawcord/units";
import { type Spot, textOf } from "../tree/spot.js";
import { readable } from "./notation.js";

/**
 * The units of a threading; a word that has no meaning is told, and stands for a static unit.
 * @throws {FileError} `bad-notation`, `too-large`; {Unread}
 */
export function readThreading(of: Spot, staticShaft: number | undefined): readonly UnitShafts[] {
  return parseThreading(readableThreading(of), staticShaft === undefined ? {} : { staticShaft });
}

/** The text of a threading as far as it can be read; what cannot is told. */
export function readableThreading(of: Spot): string {
  const read = (text: string) => parseThreading(text);
  return readable(of, textOf(of), 0, { read, filler: "X", nothing: "X" });
}

/** How many pattern shafts the units hang on. */
export function highestShaft(threading: readonly UnitShafts[]): number {
  return threading.reduce((most, unit) => Math.max(most, unit.at(-1) ?? 0), 0);
}
