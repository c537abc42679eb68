/** What the ground harness does with the end, and then the pattern harness. */
export type CrossingCause = "raised" | "sunk" | "drawn" | "left";

/** What decides a crossing: the treadle where it moves the shaft of the end, else whether its unit is drawn. */
export function causeOf(raised: boolean, sunk: boolean, drawn: boolean): CrossingCause {
  if (raised) return "raised";
  if (sunk) return "sunk";
  return drawn ? "drawn" : "left";
}
