/** Why a sheet cannot be made. */
export type SheetErrorCode = "too-long" | "unknown-colour";

/** A caller's mistake about a sheet: one sentence, with the facts as fields. */
export class SheetError extends Error {
  override readonly name = "SheetError";
  readonly code: SheetErrorCode;
  readonly facts: Readonly<Record<string, string | number>>;

  constructor(code: SheetErrorCode, message: string, facts: Readonly<Record<string, string | number>> = {}) {
    super(message);
    this.code = code;
    this.facts = facts;
  }
}
