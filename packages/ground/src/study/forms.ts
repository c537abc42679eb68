import { type BitGrid, complement, mirror, turn } from "@drawcord/grid";

/**
 * The counterchange: raised for lowered, so that the two faces change places.
 * @param drawdown rows are picks, columns are ends
 * @example toText(counterchange(fromText("#.."))) // ".##"
 */
export function counterchange(drawdown: BitGrid): BitGrid {
  return complement(drawdown);
}

/**
 * The cloth turned a quarter, clockwise: its wefts become warps, so what lay raised is lowered and the other way round.
 * Turned four times it is itself.
 * @param drawdown rows are picks, columns are ends
 * @example toText(turned(fromText("#.\n.."))) // "#.\n##"
 */
export function turned(drawdown: BitGrid): BitGrid {
  return complement(turn(drawdown));
}

/**
 * The mirror of a weave, left for right: its twill lines run the other way.
 * @param drawdown rows are picks, columns are ends
 * @example toText(mirrored(fromText("#.."))) // "..#"
 */
export function mirrored(drawdown: BitGrid): BitGrid {
  return mirror(drawdown);
}

/**
 * The back of the cloth, as it is seen when it is turned over left for right.
 * @param drawdown rows are picks, columns are ends
 * @example toText(backOf(fromText("#.."))) // "##."
 */
export function backOf(drawdown: BitGrid): BitGrid {
  return complement(mirror(drawdown));
}
