import type { BitGrid } from "@drawcord/grid";
import { modulo, upTo } from "../arithmetic.js";
import { GroundError } from "../error.js";
import { rowKeys, shifted } from "./repeat.js";

/** How far a twill line moves: picks up for ends out, out to the right positive. */
export interface TwillLine {
  /** Picks that it moves up. */
  readonly up: number;
  /** Ends that it moves out, to the right; below 0 to the left. */
  readonly out: number;
}

/** Threads a centimetre, or any other length, as long as it is the same for both. */
export interface Setts {
  /** Ends in the length. */
  readonly ends: number;
  /** Picks in the length. */
  readonly picks: number;
}

/**
 * The angle of a twill line to the weft, in degrees.
 * @param line picks up and ends out of the line
 * @param setts threads a centimetre; left out, they are equal
 * @throws {GroundError} `bad-size` when a sett is not above 0
 * Source: tan a = steps up x ends / (steps out x picks); J. T. Taylor, Cotton Weaving and Designing, 1909, p. 220;
 * A. Wolfensberger, Theory of Silk Weaving, 1921, p. 20.
 * @example twillAngle({ up: 1, out: 1 }) // 45
 */
export function twillAngle({ up, out }: TwillLine, setts: Setts = { ends: 1, picks: 1 }): number {
  if (!(setts.ends > 0 && setts.picks > 0)) {
    throw new GroundError(
      "bad-size",
      `setts must be above 0, not ${setts.ends} ends and ${setts.picks} picks`,
      { ...setts },
    );
  }
  return (Math.atan2(up * setts.ends, Math.abs(out) * setts.picks) * 180) / Math.PI;
}

/** How many ends each pick of a repeat has moved on from the one before, where that is the same all round. */
export function moveOf(drawdown: BitGrid): number | undefined {
  const keys = rowKeys(drawdown);
  return upTo(drawdown.columns).find((move) => {
    const moved = rowKeys(shifted(drawdown, 0, -move));
    return keys.every((_, pick) => moved[pick] === keys[(pick + 1) % keys.length]);
  });
}

/**
 * The line that the eye follows in a twill or satin: the nearest place, at equal setts, where the weave is the same again.
 * @param drawdown a least repeat
 * @returns nothing when the picks do not move on evenly, as in a broken or irregular weave
 * @example lineOf(drawdownOf(weaveOf("satin 8 step 3"))) // { up: 2, out: -2 }
 */
export function lineOf(drawdown: BitGrid): TwillLine | undefined {
  const n = drawdown.columns;
  const move = moveOf(drawdown);
  if (move === undefined || n < 3) return undefined;
  const lines = upTo(drawdown.rows).map((pick): TwillLine => {
    const out = modulo((pick + 1) * move, n);
    return { up: pick + 1, out: out > n / 2 ? out - n : out };
  });
  const reach = ({ up, out }: TwillLine) => up * up + out * out;
  const slanting = lines.filter(({ out }) => out !== 0);
  return slanting.length === 0 ? undefined : slanting.reduce((a, b) => (reach(b) < reach(a) ? b : a));
}
