/**
 * The caution where cloth is washed: it defers to those who made what is used.
 * @example WASHING_CAUTION.startsWith("Take care with hot water") // true
 */
export const WASHING_CAUTION =
  "Take care with hot water, wet, heavy cloth and dust; wash strong colours apart, as the dye may run; go by the makers of yarn and dye.";
