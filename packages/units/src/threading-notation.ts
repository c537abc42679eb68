import type { UnitsError } from "./error.js";
import { NotationError } from "./notation-error.js";
import {
  parseRun,
  parseShaftAfter,
  parseTimes,
  parseTokens,
  type Token,
  type TokenReader,
} from "./tokens.js";
import type { UnitShafts } from "./types.js";

/** How a threading text is read. */
export interface ThreadingOptions {
  /** The shaft number that stands for static units in the text and in diagrams; none by default. */
  readonly staticShaft?: number;
  /** The most units that are read before the text is refused; 1,000,000 by default. */
  readonly mostUnits?: number;
  /** The most shafts that all units together may hang on; 20,000,000 by default. */
  readonly mostShafts?: number;
}

/**
 * Reads a unit threading, unit 1 first: `7` on shaft 7; `X` static; `1-8` upwards; `7-2` downwards; `3+9` on both
 * shafts; `5*4` four times; `( ... )*4` the group four times; blanks or commas between.
 * @param text the notation, such as `X*2 1-8 7-1`
 * @param options the most units that are read, and the number that static units have
 * @returns one entry a unit: its pattern shafts, ascending; `[]` is a static unit
 * @throws {UnitsError} with the `column` (from 1): `bad-character`, `bad-run`, `bad-shaft`, `repeated-shaft`,
 * `bad-repeat`, `unbalanced-bracket`, `empty-group`, `no-units`, `too-large`
 * @example parseThreading("X 1-3 2+4*2") // [[], [1], [2], [3], [2, 4], [2, 4]]
 */
export function parseThreading(text: string, options: ThreadingOptions = {}): readonly UnitShafts[] {
  return readThreading(text, options).units;
}

/**
 * Where in a threading text each unit is written, unit 1 first: the column (from 1) of its shaft, or of the run it is of.
 * @param text the notation, such as `X*2 1-8 7-1`
 * @param options the most units that are read, and the number that static units have
 * @throws {UnitsError} as `parseThreading`
 * @example threadingColumns("X (1-3)*2") // [1, 4, 4, 4, 4, 4, 4]
 */
export function threadingColumns(text: string, options: ThreadingOptions = {}): readonly number[] {
  return readThreading(text, options).columns;
}

/** The units of a text, and the column of each. */
interface Threading {
  readonly units: readonly UnitShafts[];
  readonly columns: readonly number[];
}

function readThreading(text: string, options: ThreadingOptions): Threading {
  const { staticShaft, mostUnits = 1_000_000, mostShafts = 20_000_000 } = options;
  const read = parseTokens(text);
  const open: OpenGroup[] = [];
  // One list for groups in groups too: a group that comes once costs nothing to close, however deep it lies.
  const units: UnitShafts[] = [];
  const columns: number[] = [];
  let named = 0;
  const put = (unit: UnitShafts, column: number) => {
    units.push(unit);
    columns.push(column);
    named += unit.length;
  };

  for (let token = read.next(); token !== undefined; token = read.next()) {
    if (token.text === "(") {
      open.push({ start: units.length, column: token.column });
      continue;
    }
    let start = units.length;
    if (token.text === ")") start = startOfGroup(open.pop(), units.length, token.column);
    else for (const unit of readUnits(token, read, staticShaft)) put(unit, token.column);
    const times = parseTimes(read);
    const total = units.length + (units.length - start) * (times - 1);
    if (total > mostUnits) throw tooLarge(`comes to more than ${mostUnits} units`, token.column, mostUnits);
    for (let i = start; units.length < total; i++) put(units[i]!, columns[i]!);
    if (named > mostShafts) throw tooLarge(`names more than ${mostShafts} shafts`, token.column, mostShafts);
  }

  const unclosed = open.pop();
  if (unclosed !== undefined) {
    throw new NotationError(
      "unbalanced-bracket",
      `the bracket "(" is never closed; expected a ")" after it`,
      {
        column: unclosed.column,
      },
    );
  }
  if (units.length === 0) throw new NotationError("no-units", "the threading names no units", { column: 1 });
  return { units, columns };
}

/** A bracket that was opened: the first of its units, from 0, and where the bracket stands. */
interface OpenGroup {
  readonly start: number;
  readonly column: number;
}

function tooLarge(how: string, column: number, most: number): UnitsError {
  return new NotationError("too-large", `the threading ${how}`, { column, most });
}

/** The first unit of a group that ends at `column`, before the unit `end`. */
function startOfGroup(opened: OpenGroup | undefined, end: number, column: number): number {
  if (opened === undefined) {
    throw new NotationError(
      "unbalanced-bracket",
      `the bracket ")" closes nothing; expected a "(" before it`,
      {
        column,
      },
    );
  }
  if (opened.start === end) {
    throw new NotationError("empty-group", "the brackets hold no units", { column: opened.column });
  }
  return opened.start;
}

/** One unit, or a run of units on one shaft each. */
function readUnits(token: Token, read: TokenReader, staticShaft: number | undefined): UnitShafts[] {
  if (token.text.toUpperCase() === "X") return [[]];
  const run = parseRun(token, read);
  if (run.length > 1) {
    const sign = read.peek();
    if (sign?.text === "*" || sign?.text === "+") {
      throw new NotationError(
        "bad-run",
        `"${sign.text}" was found after a run of shafts; expected the run in brackets, or a blank after it`,
        { column: sign.column, found: sign.text },
      );
    }
    return run.map((shaft) => unitOn([shaft], staticShaft));
  }
  const shafts = new Set(run);
  for (let plus = read.take("+"); plus !== undefined; plus = read.take("+")) {
    const shaft = parseShaftAfter(plus, read);
    if (shafts.has(shaft)) {
      const sentence = `the unit hangs on shaft ${shaft} twice`;
      throw new NotationError("repeated-shaft", sentence, { column: plus.column + 1, shaft });
    }
    shafts.add(shaft);
  }
  return [unitOn([...shafts], staticShaft)];
}

/** The shafts of a unit in order, without the one that stands for none. */
function unitOn(shafts: readonly number[], staticShaft: number | undefined): UnitShafts {
  return shafts.filter((shaft) => shaft !== staticShaft).sort((a, b) => a - b);
}
