import { needKeys } from "@drawcord/base";
import { sum } from "../arithmetic.js";
import type { WeaveDescription } from "../description/description.js";
import { parseWeave } from "../description/parse.js";
import type { Ground } from "../types.js";
import { type WeaveOptions, weaveOf } from "../weave/build.js";
import { otherShafts, type Weave } from "../weave/weave.js";
import { type Arrangement, arrange } from "./arrange.js";
import { counterparts } from "./candidates.js";
import { cutOf, type FigureSize, type GroundCut, isClean } from "./cut.js";
import { type IrregularPair, irregularPair } from "./irregular.js";
import { withPatternWeft } from "./pattern-weft.js";
import { reasonsOf } from "./reasons.js";

/** What a plan is made for: the ends and shafts of the ground, and the size of unit and row. */
export interface GroundPlanOptions extends WeaveOptions, FigureSize {
  /** The longest float of a pattern weft, in ends, where the weave says nothing of its ties; 12 by default. */
  readonly longestFloat?: number | undefined;
}

/**
 * How a ground and its figure share the shafts:
 * - `two weaves`: undrawn units weave the weft-faced ground, drawn units its warp-faced counterpart;
 * - `pattern weft`: the ground covers every shaft, and the figure lies on picks of its own;
 * - `ground alone`: every pick covers every shaft, so no figure can show.
 */
export type GroundPlanKind = "two weaves" | "pattern weft" | "ground alone";

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
  if (typeof description !== "string") needKeys(description, "a weave", { base: "object" });
  const read = typeof description === "string" ? parseWeave(description) : description;
  const weave = weaveOf(read, options);
  if (read.patternWeft)
    return covering("pattern weft", withPatternWeft(covered(weave), read.ties, options), options);

  const raisedShare = sum(weave.raised.map((set) => set.length)) / (weave.shafts * weave.raised.length);
  const warpFaced = raisedShare > 0.5;
  const ground = warpFaced ? counterchanged(weave) : weave;
  const [best, ...rivals] =
    raisedShare === 0.5
      ? []
      : arrange(ground.threading, ground.shafts, ground.raised, counterparts(ground), options);
  if (!best) {
    const plan = covering("ground alone", covered(weave), options);
    return raisedShare === 0.5 ? plan : { ...plan, reasons: [NO_COUNTERPART, ...plan.reasons] };
  }
  const cleaner =
    isClean(best.cut) || !isCounted(best.ground, options) ? undefined : irregularPair(ground.shafts);
  return {
    kind: "two weaves",
    ground: best.ground,
    cut: best.cut,
    rivals,
    ...(cleaner && { cleaner }),
    reasons: reasonsOf(best.ground, best.cut, options, warpFaced),
  };
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

function covering(kind: "pattern weft" | "ground alone", ground: Ground, size: FigureSize): GroundPlan {
  const cut = cutOf(ground, size);
  return { kind, ground, cut, rivals: [], reasons: reasonsOf(ground, cut, size, false) };
}

/** The weave alone: every pick sinks what it does not raise. */
function covered({ shafts, threading, raised }: Weave): Ground {
  return { shafts, threading, steps: raised.map((raise) => ({ raise, sink: otherShafts(shafts, raise) })) };
}

/** Raised for lowered. */
function counterchanged(weave: Weave): Weave {
  return { ...weave, raised: weave.raised.map((set) => otherShafts(weave.shafts, set)) };
}
