import { many } from "@drawcord/base";
import type { ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";
import { checkRows } from "./lift-variation.js";
import { unite } from "./shaft-sets.js";

/** A border that is built from an upright strip and turns its corners. */
export interface Border {
  /** How the sides come together in a corner: each to the diagonal, or the level ones to the edge. */
  readonly corner: "mitred" | "meeting";
  /** The shafts of the upright sides, the outermost first, in any order of their numbers; the border is as many rows high. */
  readonly beside: readonly number[];
  /** The shafts that lie between them, from the left. */
  readonly on: ShaftSet;
}

/**
 * The motif in a border that turns its corners. The strip stands upright: its shaft 1 is the outer edge, and its rows run
 * along the side. It runs from each corner to the middle of the side, where it meets itself, so that the corners are alike;
 * the level sides run with the threading. What the motif drew on the shafts of the sides gives way.
 * @param motif the shafts drawn in each row, row 1 first
 * @param strip the rows of the strip, over and over, row 1 in the corner
 * @param border how it turns, and over which shafts
 * @throws {UnitsError} `wrong-length` when the strip draws more shafts than its sides have, `shared-shaft` when a shaft is of
 * the sides and of what lies between them, `bad-size` for a strip without rows, `too-large` past a million rows
 * @example borderedLifts([[]], [[1]], { corner: "mitred", beside: [9], on: [1, 2] }) // [[1, 2, 9], [9], [1, 2, 9]]
 */
export function borderedLifts(
  motif: readonly ShaftSet[],
  strip: readonly ShaftSet[],
  { beside, corner, on }: Border,
): readonly ShaftSet[] {
  const depth = beside.length;
  checkBorder(strip, beside, on);
  const rows = motif.length + 2 * depth;
  checkRows(rows);
  const isDrawn = (deep: number, along: number) => strip[along % strip.length]!.includes(deep + 1);
  const ofSides = new Set(beside);
  return Array.from({ length: rows }, (_, row): ShaftSet => {
    const up = Math.min(row, rows - 1 - row);
    const sides = beside.filter((_shaft, across) => {
      const isLevel = up < depth && (corner === "meeting" || up <= across);
      return isLevel ? isDrawn(up, across) : isDrawn(across, up);
    });
    const between =
      up < depth
        ? on.filter((_shaft, i) => isDrawn(up, depth + i))
        : motif[row - depth]!.filter((shaft) => !ofSides.has(shaft));
    return unite(between, sides);
  });
}

function checkBorder(strip: readonly ShaftSet[], beside: readonly number[], on: ShaftSet): void {
  if (strip.length === 0) throw new UnitsError("bad-size", "the strip of a border has no rows");
  const highest = strip.reduce((most, row) => Math.max(most, row.at(-1) ?? 0), 0);
  if (highest > beside.length) {
    throw new UnitsError(
      "wrong-length",
      `the strip of the border draws shaft ${highest} and has ${many(beside.length, "shaft")} beside; expected ${highest} or more`,
      { found: beside.length, expected: highest },
    );
  }
  const shared = on.find((shaft) => beside.includes(shaft));
  if (shared !== undefined) {
    throw new UnitsError(
      "shared-shaft",
      `shaft ${shared} is of the border's sides and of what lies between them`,
      {
        shaft: shared,
      },
    );
  }
}
