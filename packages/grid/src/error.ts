/** Why a grid cannot be made or read. */
export type GridErrorCode =
  | "bad-size"
  | "outside"
  | "wrong-length"
  | "uneven-rows"
  | "bad-character"
  | "unlike-size";

/** A caller's mistake about a grid: one sentence, with the facts as fields. */
export class GridError extends Error {
  override readonly name = "GridError";
  readonly code: GridErrorCode;
  readonly facts: Readonly<Record<string, string | number>>;

  constructor(code: GridErrorCode, message: string, facts: Readonly<Record<string, string | number>> = {}) {
    super(message);
    this.code = code;
    this.facts = facts;
  }
}
