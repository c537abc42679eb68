import { figure } from "../words.js";

/** Centimetres in an inch, by definition. */
const INCH = 2.54;

/** The shares of the closest sett, in percent, at which a cloth holds and can be beaten. */
const SENSIBLE = { least: 50, most: 100 };

/** What a sett that is too close, or too open, would be if it were counted in the other unit; nothing where that makes no sense. */
export function inOtherUnit(share: number): string {
  const close = share > SENSIBLE.most;
  const other = close ? share / INCH : share * INCH;
  if (other < SENSIBLE.least || other > SENSIBLE.most) return "";
  return `; counted ${close ? "an inch and not a cm" : "a cm and not an inch"}, it would be ${figure(other)} %`;
}
