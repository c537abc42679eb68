import type { ThreadLook, ThreadMeasure, ThreadUnit } from "@drawcord/check";
import type { Colour } from "@drawcord/draw";
import { printable } from "../printable.js";
import type { Entry, Ini } from "./ini.js";
import { badValue, bare, decimal, numbered, numberList, tried } from "./values.js";

const threadUnits: readonly ThreadUnit[] = ["centimeters", "inches", "decipoints"];

/**
 * How the threads of a system look and lie: the section `[WARP]` or `[WEFT]`, and what single threads have of their own.
 * What cannot be read is told, and left out.
 */
export function readLook(
  ini: Ini,
  system: "warp" | "weft",
  threads: number,
  palette: ReadonlyMap<number, Colour>,
): ThreadLook {
  const units = ini.sections.get(system)?.entries.get("units");
  return {
    ...readColours(ini, system, threads, palette),
    ...unitOf(tried(ini, units, readUnit)),
    ...readMeasure(ini, system, threads, "spacing"),
    ...readMeasure(ini, system, threads, "thickness"),
  };
}

/** The colours of the threads; threads without one have the system's, and where that is missing too, colour 1. */
function readColours(
  ini: Ini,
  system: string,
  threads: number,
  palette: ReadonlyMap<number, Colour>,
): Pick<ThreadLook, "colours"> {
  const general = ini.sections.get(system)?.entries.get("color");
  const own = ini.sections.get(`${system} colors`);
  if (palette.size === 0 || (general === undefined && own === undefined)) return {};
  const colourOf = (_: Ini, entry: Entry): Colour => {
    const number = numberList(ini, entry)[0]!;
    const colour = palette.get(number);
    if (colour === undefined) throw badValue(ini, entry, `colour ${number} is not in the colour table`);
    return colour;
  };
  const all = tried(ini, general, colourOf) ?? palette.get(1) ?? "#000000";
  const colours = new Array<Colour>(threads).fill(all);
  if (own !== undefined) {
    for (const [thread, entry] of numbered(ini, own, threads, "threads"))
      colours[thread - 1] = tried(ini, entry, colourOf) ?? all;
  }
  return { colours };
}

function readMeasure<Name extends "spacing" | "thickness">(
  ini: Ini,
  system: string,
  threads: number,
  name: Name,
): { readonly [key in Name]?: ThreadMeasure } {
  const section = ini.sections.get(system)?.entries;
  const general = section?.get(name);
  const own = ini.sections.get(`${system} ${name}`);
  if (general === undefined && own === undefined) return {};
  const all = tried(ini, general, decimal);
  const each = own === undefined ? undefined : new Array<number>(threads).fill(all ?? 0);
  if (own !== undefined && each !== undefined) {
    for (const [thread, entry] of numbered(ini, own, threads, "threads"))
      each[thread - 1] = tried(ini, entry, decimal) ?? all ?? 0;
  }
  const measure: ThreadMeasure = {
    ...(all === undefined ? {} : { all }),
    ...(each === undefined ? {} : { each }),
  };
  return { [name]: measure } as { [key in Name]: ThreadMeasure };
}

function unitOf(unit: ThreadUnit | undefined): Pick<ThreadLook, "unit"> {
  return unit === undefined ? {} : { unit };
}

function readUnit(ini: Ini, entry: Entry): ThreadUnit {
  const word = bare(entry).toLowerCase();
  const unit = threadUnits.find((name) => name === word);
  if (unit !== undefined) return unit;
  throw badValue(
    ini,
    entry,
    `units=${printable(bare(entry), 40)}: expected Centimeters, Inches or Decipoints`,
  );
}
