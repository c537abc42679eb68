/** Why a cloth cannot be checked as asked. */
export type CheckErrorCode =
  | "bad-sett"
  | "bad-limit"
  | "bad-level"
  | "bad-repeat"
  | "unknown-rule"
  | "unlike-size";

/** A caller's mistake about a check: one sentence, with the facts as fields. */
export class CheckError extends Error {
  override readonly name = "CheckError";
  readonly code: CheckErrorCode;
  readonly facts: Readonly<Record<string, string | number>>;

  constructor(code: CheckErrorCode, message: string, facts: Readonly<Record<string, string | number>> = {}) {
    super(message);
    this.code = code;
    this.facts = facts;
  }
}
