import type { ShaftDraft, Shedding } from "@drawcord/check";
/**
 * Reads WIF 1.1, the interchange format for weaving drafts (Weaving Information File, 1997). Its sections and keys are
 * given from memory.
 */
import type { ShaftSet } from "@drawcord/ground";
import { MOST_INTERLACEMENTS, MOST_THREADS } from "@drawcord/units";
import { FileError, type Problem } from "../error.js";
import { top } from "../place.js";
import { readText } from "../text.js";
import { attempt, inOrder, noProblems } from "../tree/problems.js";
import { readPalette } from "./colours.js";
import { type Ini, readIni, type WifSection } from "./ini.js";
import { coloured, known } from "./sections.js";
import { readLook } from "./threads.js";
import { badValue, isFalse, numbered, numberSet, tried, truth, wholeNumber } from "./values.js";

/** The most shafts, and the most treadles, of a draft. */
const mostShafts = 4096;
/** The most shafts that all treadlings that differ may move together. */
const mostMoved = 20_000_000;

/** What there is to be read in the text of a draft, and all that is wrong with it. */
export interface WifReading {
  /**
   * The draft, without what cannot be read: a thread whose entry cannot be read hangs on no shaft; left out where there is no
   * cloth to be made of the text. With problems it is good for looking at, not for keeping.
   */
  readonly draft?: ShaftDraft;
  /** The sections that were not used, by name, as they are written, in the order of the file. */
  readonly ignored: readonly string[];
  /** All that is wrong, in the order of the text; a text without a problem is a sound draft. */
  readonly problems: readonly Problem[];
}

/** A draft without a problem. */
export interface SoundWif extends Omit<WifReading, "problems"> {
  /** The draft, whole. */
  readonly draft: ShaftDraft;
}

/**
 * Reads a WIF file. Any letter case and line end, a byte order mark, UTF-8 or Latin-1 (with the letters that Windows
 * adds), sparse keys and comments are taken. A section that the contents list as false is not used. A draft with both a
 * treadling and a lift plan is read by its treadling, unless that moves nothing. Whatever is wrong is told, and the rest is
 * read.
 * @param source the bytes of the file, or its text
 * @param file the name that problems bear
 * @example readWif("[WIF]\n[THREADING]\n1=1\n2=q\n[LIFTPLAN]\n1=x\n", "towel.wif").problems.map(({ line }) => line) // [4, 6]
 */
export function readWif(source: Uint8Array | string, file: string): WifReading {
  let ini: Ini | undefined;
  try {
    ini = readIni(readText(source, file, { latin1: true }), file, known);
    const reading = readSections(ini);
    return { ...reading, problems: inOrder(ini.problems.found) };
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    return { ignored: [], problems: inOrder([...(ini?.problems.found ?? []), ...error.problems]) };
  }
}

/**
 * Reads a WIF file that must be without a problem.
 * @param source the bytes of the file, or its text
 * @param file the name that errors bear
 * @throws {FileError} that says the first problem and bears them all: `not-text`, `bad-draft`, `newer-version`, `too-large`
 * @example soundWif(writeWif(draft), "towel.wif").draft.threading // [[1], [2], [1], [2]]
 */
export function soundWif(source: Uint8Array | string, file: string): SoundWif {
  const { draft, ignored, problems } = readWif(source, file);
  const [first] = problems;
  if (first !== undefined) throw new FileError(first.code, first.sentence, file, first, problems);
  return { draft: draft!, ignored };
}

/** The draft of a text taken apart; what is wrong with it is told. */
function readSections(whole: Ini): Omit<WifReading, "problems"> {
  checkVersion(whole);
  const ini = { ...whole, sections: listedSections(whole) };
  const counts = readCounts(ini);
  const threading = readThreads(ini, "threading", counts.ends, counts.shafts, "shafts");
  const shedding = readShedding(ini, counts);
  const rising = ini.sections.get("weaving")?.entries.get("rising shed");
  const palette = readPalette(ini);
  const title = textOf(ini, "title");
  const author = textOf(ini, "author");
  const notes = readNotes(ini);
  const draft: ShaftDraft = {
    ...(title === undefined ? {} : { title }),
    ...(author === undefined ? {} : { author }),
    ...(notes.length === 0 ? {} : { notes }),
    shafts: counts.shafts,
    threading,
    shedding,
    rising: tried(ini, rising, truth) ?? true,
    warp: readLook(ini, "warp", counts.ends, palette),
    weft: readLook(ini, "weft", counts.picks, palette),
  };
  const used = new Set([...ini.sections.keys()].filter((name) => known.includes(name)));
  for (const name of shedding.kind === "tie-up" ? ["liftplan"] : ["tieup", "treadling"]) used.delete(name);
  if (palette.size === 0) for (const name of coloured) used.delete(name);
  const ignored = [...whole.sections].filter(([name]) => !used.has(name)).map(([, { name }]) => name);
  return { draft, ignored };
}

/** The sections without those that the contents list as false. */
function listedSections({ sections }: Ini): Ini["sections"] {
  const contents = sections.get("contents")?.entries;
  const isListed = (name: string) => {
    const entry = contents?.get(name);
    return entry === undefined || !isFalse(entry);
  };
  return new Map([...sections].filter(([name]) => name === "wif" || name === "contents" || isListed(name)));
}

function checkVersion(ini: Ini): void {
  const section = ini.sections.get("wif");
  if (section === undefined) {
    throw new FileError("bad-draft", "this is no weaving draft: it has no section [WIF]", ini.file, top);
  }
  const version = section.entries.get("version");
  if (version === undefined || !(Number.parseFloat(version.value) >= 2)) return;
  const sentence = `the draft is in version ${version.value.slice(0, 20)} of the format; version 1.1 is read`;
  throw badValue(ini, version, sentence, "newer-version");
}

interface Counts {
  readonly ends: number;
  readonly picks: number;
  readonly shafts: number;
  readonly treadles: number;
}

/** How many of everything there are: as stated, or up to the highest that is named. */
function readCounts(ini: Ini): Counts {
  const stated = (section: string, key: string, most: number) => {
    const entry = ini.sections.get(section)?.entries.get(key);
    return tried(ini, entry, (of, one) => wholeNumber(of, one, most)) ?? 0;
  };
  const named = (...sections: readonly string[]) =>
    sections
      .flatMap((name) => ini.sections.get(name) ?? [])
      .reduce((most, section) => Math.max(most, highest(section)), 0);
  const valued = (section: string, most: number) =>
    [...(ini.sections.get(section)?.entries.values() ?? [])].reduce((highest, entry) => {
      // What cannot be read is told where the section itself is.
      const numbers = attempt(noProblems(), () => numberSet(ini, entry, most, "numbers"));
      return Math.max(highest, numbers?.at(-1) ?? 0);
    }, 0);
  const ends = stated("warp", "threads", MOST_THREADS) || Math.min(named("threading"), MOST_THREADS);
  const picks =
    stated("weft", "threads", MOST_THREADS) || Math.min(named("treadling", "liftplan"), MOST_THREADS);
  const shafts =
    stated("weaving", "shafts", mostShafts) ||
    Math.max(valued("threading", mostShafts), valued("tieup", mostShafts), valued("liftplan", mostShafts));
  const treadles =
    stated("weaving", "treadles", mostShafts) || Math.max(named("tieup"), valued("treadling", mostShafts));
  if (ends === 0) throw lacking(ini, "the draft has no ends: it needs [THREADING]");
  if (picks === 0) throw lacking(ini, "the draft has no picks: it needs [TREADLING] or [LIFTPLAN]");
  if (ends * picks > MOST_INTERLACEMENTS) {
    const sentence = `${ends} ends and ${picks} picks come to ${ends * picks} interlacements; up to ${MOST_INTERLACEMENTS} are worked out`;
    throw new FileError("too-large", sentence, ini.file, top);
  }
  return { ends, picks, shafts, treadles: Math.min(treadles, mostShafts) };
}

function highest(section: WifSection): number {
  let most = 0;
  for (const key of section.entries.keys()) if (/^\d+$/.test(key)) most = Math.max(most, Number(key));
  return most;
}

/** The shafts or treadles of each thread; a thread that is not named has none. */
function readThreads(
  ini: Ini,
  name: string,
  threads: number,
  most: number,
  things: string,
): readonly ShaftSet[] {
  const none: ShaftSet = [];
  const sets = new Array<ShaftSet>(threads).fill(none);
  const section = ini.sections.get(name);
  if (section === undefined) return sets;
  const kind = name === "threading" ? "ends" : name === "tieup" ? "treadles" : "picks";
  for (const [number, entry] of numbered(ini, section, threads, kind)) {
    sets[number - 1] = tried(ini, entry, (of, one) => numberSet(of, one, most, things)) ?? none;
  }
  return sets;
}

function readShedding(ini: Ini, { picks, shafts, treadles }: Counts): Shedding {
  const lifted = ini.sections.has("liftplan");
  if (ini.sections.has("treadling") && ini.sections.has("tieup")) {
    const tieUp = readThreads(ini, "tieup", treadles, shafts, "shafts");
    const treadling = readThreads(ini, "treadling", picks, treadles, "treadles");
    checkMoved(ini, tieUp, treadling);
    // Some programs write these two sections empty beside a lift plan.
    const isEmpty = [tieUp, treadling].some((sets) => sets.every((set) => set.length === 0));
    if (!(lifted && isEmpty)) return { kind: "tie-up", tieUp, treadling };
  }
  if (lifted) {
    return { kind: "lift-plan", liftPlan: readThreads(ini, "liftplan", picks, shafts, "shafts") };
  }
  throw lacking(ini, "the draft moves no shafts: it needs [TIEUP] and [TREADLING], or [LIFTPLAN]");
}

/** The error of a draft without a section that it needs. */
function lacking(ini: Ini, sentence: string): FileError {
  const denied = [...(ini.sections.get("contents")?.entries.values() ?? [])].some(isFalse);
  const hint = denied ? "; what [CONTENTS] lists as false is not read" : "";
  return new FileError("bad-draft", sentence + hint, ini.file, top);
}

/** Refuses a treadling that would take more memory to work out than a draft may. */
function checkMoved(ini: Ini, tieUp: readonly ShaftSet[], treadling: readonly ShaftSet[]): void {
  const seen = new Set<string>();
  let moved = 0;
  for (const treadles of treadling) {
    const key = treadles.join(" ");
    if (seen.has(key)) continue;
    seen.add(key);
    for (const treadle of treadles) moved += tieUp[treadle - 1]?.length ?? 0;
    if (moved <= mostMoved) continue;
    throw new FileError("too-large", `the treadling moves more than ${mostMoved} shafts`, ini.file, top);
  }
}

function textOf(ini: Ini, key: string): string | undefined {
  return ini.sections.get("text")?.entries.get(key)?.value || undefined;
}

/** The notes, line by line in the order of their numbers. */
function readNotes(ini: Ini): readonly string[] {
  const section = ini.sections.get("notes");
  if (section === undefined) return [];
  return [...section.entries.values()]
    .filter(({ key }) => /^\d+$/.test(key))
    .sort((a, b) => Number(a.key) - Number(b.key))
    .map(({ value }) => value);
}
