import { needKeys } from "@drawcord/base";
import { sum } from "../arithmetic.js";
import type { WeaveDescription } from "../description/description.js";
import { parseWeave } from "../description/parse.js";
import { soundCount } from "../size.js";
import type { Ground } from "../types.js";
import { type WeaveOptions, weaveOf } from "../weave/build.js";
import { otherShafts, type Weave } from "../weave/weave.js";
import { type Arrangement, arrange } from "./arrange.js";
import { counterparts } from "./candidates.js";
import type { FigureSize, GroundCut } from "./cut.js";
import { withPatternWeft } from "./pattern-weft.js";

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

/** A ground that was chosen, without the words for it. */
interface ChosenGround {
  readonly kind: GroundPlanKind;
  readonly ground: Ground;
  /** Left out where nothing had to be compared. */
  readonly cut?: GroundCut;
  readonly rivals: readonly Arrangement[];
  /** Whether the weave was turned over, being warp-faced. */
  readonly warpFaced: boolean;
  /** Whether it shows as much warp as weft. */
  readonly balanced: boolean;
}

/** The raise and sink plan of a weave, as `groundPlanOf` chooses it: all that a draft needs. */
export function chosenGround(
  description: string | WeaveDescription,
  options: GroundPlanOptions,
): ChosenGround {
  if (typeof description !== "string") needKeys(description, "a weave", { base: "object" });
  soundCount(options.unitEnds ?? 1, "the number of ends in a unit");
  soundCount(options.picksPerRow ?? 1, "the number of picks in a row");
  const read = typeof description === "string" ? parseWeave(description) : description;
  const weave = weaveOf(read, options);
  const raisedShare = sum(weave.raised.map((set) => set.length)) / (weave.shafts * weave.raised.length);
  const alone = { rivals: [], warpFaced: false, balanced: raisedShare === 0.5 };
  if (read.patternWeft) {
    return { ...alone, kind: "pattern weft", ground: withPatternWeft(covered(weave), read.ties, options) };
  }
  const warpFaced = raisedShare > 0.5;
  const ground = warpFaced ? counterchanged(weave) : weave;
  const [best, ...rivals] = alone.balanced
    ? []
    : arrange(ground.threading, ground.shafts, ground.raised, counterparts(ground), options);
  if (!best) return { ...alone, kind: "ground alone", ground: covered(weave) };
  return { ...alone, kind: "two weaves", ground: best.ground, cut: best.cut, rivals, warpFaced };
}

/** The weave alone: every pick sinks what it does not raise. */
function covered({ shafts, threading, raised }: Weave): Ground {
  return { shafts, threading, steps: raised.map((raise) => ({ raise, sink: otherShafts(shafts, raise) })) };
}

/** Raised for lowered. */
function counterchanged(weave: Weave): Weave {
  return { ...weave, raised: weave.raised.map((set) => otherShafts(weave.shafts, set)) };
}
