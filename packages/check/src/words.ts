/** The words for places and measures that sentences are made of. */
import type { Span } from "./report.js";

/** A stretch of threads, units or rows: `ends 4-7`. */
function span(one: string, [first, last]: Span): string {
  return first === last ? `${one} ${first}` : `${one}s ${first}-${last}`;
}

/**
 * Where a finding lies, in ends and picks and in units and rows.
 * @example place({ ends: [41, 41], picks: [17, 31], units: [11, 11], rows: [5, 8] }) // "end 41, picks 17-31 (unit 11, rows 5-8)"
 */
export function place(at: {
  readonly ends?: Span;
  readonly picks?: Span;
  readonly units?: Span;
  readonly rows?: Span;
}): string {
  const threads = [at.ends && span("end", at.ends), at.picks && span("pick", at.picks)].filter(isText);
  const squares = [at.units && span("unit", at.units), at.rows && span("row", at.rows)].filter(isText);
  if (threads.length === 0) return squares.join(", ");
  return threads.join(", ") + (squares.length === 0 ? "" : ` (${squares.join(", ")})`);
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
