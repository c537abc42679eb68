import type { WeaveDescription } from "../description/description.js";
import type { Ground } from "../types.js";
import type { Arrangement } from "./arrange.js";
import { chosenGround, type GroundPlanKind, type GroundPlanOptions } from "./choose.js";
import { cutOf, type FigureSize, type GroundCut, isClean } from "./cut.js";
import { type IrregularPair, irregularPair } from "./irregular.js";
import { reasonsOf } from "./reasons.js";

/** A ground for long-eyed heddles, chosen from all ways to begin it. */
export interface GroundPlan {
  /** How ground and figure share the shafts. */
  readonly kind: GroundPlanKind;
  /** The raise and sink plan. */
  readonly ground: Ground;
  /** How its borders cut. */
  readonly cut: GroundCut;
  /** The other ways to lay the two weaves, one for each kind of cut, the better first. */
  readonly rivals: readonly Arrangement[];
  /** Where no regular pair on as many ends is clean: an irregular pair that is, with its price. */
  readonly cleaner?: IrregularPair;
  /** In sentences: what the plan does that its name does not say, and why it does not cut clean where it does not. */
  readonly reasons: readonly string[];
}

const NO_COUNTERPART =
  "from every start the warp-faced counterpart would sink a shaft on a pick that raises it, so there is no second weave";

/**
 * The raise and sink plan of a weave: of all starts and both directions of its warp-faced counterpart, the one that cuts
 * best for figures of the given size. A balanced weave leaves the figure no say, unless it has a pattern weft.
 * @param description the weave, read or as `parseWeave` reads it
 * @param options the ends counted on, the shafts of the loom, the figure, the longest float of a pattern weft
 * @throws {GroundError} as `weaveOf`; `bad-size` for a unit or row of no threads
 * Source: J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 234-235; T. F. Bell, Jacquard Weaving and Designing, 1895, p. 117.
 * @example groundPlanOf("broken twill 1/3").ground.steps[0] // { raise: [1], sink: [4] }
 */
export function groundPlanOf(
  description: string | WeaveDescription,
  options: GroundPlanOptions = {},
): GroundPlan {
  const {
    kind,
    ground,
    cut = cutOf(ground, options),
    rivals,
    warpFaced,
    balanced,
  } = chosenGround(description, options);
  const reasons = reasonsOf(ground, cut, options, warpFaced);
  if (kind !== "two weaves") {
    const hasNoCounterpart = kind === "ground alone" && !balanced;
    return { kind, ground, cut, rivals, reasons: hasNoCounterpart ? [NO_COUNTERPART, ...reasons] : reasons };
  }
  const cleaner = isClean(cut) || !isCounted(ground, options) ? undefined : irregularPair(ground.shafts);
  return { kind, ground, cut, rivals, ...(cleaner && { cleaner }), reasons };
}

/** One shaft up and one down on each pick, threaded straight, under a figure of whole repeats. */
function isCounted(
  { shafts, threading, steps }: Ground,
  { unitEnds = shafts, picksPerRow = shafts }: FigureSize,
): boolean {
  return (
    threading.length === shafts &&
    steps.length === shafts &&
    steps.every(({ raise, sink }) => raise.length === 1 && sink.length === 1) &&
    unitEnds % shafts === 0 &&
    picksPerRow % shafts === 0
  );
}
