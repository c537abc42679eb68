import type { Ground, ShaftSet } from "@drawcord/ground";
import { UnitsError, type UnitsErrorCode } from "./error.js";
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
  needEntries(threading, "no-units", "the draft has no units");
  needEntries(lifts, "no-rows", "the lift plan has no rows");
  checkGround(draft.ground);
  checkSizes(unitEnds, threading.length, "unit", "ends");
  checkSizes(picksPerRow, lifts.length, "row", "picks");
  checkSets(threading, "unit");
  checkSets(lifts, "row");
  checkHarness(selvedge.left ?? [], draft.ground.shafts, "left selvedge, end");
  checkHarness(selvedge.right ?? [], draft.ground.shafts, "right selvedge, end");
  const { ends, picks } = draftSize(draft);
  if (ends > MOST_THREADS || picks > MOST_THREADS || ends * picks > MOST_INTERLACEMENTS) {
    throw new UnitsError(
      "too-large",
      `the cloth has ${ends} ends and ${picks} picks; the most worked out is ${MOST_THREADS} of each and ${MOST_INTERLACEMENTS} interlacements`,
      { ends, picks, most: MOST_INTERLACEMENTS },
    );
  }
}

/** Refuses a list with nothing in it. */
function needEntries(list: readonly unknown[], code: UnitsErrorCode, sentence: string): void {
  if (list.length === 0) throw new UnitsError(code, `${sentence}; expected one or more`);
}

/** Whether a number counts things, from 1. */
const isCount = (value: number) => Number.isSafeInteger(value) && value > 0;

/** Refuses a ground whose shafts lie outside its harness or are raised and sunk at once. */
function checkGround(ground: Ground): void {
  const { shafts, threading, steps } = ground;
  if (!isCount(shafts)) {
    throw new UnitsError(
      "bad-size",
      `the ground harness has ${shafts} shafts; expected a whole number from 1`,
      {
        shafts,
      },
    );
  }
  needEntries(threading, "wrong-length", "the ground has no threading");
  needEntries(steps, "wrong-length", "the ground has no treadling steps");
  checkHarness(threading, shafts, "ground threading, end");
  steps.forEach((moves, i) => {
    const step = `ground step ${i + 1}`;
    for (const way of ["raise", "sink"] as const) {
      checkSet(moves[way], `${step}, ${way}`);
      checkHarness(moves[way], shafts, `${step}, ${way}, entry`);
    }
    const sunk = new Set(moves.sink);
    const shaft = moves.raise.find((raised) => sunk.has(raised));
    if (shaft !== undefined) {
      throw new UnitsError("raised-and-sunk", `${step} both raises and sinks ground shaft ${shaft}`, {
        step: i + 1,
        shaft,
      });
    }
  });
}

/** Refuses entries that are no shaft of a ground harness. */
function checkHarness(entries: readonly number[], shafts: number, where: string): void {
  const at = entries.findIndex((shaft) => !isCount(shaft) || shaft > shafts);
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
  const isOne = typeof sizes === "number";
  const list = isOne ? [sizes] : sizes;
  if (!isOne && list.length !== entries) {
    throw new UnitsError(
      "wrong-length",
      `${things} are given for ${list.length} ${each}s; the draft has ${entries} ${each}s`,
      { found: list.length, expected: entries },
    );
  }
  const at = list.findIndex((size) => !isCount(size));
  if (at < 0) return;
  const found = list[at]!;
  throw new UnitsError(
    "bad-size",
    `${isOne ? `each ${each}` : `${each} ${at + 1}`} has ${found} ${things}; expected a whole number from 1`,
    { entry: at + 1, found },
  );
}

/** Refuses sets that are not shaft numbers in ascending order, or name more shafts together than are worked through. */
function checkSets(sets: readonly ShaftSet[], each: "unit" | "row"): void {
  const named = sets.reduce((sum, set) => sum + set.length, 0);
  if (named > MOST_NAMED) {
    throw new UnitsError(
      "too-large",
      `the ${each}s name ${named} shafts; the most worked out is ${MOST_NAMED}`,
      { named, most: MOST_NAMED },
    );
  }
  const seen = new Set<ShaftSet>();
  sets.forEach((set, i) => {
    if (!seen.has(set)) checkSet(set, `${each} ${i + 1}`);
    seen.add(set);
  });
}

function checkSet(set: ShaftSet, where: string): void {
  for (let i = 0; i < set.length; i++) {
    const shaft = set[i]!;
    const before = set[i - 1] ?? 0;
    if (shaft > before && isCount(shaft)) continue;
    throw new UnitsError(
      isCount(shaft) ? "repeated-shaft" : "bad-shaft",
      `${where} names shaft ${shaft}${before === 0 ? "" : ` after shaft ${before}`}; expected each once, ascending, from 1`,
      { shaft },
    );
  }
}
