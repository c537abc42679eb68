/** What the page writes down on the device, and how it is read again. */
import type { FollowPlan } from "../plan/types.js";
import type { LogEntry, Mark } from "./log.js";
import { placeWithin, START, type WarpPlace } from "./place.js";

/** What is kept of one warp. */
export interface Kept {
  /** The cloth that it was kept for, by `FollowPlan.cloth`. */
  readonly cloth: string;
  /** Where the weaver is. */
  readonly place: WarpPlace;
  /** Who weaves now, and who has woven. */
  readonly weaver: string;
  /** Who wove, by name. */
  readonly weavers: readonly string[];
  /** Who wove what, the first first. */
  readonly log: readonly LogEntry[];
  /** The slips that were marked. */
  readonly marks: readonly Mark[];
}

/** What was read, and what is to be said of it. */
export interface KeptReading {
  readonly kept: Kept;
  /** Whether the recipe has changed since, so that the place must be looked at. */
  readonly changed: boolean;
  /** Whether there was something that could not be read. */
  readonly unreadable: boolean;
}

/**
 * The name under which a warp's place is kept.
 * @example keptUnder(plan).startsWith("drawcord follow ") // true
 */
export function keptUnder({ warp }: FollowPlan): string {
  return `drawcord follow ${warp}`;
}

/**
 * Reads what was kept. Nothing, or what cannot be read, is a warp not yet begun.
 * @param text what `JSON.stringify` made of a `Kept`, or nothing
 * @example readKept(plan, null).kept.place // { turn: 0, woven: 0 }
 */
export function readKept(plan: FollowPlan, text: string | null): KeptReading {
  const fresh: Kept = { cloth: plan.cloth, place: START, weaver: "", weavers: [], log: [], marks: [] };
  if (text === null) return { kept: fresh, changed: false, unreadable: false };
  const found = parsed(text);
  if (!isKept(found)) return { kept: fresh, changed: false, unreadable: true };
  return {
    kept: { ...found, cloth: plan.cloth, place: placeWithin(plan, found.place) },
    changed: found.cloth !== plan.cloth,
    unreadable: false,
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isKept(found: unknown): found is Kept {
  if (typeof found !== "object" || found === null) return false;
  const { cloth, place, weaver, weavers, log, marks } = found as Partial<Record<keyof Kept, unknown>>;
  return (
    typeof cloth === "string" &&
    typeof weaver === "string" &&
    isPlace(place) &&
    isListOf(weavers, (name) => typeof name === "string") &&
    isListOf(log, (entry) => has(entry, ["turn", "from", "to", "began", "ended"], ["weaver", "did"])) &&
    isListOf(marks, (mark) => has(mark, ["turn", "pick", "at"], ["weaver", "note"]))
  );
}

function isPlace(found: unknown): found is WarpPlace {
  return has(found, ["turn", "woven"], []);
}

function isListOf(found: unknown, fits: (one: unknown) => boolean): boolean {
  return Array.isArray(found) && found.every(fits);
}

function has(found: unknown, numbers: readonly string[], texts: readonly string[]): boolean {
  if (typeof found !== "object" || found === null) return false;
  const fields = found as Readonly<Record<string, unknown>>;
  return (
    numbers.every((name) => typeof fields[name] === "number") &&
    texts.every((name) => typeof fields[name] === "string")
  );
}
