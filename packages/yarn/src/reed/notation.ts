import { nearest } from "@drawcord/base";
import { YarnError } from "../error.js";
import { scanNumber } from "../quantity/number.js";
import { checkValue, unitNamed } from "../quantity/parse.js";
import { quantity } from "../quantity/units.js";
import { checkShort } from "../short.js";
import { type ReedSystemId, reedSystems } from "./systems.js";

/** A reed by its count. */
export interface Reed {
  /** The system that it is counted in. */
  readonly system: ReedSystemId;
  /** The number. */
  readonly count: number;
}

const EXPECTED = "expected one such as 12 per inch, 50 per 10 cm or 60 Stockport";

/**
 * Reads a reed count: `12 per inch`, `50 per 10 cm`, `60 Stockport`, `Bradford 50`, `12 porters Leeds`, `Irish 10s`.
 * @param text the notation
 * @throws {YarnError} `no-number`, `no-unit`, `unknown-system` (names the nearest), `too-long`, `zero` or `negative`
 * @example parseReed("60 Stockport") // { system: "stockport", count: 60 }
 */
export function parseReed(text: string): Reed {
  checkShort(text);
  const lead = /^ *[a-z]+(?= )/i.exec(text)?.[0] ?? "";
  const rest = text.slice(lead.length);
  const { value, end } = scanNumber(rest);
  const tail = rest
    .slice(end)
    .replace(/^'?s\b/, "")
    .replace(/\b(?:beers|porters|hundreds)\b/i, "");
  const name = `${lead} ${tail}`.trim();
  if (name === "")
    throw new YarnError("no-unit", `"${text}" does not say how the reed is counted; ${EXPECTED}`, { text });
  checkValue(quantity(value, ""), text, true);
  return { system: reedNamed(text, name), count: value };
}

function reedNamed(text: string, name: string): ReedSystemId {
  const unit = unitNamed(name);
  if (unit === "per inch") return "inch";
  if (unit === "per 10 cm") return "metric";
  if (unit === "per cm") return "cm";
  const plain = name.toLowerCase();
  if (Object.hasOwn(reedSystems, plain)) return plain as ReedSystemId;
  const like = nearest(
    plain,
    Object.values(reedSystems).flatMap(({ names }) => names),
  );
  throw new YarnError(
    "unknown-system",
    `"${text}": no reed count is called "${name}"; ${like === undefined ? EXPECTED : `is it ${like}?`}`,
    { text, system: name },
  );
}

/**
 * A reed count as text that reads back as the same reed.
 * @param reed a reed by its count
 * @example printReed({ system: "metric", count: 50 }) // "50 per 10 cm"
 */
export function printReed({ system, count }: Reed): string {
  return `${count} ${reedSystems[system].names[0]}`;
}
