/** A number that a slip would have given, and the slip as a clause. */
export interface NumberSlip {
  readonly value: number;
  readonly reason: string;
}

/** Centimetres in an inch, by definition. */
const INCH = 2.54;

/**
 * The slip that explains a wrong number exactly, the nearest first; undefined where none does.
 * @param wrong what stands there
 * @param right what would agree
 * @param slips what known slips would have given, in the unit of both
 * @param within how far off an exact explanation may be
 */
export function likelyReason(
  wrong: number,
  right: number,
  slips: readonly NumberSlip[],
  within: number,
): string | undefined {
  const known: readonly NumberSlip[] = [
    ...slips,
    { value: right / INCH, reason: "inches were taken for centimetres" },
    { value: right * INCH, reason: "centimetres were taken for inches" },
    { value: right / 10, reason: "centimetres were taken for millimetres" },
    { value: right * 10, reason: "millimetres were taken for centimetres" },
  ];
  return known.find(({ value }) => Math.abs(value - wrong) <= within + 1e-9 * Math.abs(wrong))?.reason;
}

/** The words for a likely reason, to follow a sentence; nothing where there is none. */
export function because(reason: string | undefined): string {
  return reason === undefined ? "" : `; it looks as if ${reason}`;
}
