import { type BitGrid, rowCounts, transpose } from "@drawcord/grid";
import { sum } from "../arithmetic.js";
import { shaftsOf, treadled } from "../weave/shafts.js";
import { floatsOf, intersectionsOfRows, type WeaveFloats } from "./floats.js";
import { isIsonemal } from "./isonemal.js";
import { lineOf, type Setts, type TwillLine, twillAngle } from "./line.js";
import { leastRepeat } from "./repeat.js";

/** What can be measured of a weave, over its least repeat joined to itself. */
export interface Properties {
  /** The size of the least repeat. */
  readonly repeat: {
    /** Ends of the repeat. */
    readonly ends: number;
    /** Picks of the repeat. */
    readonly picks: number;
  };
  /** The least shafts and treadles. */
  readonly shafts: number;
  /** The least treadles: picks that raise alike share one. */
  readonly treadles: number;
  /** Floats of warp and weft in a repeat, on both sides. */
  readonly floats: WeaveFloats;
  /** Intersections in the repeat: along every end, and along every pick. */
  readonly intersections: {
    /** Along each end, end 1 first. */
    readonly ends: readonly number[];
    /** Along each pick, pick 1 first. */
    readonly picks: readonly number[];
  };
  /** Threads passed an intersection, over both systems: R/I, infinite where nothing interlaces. */
  readonly meanFloat: number;
  /** The part of the interlacements with the warp on the face, from 0 to 1. */
  readonly warpFaceShare: number;
  /** As much warp as weft on the face. */
  readonly balanced: boolean;
  /**
   * Whether every thread can be carried onto every other by moving, turning, mirroring or turning the cloth
   * over.
   */
  readonly isonemal: boolean;
  /** Crossings (CFF) and floating yarn (FYF) an interlacement; together they are 2. */
  readonly firmness: {
    /** Crossings an interlacement (CFF). */
    readonly crossing: number;
    /** Floating yarn an interlacement (FYF). */
    readonly floating: number;
  };
  /** The twill line, its direction and its angle to the weft in degrees, where the picks move on evenly. */
  readonly line?: TwillLine & {
    /** Which way the line runs as it rises: `z` to the right, `s` to the left. */
    readonly direction: "z" | "s";
    /** Its angle to the weft, in degrees. */
    readonly angle: number;
  };
}

/**
 * The properties of a weave.
 * @param drawdown whole repeats
 * @param setts threads a centimetre, for the angle; left out, they are equal
 * Source: mean float F = R/I, J. T. Taylor, Cotton Weaving and Designing, 1909, p. 338; CFF and FYF as in H. Morino,
 * M. Matsudaira and M. Furutani, Textile Research Journal 75 (2005), from memory.
 * @example propertiesOf(drawdownOf(weaveOf("satin 8 step 3"))).meanFloat // 4
 */
export function propertiesOf(drawdown: BitGrid, setts?: Setts): Properties {
  const repeat = leastRepeat(drawdown);
  const { rows, columns } = repeat;
  const weave = treadled(shaftsOf(repeat));
  const ends = intersectionsOfRows(transpose(repeat));
  const picks = intersectionsOfRows(repeat);
  const cells = rows * columns;
  const crossings = sum(ends) + sum(picks);
  const warpFaceShare = sum(Array.from(rowCounts(repeat))) / cells;
  const line = lineOf(repeat);
  return {
    repeat: { ends: columns, picks: rows },
    shafts: weave.shafts,
    treadles: weave.tieUp.length,
    floats: floatsOf(repeat),
    intersections: { ends, picks },
    meanFloat: (2 * cells) / crossings,
    warpFaceShare,
    balanced: warpFaceShare === 0.5,
    isonemal: isIsonemal(repeat),
    firmness: { crossing: crossings / cells, floating: 2 - crossings / cells },
    ...(line && { line: { ...line, direction: line.out > 0 ? "z" : "s", angle: twillAngle(line, setts) } }),
  };
}
