/** From so many grams in one lift on, a few handles at a time are enough. Drawcord's own. */
const HEAVY_GRAMS = 5000;

/** From so many grams in one lift on, nobody should draw it as it stands. Drawcord's own. */
const VERY_HEAVY_GRAMS = 15000;

/** The usual caution in short, for a line that is read while weaving. Source: common practice. */
export const SHORT_LIFT_CAUTION =
  "Keep hands and feet from beneath the lingos, let no drawn handle slip, and keep to what the maker of your loom says it may carry.";

/** The usual caution about lifts and weights. Source: common practice. */
export const WEIGHT_CAUTION =
  "The weights count lingos alone; cords, leashes, friction and the tension of the warp come on top. " +
  "A cord or fixing that parts drops its lingos: look over cords, knots and fixings before you weave. " +
  `Repeated pulling tires back and shoulders: change over and rest. ${SHORT_LIFT_CAUTION} Local rules for your workplace come first; ` +
  "have a qualified person look over overhead fixings, and the looms of a teaching room.";

/**
 * What to mind about one lift by its weight; nothing where it is light. Source: common practice; the limits, 5 kg and
 * 15 kg, are Drawcord's own.
 * @param grams the lingos drawn up; left out where their weight is not known
 * @example heavyLift(6000) // "6 kg of lingos is heavy: pull a few handles at a time, with a straight back, and let them go the same way."
 */
export function heavyLift(grams?: number): string {
  if (grams === undefined) return "What the lingos weigh is not known: weigh one before you lift many.";
  const weight = `${Number((grams / 1000).toFixed(1))} kg of lingos`;
  if (grams >= VERY_HEAVY_GRAMS) {
    return `${weight} is too much to draw as it stands: ask the maker of the loom first whether it may carry that, take lighter lingos or draw fewer units in a row, and never draw it alone or in one pull.`;
  }
  return grams >= HEAVY_GRAMS
    ? `${weight} is heavy: pull a few handles at a time, with a straight back, and let them go the same way.`
    : "";
}

/**
 * The caution that goes with a lift plan, by its heaviest lift.
 * @param grams the lingos of the heaviest lift; left out where their weight is not known
 * @example liftCaution(500) === WEIGHT_CAUTION // true
 */
export function liftCaution(grams?: number): string {
  return [heavyLift(grams), WEIGHT_CAUTION].filter((text) => text !== "").join(" ");
}
