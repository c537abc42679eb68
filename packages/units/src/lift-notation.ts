import { needList } from "@drawcord/base";
import type { ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";
import { NotationError } from "./notation-error.js";
import { parseRows, printShafts } from "./row-notation.js";
import { sameShafts } from "./shaft-sets.js";

/** How a lift plan is read. */
export interface LiftsOptions {
  /** The most rows that are read before the plan is refused; 1,000,000 by default. */
  readonly mostRows?: number;
  /** The most shafts named in all lines together, runs counted out; 20,000,000 by default. */
  readonly mostShafts?: number;
}

/**
 * Reads a lift plan, the line of row 1 (woven first) first; each line as `parseRows`. Lines alike share one set.
 * @param lines a text a line, row 1 first
 * @param options the most rows and shafts that are read
 * @throws {UnitsError} as `parseRows`, with the `line` (from 1) beside the `column`; `no-rows` without lines;
 * `too-large` past the limits of `options`
 * @example parseLifts(["1 3", "none *2"]) // [[1, 3], [], []]
 */
export function parseLifts(lines: readonly string[], options: LiftsOptions = {}): readonly ShaftSet[] {
  const { mostRows = 1_000_000, mostShafts = 20_000_000 } = options;
  needList(lines, "the lines of a lift plan");
  if (lines.length === 0) throw new UnitsError("no-rows", "the lift plan has no rows; expected one or more");
  const readBefore = new Map<string, readonly ShaftSet[]>();
  const lifts: ShaftSet[] = [];
  let named = 0;
  lines.forEach((text, i) => {
    const line = i + 1;
    let rows = readBefore.get(text);
    if (rows === undefined) {
      rows = onLine(line, () => parseRows(text, { mostRows }));
      readBefore.set(text, rows);
      named += rows[0]!.length;
    }
    if (named > mostShafts) {
      throw new NotationError("too-large", `the lift plan names more than ${mostShafts} shafts`, {
        line,
        mostShafts,
      });
    }
    if (lifts.length + rows.length > mostRows) {
      throw new NotationError("too-large", `the lift plan comes to more than ${mostRows} rows`, {
        line,
        mostRows,
      });
    }
    for (const row of rows) lifts.push(row);
  });
  return lifts;
}

/** Gives an error from `read` the line it belongs to. */
function onLine<T>(line: number, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof UnitsError)) throw error;
    throw new NotationError(error.code, error.reason, { ...error.facts, line });
  }
}

/**
 * Writes a lift plan, a line for each run of rows that are alike, so that `parseLifts` reads it back.
 * @param lifts the shafts drawn in each row, row 1 first
 * @example printLifts([[1, 3], [1, 3], []]) // ["1 3 *2", "none"]
 */
export function printLifts(lifts: readonly ShaftSet[]): readonly string[] {
  const lines: string[] = [];
  let times = 0;
  lifts.forEach((row, i) => {
    times++;
    const next = lifts[i + 1];
    if (next !== undefined && sameShafts(row, next)) return;
    lines.push(times === 1 ? printShafts(row) : `${printShafts(row)} *${times}`);
    times = 0;
  });
  return lines;
}
