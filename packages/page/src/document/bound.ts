import type { Bound, Document } from "./types.js";

/** One document or several, as several. */
export function boundOf(from: Document | Bound): Bound {
  return "parts" in from ? [from] : from;
}
