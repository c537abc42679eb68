/** The words for places and measures that sentences are made of. */
import { listed } from "@drawcord/base";
import type { Span, Where } from "./report.js";

/** A stretch of threads, units or rows: `ends 4-7`. */
function span(one: string, [first, last]: Span): string {
  return first === last ? `${one} ${first}` : `${one}s ${first}-${last}`;
}

/** A stretch, or several where there are holes between them: `rows 4 and 34`, `units 3-5, 9 and 12`. */
function spans(one: string, whole: Span, runs: readonly Span[] = [whole]): string {
  if (runs.length < 2) return span(one, whole);
  return `${one}s ${listed(runs.map(([first, last]) => (first === last ? `${first}` : `${first}-${last}`)))}`;
}

/** Where a finding lies, in ends and picks and in units and rows. */
function place(at: Where): string {
  const threads = [at.ends && span("end", at.ends), at.picks && span("pick", at.picks)].filter(isText);
  const squares = [
    at.units && spans("unit", at.units, at.runs?.units),
    at.rows && spans("row", at.rows, at.runs?.rows),
  ].filter(isText);
  if (threads.length === 0) return squares.join(", ");
  return threads.join(", ") + (squares.length === 0 ? "" : ` (${squares.join(", ")})`);
}

/**
 * A way to say what is found, with the place put behind it.
 * @example withPlace(() => "a float")({ ends: [41, 41], picks: [17, 31], units: [11, 11], rows: [5, 8] }) // "a float: end 41, picks 17-31 (unit 11, rows 5-8)"
 */
export function withPlace<F extends Where>(say: (fact: F) => string): (fact: F) => string {
  return (fact) => {
    const where = place(fact);
    return where === "" ? say(fact) : `${say(fact)}: ${where}`;
  };
}

/**
 * A measure with no more digits than a weaver reads.
 * @example figure(2.4999) // "2.5"
 */
export function figure(value: number): string {
  return `${Number(value.toFixed(Math.abs(value) < 1 ? 2 : 1))}`;
}

/**
 * A measure beyond a limit, with as many digits as it takes to tell the two apart.
 * @example figureBeyond(6.04, 6) // "6.04"
 */
export function figureBeyond(value: number, limit: number): string {
  let text = figure(value);
  for (let digits = 2; text === figure(limit) && digits < 12; digits++)
    text = `${Number(value.toFixed(digits))}`;
  return text;
}

function isText(text: string | undefined): text is string {
  return text !== undefined;
}
