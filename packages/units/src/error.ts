import { DrawcordError, type Facts, notationPlace, type Range } from "@drawcord/base";

/** Why a threading, a lift plan or a draft cannot be read or made. */
export type UnitsErrorCode =
  | "bad-character"
  | "bad-repeat"
  | "bad-run"
  | "bad-shaft"
  | "bad-size"
  | "empty-group"
  | "no-length"
  | "no-rows"
  | "no-units"
  | "outside-harness"
  | "raised-and-sunk"
  | "repeated-shaft"
  | "shared-shaft"
  | "too-large"
  | "unbalanced-bracket"
  | "unknown-block"
  | "unknown-word"
  | "unlike-lengths"
  | "unnamed-shafts"
  | "wrong-argument"
  | "wrong-length";

/** The facts of an error: what was found, and where. */
export type UnitsFacts = Facts;

/** A caller's mistake about units, threading or lifts: one sentence, with the facts as fields. */
export class UnitsError extends DrawcordError<UnitsErrorCode> {
  /** The name of the class. */
  override readonly name = "UnitsError";
  /** Where in the notation that was read, if one was; offsets count in its line. */
  override readonly place: Range | undefined;
  /** The sentence without its place in the text. */
  readonly reason: string;

  /** @param facts `column` and `line`, where there are any, count from 1 in the text that was read */
  constructor(code: UnitsErrorCode, reason: string, facts: UnitsFacts = {}) {
    const place = ["line", "column"].filter((key) => key in facts).map((key) => `${key} ${facts[key]}`);
    super(code, reason, facts);
    this.place = notationPlace(facts);
    this.reason = reason;
    if (place.length > 0) this.message = `${place.join(", ")}: ${reason}`;
  }
}
