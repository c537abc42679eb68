import type { ShaftSet } from "@drawcord/ground";
import { NotationError } from "./notation-error.js";
import { parseRun, parseTimes, parseTokens, type TokenReader } from "./tokens.js";

/** How rows are read. */
export interface RowsOptions {
  /** The most rows that are read before the text is refused; 1,000,000 by default. */
  readonly mostRows?: number;
}

/**
 * Reads a set of shafts: the shafts drawn in a row, or raised or sunk on a pick. `1 3-5 9` or `none`.
 * @param text the notation, such as `1 3-5 9`, or `none`
 * @returns the shafts, ascending
 * @throws {UnitsError} with the `column` (from 1): `bad-character`, `bad-run`, `bad-shaft`, `repeated-shaft`,
 * `bad-repeat` (a set has no times), `unnamed-shafts` (an empty text)
 * @example parseShafts("9 1 3-5") // [1, 3, 4, 5, 9]
 */
export function parseShafts(text: string): ShaftSet {
  const read = parseTokens(text);
  const shafts = readShafts(read);
  const star = read.next();
  if (star !== undefined) {
    throw new NotationError("bad-repeat", `"*" was found; one set of shafts has no number of times`, {
      column: star.column,
    });
  }
  return shafts;
}

/**
 * Reads one line of a lift plan: the shafts drawn, and how many rows are alike. `1 3-5 9`, `none`, `1 2 *3`.
 * @param text the notation, such as `1 3 *2`
 * @param options the most rows that are read
 * @returns one entry a row, each the same set of shafts
 * @throws {UnitsError} as `parseShafts`, `bad-repeat` for `*0`, and `too-large` past `mostRows`
 * @example parseRows("1 3 *2") // [[1, 3], [1, 3]]
 */
export function parseRows(text: string, options: RowsOptions = {}): readonly ShaftSet[] {
  const { mostRows = 1_000_000 } = options;
  const read = parseTokens(text);
  const shafts = readShafts(read);
  const column = read.peek()?.column ?? text.length;
  const times = parseTimes(read);
  if (times > mostRows) {
    throw new NotationError("too-large", `${times} rows alike are more than the ${mostRows} that are read`, {
      column,
      times,
      most: mostRows,
    });
  }
  const after = read.next();
  if (after !== undefined) {
    throw new NotationError(
      "bad-repeat",
      `"${after.text}" was found after the number of rows; expected nothing`,
      {
        column: after.column,
        found: after.text,
      },
    );
  }
  return new Array<ShaftSet>(times).fill(shafts);
}

/** Shafts and runs of shafts up to a `*` or the end. */
function readShafts(read: TokenReader): ShaftSet {
  const first = read.peek();
  if (first === undefined || first.text === "*") {
    throw new NotationError("unnamed-shafts", `no shafts are named; expected their numbers, or "none"`, {
      column: first?.column ?? 1,
    });
  }
  if (first.text.toLowerCase() === "none") {
    read.next();
    const beside = read.peek();
    if (beside === undefined || beside.text === "*") return [];
    throw new NotationError(
      "bad-run",
      `"none" and "${beside.text}" stand together; expected one or the other`,
      {
        column: beside.column,
        found: beside.text,
      },
    );
  }
  const shafts = new Set<number>();
  for (let token = read.peek(); token !== undefined && token.text !== "*"; token = read.peek()) {
    read.next();
    for (const shaft of parseRun(token, read)) {
      if (shafts.has(shaft)) {
        throw new NotationError("repeated-shaft", `shaft ${shaft} is named twice`, {
          column: token.column,
          shaft,
        });
      }
      shafts.add(shaft);
    }
  }
  return [...shafts].sort((a, b) => a - b);
}

/**
 * Writes a set of shafts so that `parseShafts` reads it back.
 * @param shafts shaft numbers, ascending
 * @example printShafts([1, 3, 4, 5, 9]) // "1 3-5 9"
 */
export function printShafts(shafts: ShaftSet): string {
  if (shafts.length === 0) return "none";
  const parts: string[] = [];
  for (let i = 0; i < shafts.length; ) {
    let last = i;
    while (last + 1 < shafts.length && shafts[last + 1] === shafts[last]! + 1) last++;
    if (last - i >= 2) parts.push(`${shafts[i]}-${shafts[last]}`);
    else for (let k = i; k <= last; k++) parts.push(String(shafts[k]));
    i = last + 1;
  }
  return parts.join(" ");
}
