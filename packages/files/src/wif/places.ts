import type { Range } from "@drawcord/base";
import { readText } from "../text.js";
import { type Ini, readIni } from "./ini.js";
import { known } from "./sections.js";

/** Where everything of a draft stands in its text. Threads and treadles count from 1. */
export interface DraftPlaces {
  /**
   * The shafts of an end; undefined where none are written for it.
   * @param end the end, from 1
   */
  end(end: number): Range | undefined;
  /**
   * The treadles of a pick, or the shafts that it lifts; undefined where none are written for it.
   * @param pick the pick, from 1
   */
  pick(pick: number): Range | undefined;
  /**
   * The shafts that a treadle is tied to; undefined where none are written for it.
   * @param treadle the treadle, from 1
   */
  treadle(treadle: number): Range | undefined;
  /**
   * The value of a key of a section, in any letter case; undefined where there is none.
   * @param section the section's name, without its brackets
   * @param key the key's name
   */
  at(section: string, key: string): Range | undefined;
}

/**
 * The places of a draft in the text that it was read from.
 * @param source the bytes of the file, or its text
 * @param file the name that the places bear
 * @throws {FileError} `not-text`, `too-large`, `empty`, `too-many-parts` for what cannot be taken apart
 * @example draftPlaces("[WIF]\n[THREADING]\n1=1\n2=12\n", "towel.wif").end(2) // { file: "towel.wif", line: 4, column: 3, offset: 24, end: { line: 4, column: 5, offset: 26 } }
 */
export function draftPlaces(source: Uint8Array | string, file: string): DraftPlaces {
  const ini = readIni(readText(source, file, { latin1: true }), file, known);
  const at = (section: string, key: string | number) => entryPlace(ini, section, String(key));
  return {
    end: (end) => at("threading", end),
    pick: (pick) => at("treadling", pick) ?? at("liftplan", pick),
    treadle: (treadle) => at("tieup", treadle),
    at,
  };
}

function entryPlace({ file, place, sections }: Ini, section: string, key: string): Range | undefined {
  const entry = sections.get(section.toLowerCase())?.entries.get(key.toLowerCase());
  return entry && { file, ...place(entry.offset, entry.offset + entry.value.length) };
}
