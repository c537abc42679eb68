import type { Input } from "../formula/input.js";
import { type Result, workOut } from "../formula/work-out.js";
import { pieceFormulas } from "../formulas/piece.js";
import { pieceTrees } from "../formulas/trees.js";

/** A finished length, and what it takes to be woven. */
export interface PieceLength {
  /** The finished length of a piece. */
  readonly length: Input;
  /** The picks in a unit length of the cloth on the loom. */
  readonly picks: Input;
  /** The length of its hems, both ends together; none by default. */
  readonly hems?: Input | undefined;
  /** The share of the length that the cloth loses in the wash; the usual one by default. */
  readonly shrinkage?: Input | undefined;
}

/**
 * The picks that a piece takes for its finished length. It needs the formulas of lengths alone.
 * @param piece the length, and what it takes to be woven
 * @throws {YarnError} for a quantity that cannot be, naming its symbol
 * @example picksOfPiece({ length: "45 cm", picks: "8 per cm", shrinkage: "10 %" }).value // 400
 */
export function picksOfPiece({ hems, length, picks, shrinkage }: PieceLength): Result {
  const cloth = workOut(pieceFormulas, pieceTrees, "cloth-of-a-piece", { f: length, h: hems, s: shrinkage });
  return workOut(pieceFormulas, pieceTrees, "picks-in-length", { P: picks, c: cloth });
}
