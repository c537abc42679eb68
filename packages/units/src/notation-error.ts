import { type Facts, notationPlace, type Range } from "@drawcord/base";
import { UnitsError, type UnitsErrorCode } from "./error.js";

/** A notation that cannot be read: apart from the other errors, so that who reads none does not load its places. */
export class NotationError extends UnitsError {
  /** Where in the notation; offsets count in its line. */
  override readonly place: Range | undefined;

  /** @param facts `column` and `line`, where there are any, count from 1 in the text that was read */
  constructor(code: UnitsErrorCode, reason: string, facts: Facts) {
    super(code, reason, facts);
    this.place = notationPlace(facts);
    const place = ["line", "column"].filter((key) => key in facts).map((key) => `${key} ${facts[key]}`);
    this.message = `${place.join(", ")}: ${reason}`;
  }
}
