/** Ways to vary a lift plan. Each takes the rows of a plan, row 1 (woven first) first, and returns the rows of another. */
import type { ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";
import { unite } from "./shaft-sets.js";

type Lifts = readonly ShaftSet[];

/** The most rows a plan may come to. */
const MOST_ROWS = 1_000_000;

/** Refuses a plan that would come to more rows than are held. */
export function checkRows(rows: number): void {
  if (rows > MOST_ROWS) {
    throw new UnitsError("too-large", `the lift plan comes to ${rows} rows; the most is ${MOST_ROWS}`, {
      rows,
      most: MOST_ROWS,
    });
  }
}

/** Refuses a number of times or rows that is not whole and from `least`. */
function checkCount(what: string, found: number, least: number): void {
  if (Number.isSafeInteger(found) && found >= least) return;
  throw new UnitsError("bad-size", `${what} were given as ${found}; expected a whole number from ${least}`, {
    found,
    least,
  });
}

/** The plan with every shaft that `renamed` names drawn as the shaft it gives. */
function renamedShafts(lifts: Lifts, renamed: ReadonlyMap<number, number>): Lifts {
  return lifts.map((row) => row.map((shaft) => renamed.get(shaft) ?? shaft).sort((a, b) => a - b));
}

/**
 * The rows again and again.
 * @param lifts the rows, row 1 first
 * @param times how often they come, a whole number from 1
 * @throws {UnitsError} `bad-size` when `times` is not a whole number from 1, `too-large` past a million rows
 * @example repeatedLifts([[1], [2]], 2) // [[1], [2], [1], [2]]
 */
export function repeatedLifts(lifts: Lifts, times: number): Lifts {
  checkCount("repeats", times, 1);
  checkRows(lifts.length * times);
  return Array.from({ length: times }, () => lifts).flat();
}

/**
 * Upside down: the last row is woven first.
 * @param lifts the rows, row 1 first
 * @example upsideDownLifts([[1], [2, 3]]) // [[2, 3], [1]]
 */
export function upsideDownLifts(lifts: Lifts): Lifts {
  return lifts.toReversed();
}

/**
 * Mirrored: of the shafts named, the first is drawn for the last and so on; other shafts stay. In a straight threading
 * the figure looks the other way.
 * @param lifts the rows, row 1 first
 * @param on the shafts that are mirrored, in the order in which they lie
 * @example mirroredLifts([[1, 2, 9]], [1, 2, 3]) // [[2, 3, 9]]
 */
export function mirroredLifts(lifts: Lifts, on: ShaftSet): Lifts {
  return renamedShafts(lifts, new Map(on.map((shaft, i) => [shaft, on.at(-1 - i)!])));
}

/**
 * Turned by half a turn: upside down and mirrored on the shafts named.
 * @param lifts the rows, row 1 first
 * @param on the shafts that are mirrored, in the order in which they lie
 * @example turnedLifts([[1], [2, 3]], [1, 2, 3]) // [[1, 2], [3]]
 */
export function turnedLifts(lifts: Lifts, on: ShaftSet): Lifts {
  return mirroredLifts(upsideDownLifts(lifts), on);
}

/**
 * Placed on other shafts: for its shaft 1 the first of those named is drawn, for its shaft 2 the second, and so on.
 * @param lifts the rows, row 1 first
 * @param on the shafts that its shafts 1, 2, 3 and so on become
 * @throws {UnitsError} `wrong-length` when a row draws a shaft for which none is named
 * @example placedLifts([[1], [1, 3]], [9, 10, 11]) // [[9], [9, 11]]
 */
export function placedLifts(lifts: Lifts, on: ShaftSet): Lifts {
  const highest = lifts.reduce((most, row) => Math.max(most, row.at(-1) ?? 0), 0);
  if (highest > on.length) {
    throw new UnitsError(
      "wrong-length",
      `rows that draw shaft ${highest} are placed on ${on.length} shafts; expected ${highest} or more`,
      { found: on.length, expected: highest },
    );
  }
  return lifts.map((row) => row.map((shaft) => on[shaft - 1]!));
}

/**
 * Handles exchanged on the shafts named: drawn for undrawn, so that figure becomes ground; other shafts stay.
 * @param lifts the rows, row 1 first
 * @param on the shafts that are exchanged
 * @example exchangedLifts([[1, 9]], [1, 2]) // [[2, 9]]
 */
export function exchangedLifts(lifts: Lifts, on: ShaftSet): Lifts {
  const named = new Set(on);
  return lifts.map((row) => {
    const drawn = new Set(row);
    const others = row.filter((shaft) => !named.has(shaft));
    return unite(
      others,
      on.filter((shaft) => !drawn.has(shaft)),
    );
  });
}

/**
 * The rows again and again, every other time changed: the second, the fourth, and so on.
 * @param lifts the rows, row 1 first
 * @param times how often they come, a whole number from 1
 * @param change what is done to the rows every other time, such as `upsideDownLifts`
 * @throws {UnitsError} `bad-size` when `times` is not a whole number from 1, `too-large` past a million rows
 * @example alternatingLifts([[1], [2]], 3, upsideDownLifts) // [[1], [2], [2], [1], [1], [2]]
 */
export function alternatingLifts(lifts: Lifts, times: number, change: (lifts: Lifts) => Lifts): Lifts {
  checkCount("repeats", times, 1);
  const changed = change(lifts);
  checkRows(Math.max(lifts.length, changed.length) * times);
  return Array.from({ length: times }, (_, i) => (i % 2 === 0 ? lifts : changed)).flat();
}

/**
 * Half drop: the motif of the shafts `on` comes again on the shafts `beside`, half its rows later; what these drew
 * before gives way.
 * @param lifts the rows, row 1 first
 * @param on the shafts of the motif
 * @param beside the shafts that it comes again on, as many and none of them
 * @throws {UnitsError} `wrong-length` when there are not as many shafts beside, `bad-size` when the rows cannot be halved
 * @example halfDropLifts([[1], [2]], [1, 2], [3, 4]) // [[1, 4], [2, 3]]
 */
export function halfDropLifts(lifts: Lifts, on: ShaftSet, beside: ShaftSet): Lifts {
  const motif = new Set(on);
  if (beside.length !== on.length || beside.some((shaft) => motif.has(shaft))) {
    throw new UnitsError(
      "wrong-length",
      `a half drop puts ${on.length} shafts beside ${beside.length}; expected as many others`,
      { found: beside.length, expected: on.length },
    );
  }
  const half = halfOf(lifts.length, "rows");
  const moved = new Map(on.map((shaft, i) => [shaft, beside[i]!]));
  const taken = new Set(beside);
  return lifts.map((row, i) => {
    const dropped = lifts[(i + half) % lifts.length]!.flatMap((shaft) => moved.get(shaft) ?? []);
    return unite(
      row.filter((shaft) => !taken.has(shaft)),
      dropped,
    );
  });
}

/**
 * Brick: the rows, then the same moved half-way along the shafts named, round and round; other shafts stay.
 * @param lifts the rows, row 1 first
 * @param on the shafts that are moved round, an even number
 * @throws {UnitsError} `bad-size` when the shafts cannot be halved
 * @example brickLifts([[1], [2, 9]], [1, 2, 3, 4]) // [[1], [2, 9], [3], [4, 9]]
 */
export function brickLifts(lifts: Lifts, on: ShaftSet): Lifts {
  const half = halfOf(on.length, "shafts");
  checkRows(lifts.length * 2);
  return [
    ...lifts,
    ...renamedShafts(lifts, new Map(on.map((shaft, i) => [shaft, on[(i + half) % on.length]!]))),
  ];
}

function halfOf(size: number, things: "rows" | "shafts"): number {
  if (size > 0 && size % 2 === 0) return size / 2;
  throw new UnitsError("bad-size", `${size} ${things} cannot be moved by half; expected an even number`, {
    size,
  });
}

/** The border that a motif is framed in. */
export interface Frame {
  /** Rows of the border before the motif, and as many after it. */
  readonly rows: number;
  /** The shafts drawn in those rows. */
  readonly across: ShaftSet;
  /** The shafts drawn beside the motif, in every row of it; none by default. */
  readonly edge?: ShaftSet;
}

/**
 * The motif framed in a border: rows across before and after it, shafts at the edges drawn all along.
 * @param lifts the rows of the motif, row 1 first
 * @param frame how many rows the border has, what they draw, and what is drawn all along
 * @throws {UnitsError} `bad-size` when `rows` is not a whole number from 0
 * @example framedLifts([[2]], { rows: 1, across: [1, 2, 9], edge: [9] }) // [[1, 2, 9], [2, 9], [1, 2, 9]]
 */
export function framedLifts(lifts: Lifts, frame: Frame): Lifts {
  const { rows, across, edge = [] } = frame;
  checkCount("rows of the border", rows, 0);
  checkRows(lifts.length + 2 * rows);
  const border = Array.from({ length: rows }, () => across);
  return [...border, ...lifts.map((row) => unite(row, edge)), ...border];
}

/**
 * The rows as often as they fit whole into a number of rows.
 * @param lifts the rows, row 1 first
 * @param rows the rows to be filled, a whole number from 1
 * @throws {UnitsError} `bad-size` when they do not fit once, `too-large` past a million rows
 * @example fittedLifts([[1], [2]], 5) // [[1], [2], [1], [2]]
 */
export function fittedLifts(lifts: Lifts, rows: number): Lifts {
  checkCount("rows to be filled", rows, 1);
  const times = Math.floor(rows / lifts.length);
  if (!Number.isFinite(times) || times < 1) {
    throw new UnitsError("bad-size", `a repeat of ${lifts.length} rows does not fit into ${rows} rows`, {
      repeat: lifts.length,
      rows,
    });
  }
  return repeatedLifts(lifts, times);
}
