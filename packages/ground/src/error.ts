/** Why a ground cannot be. */
export type GroundErrorCode =
  | "bad-description"
  | "bad-ends"
  | "bad-order"
  | "bad-ratio"
  | "bad-size"
  | "bad-step"
  | "too-large"
  | "unbound"
  | "unknown-weave";

/** A caller's mistake about a ground weave: one sentence, with the facts as fields. */
export class GroundError extends Error {
  override readonly name = "GroundError";
  readonly code: GroundErrorCode;
  readonly facts: Readonly<Record<string, string | number>>;

  constructor(code: GroundErrorCode, message: string, facts: Readonly<Record<string, string | number>> = {}) {
    super(message);
    this.code = code;
    this.facts = facts;
  }
}
