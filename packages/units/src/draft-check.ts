import type { Ground, ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";
import type { UnitDraft } from "./types.js";

/** The most interlacements that are worked out: as bits, a quarter of a gigabyte a grid. */
export const MOST_INTERLACEMENTS = 2 ** 31;

/** The most ends, and the most picks, that are worked out. */
export const MOST_THREADS = 2 ** 20;

/** The most shafts that all units hang on, and that all rows draw, together. */
const MOST_NAMED = 2 ** 25;

/** The size of a draft, worked out without its cloth. */
export interface DraftSize {
  /** Ends in the cloth, selvedges included. */
  readonly ends: number;
  /** Picks in the cloth. */
  readonly picks: number;
  /** Units. */
  readonly units: number;
  /** Rows of the lift plan. */
  readonly rows: number;
}

/** Refuses what is no draft at all. */
function needDraft(draft: UnitDraft | undefined): void {
  const { ground, lifts, threading } = draft ?? {};
  if ([ground?.threading, ground?.steps, lifts, threading].every(Array.isArray)) return;
  throw new UnitsError("wrong-argument", "a draft needs its ground, threading and lifts, as lists");
}

/**
 * The size of a draft's cloth, without working it out. Does not check the draft.
 * @param draft the draft to measure
 * @example draftSize(draft) // { ends: 6, picks: 12, units: 3, rows: 3 }
 */
export function draftSize(draft: UnitDraft): DraftSize {
  needDraft(draft);
  const units = draft.threading.length;
  const rows = draft.lifts.length;
  const { left = [], right = [] } = draft.selvedge ?? {};
  return {
    ends: left.length + total(draft.unitEnds, units) + right.length,
    picks: total(draft.picksPerRow, rows),
    units,
    rows,
  };
}

/** The sum of a size that is one for all or one entry each. */
function total(sizes: number | readonly number[], entries: number): number {
  return typeof sizes === "number" ? sizes * entries : sizes.reduce((sum, size) => sum + size, 0);
}

/**
 * Refuses a draft that cannot be expanded. A lift that draws a pattern shaft without units is no such draft: it can be
 * woven, and is a finding of the checker.
 * @param draft the draft to look at
 * @throws {UnitsError} `no-units`, `no-rows`, `bad-size`, `wrong-length`, `bad-shaft`, `repeated-shaft`,
 * `outside-harness`, `raised-and-sunk`, `too-large`
 * @example checkDraft({ ...draft, lifts: [] }) // throws no-rows
 */
export function checkDraft(draft: UnitDraft): void {
  needDraft(draft);
  const { threading, lifts, unitEnds, picksPerRow, selvedge = {} } = draft;
  if (threading.length === 0)
    throw new UnitsError("no-units", "the draft has no units; expected one or more");
  if (lifts.length === 0) throw new UnitsError("no-rows", "the lift plan has no rows; expected one or more");
  checkGround(draft.ground);
  checkSizes(unitEnds, threading.length, "unit", "ends");
  checkSizes(picksPerRow, lifts.length, "row", "picks");
  checkNamed(threading, "units");
  checkNamed(lifts, "rows");
  checkSets(threading, "unit");
  checkSets(lifts, "row");
  checkHarness(selvedge.left ?? [], draft.ground.shafts, "left selvedge, end");
  checkHarness(selvedge.right ?? [], draft.ground.shafts, "right selvedge, end");
  const { ends, picks } = draftSize(draft);
  if (ends > MOST_THREADS || picks > MOST_THREADS) {
    throw new UnitsError(
      "too-large",
      `the cloth has ${ends} ends and ${picks} picks; the most worked out is ${MOST_THREADS} of each`,
      { ends, picks, most: MOST_THREADS },
    );
  }
  if (ends * picks > MOST_INTERLACEMENTS) {
    throw new UnitsError(
      "too-large",
      `${ends} ends and ${picks} picks come to ${ends * picks} interlacements; the most worked out is ${MOST_INTERLACEMENTS}`,
      { ends, picks, most: MOST_INTERLACEMENTS },
    );
  }
}

/** Refuses a ground whose shafts lie outside its harness or are raised and sunk at once. */
function checkGround(ground: Ground): void {
  const { shafts, threading, steps } = ground;
  if (!Number.isSafeInteger(shafts) || shafts < 1) {
    throw new UnitsError(
      "bad-size",
      `the ground harness has ${shafts} shafts; expected a whole number from 1`,
      {
        shafts,
      },
    );
  }
  if (threading.length === 0 || steps.length === 0) {
    const what = threading.length === 0 ? "threading" : "treadling steps";
    throw new UnitsError("wrong-length", `the ground has no ${what}; expected one entry or more`);
  }
  checkHarness(threading, shafts, "ground threading, end");
  steps.forEach(({ raise, sink }, i) => {
    const step = `ground step ${i + 1}`;
    checkSet(raise, `${step}, raise`);
    checkSet(sink, `${step}, sink`);
    checkHarness(raise, shafts, `${step}, raise, entry`);
    checkHarness(sink, shafts, `${step}, sink, entry`);
    const sunk = new Set(sink);
    const shaft = raise.find((raised) => sunk.has(raised));
    if (shaft !== undefined) {
      throw new UnitsError(
        "raised-and-sunk",
        `${step} both raises and sinks ground shaft ${shaft}; expected one or neither`,
        { step: i + 1, shaft },
      );
    }
  });
}

/** Refuses entries that are no shaft of a ground harness. */
function checkHarness(entries: readonly number[], shafts: number, where: string): void {
  const at = entries.findIndex((shaft) => !Number.isInteger(shaft) || shaft < 1 || shaft > shafts);
  if (at < 0) return;
  throw new UnitsError(
    "outside-harness",
    `${where} ${at + 1} names ground shaft ${entries[at]}; the ground harness has shafts 1 to ${shafts}`,
    { shaft: entries[at]!, shafts, entry: at + 1 },
  );
}

/** Refuses sizes that are not whole numbers from 1, one for all or one each. */
function checkSizes(
  sizes: number | readonly number[],
  entries: number,
  each: "unit" | "row",
  things: "ends" | "picks",
): void {
  if (typeof sizes !== "number" && sizes.length !== entries) {
    throw new UnitsError(
      "wrong-length",
      `${things} are given for ${sizes.length} ${each}s; the draft has ${entries} ${each}s`,
      { found: sizes.length, expected: entries },
    );
  }
  const list = typeof sizes === "number" ? [sizes] : sizes;
  const at = list.findIndex((size) => !Number.isSafeInteger(size) || size < 1);
  if (at < 0) return;
  const which = typeof sizes === "number" ? `each ${each}` : `${each} ${at + 1}`;
  throw new UnitsError("bad-size", `${which} has ${list[at]} ${things}; expected a whole number from 1`, {
    entry: at + 1,
    found: list[at]!,
  });
}

/** Refuses sets that name more shafts together than are worked through. */
function checkNamed(sets: readonly ShaftSet[], things: "units" | "rows"): void {
  const named = sets.reduce((sum, set) => sum + set.length, 0);
  if (named <= MOST_NAMED) return;
  throw new UnitsError(
    "too-large",
    `the ${things} name ${named} shafts; the most worked out is ${MOST_NAMED}`,
    {
      named,
      most: MOST_NAMED,
    },
  );
}

/** Refuses sets that are not shaft numbers in ascending order. */
function checkSets(sets: readonly ShaftSet[], each: "unit" | "row"): void {
  const seen = new Set<ShaftSet>();
  sets.forEach((set, i) => {
    if (!seen.has(set)) checkSet(set, `${each} ${i + 1}`);
    seen.add(set);
  });
}

function checkSet(set: ShaftSet, where: string): void {
  for (let i = 0; i < set.length; i++) {
    const shaft = set[i]!;
    if (!Number.isSafeInteger(shaft) || shaft < 1) {
      throw new UnitsError("bad-shaft", `${where} names shaft ${shaft}; shafts are whole numbers from 1`, {
        shaft,
      });
    }
    if (i > 0 && shaft <= set[i - 1]!) {
      throw new UnitsError(
        "repeated-shaft",
        `${where} names shaft ${shaft} after shaft ${set[i - 1]}; expected each once, in ascending order`,
        { shaft },
      );
    }
  }
}
