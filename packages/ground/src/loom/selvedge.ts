import { commonMultiple, upTo } from "../arithmetic.js";
import { soundCount } from "../size.js";
import type { Ground, ShaftSet } from "../types.js";
import { weaveOf } from "../weave/build.js";
import { otherShafts } from "../weave/weave.js";

/** A ground with shafts of its own for the edges, and the shafts of the edge ends. */
export interface SelvedgedGround {
  /** The ground with the shafts and steps of the edges added. */
  readonly ground: Ground;
  /** The shafts of the ends at the left edge, outermost first, and at the right edge, outermost last. */
  readonly left: readonly number[];
  /** The shafts of the ends at the right edge, outermost last. */
  readonly right: readonly number[];
  /** Whether the weft catches the outermost end at each turn, when the first pick goes from left to right. */
  readonly caught: {
    /** Whether it is caught at the left edge. */
    readonly left: boolean;
    /** Whether it is caught at the right edge. */
    readonly right: boolean;
  };
}

/** How the edges are woven. */
export interface SelvedgeOptions {
  /** The weave of the edges; `plain` by default. */
  readonly weave?: string;
  /** Ends at each edge; 4 by default. */
  readonly ends?: number;
}

/**
 * Adds an edge in its own weave beside the figure: on shafts of its own, each of which every pick raises or sinks, so
 * that the edge holds however the figure is drawn. The steps are repeated until ground and edge come out together.
 * @param ground the ground of the figure; its shafts keep their numbers
 * @param options the weave of the edges, and how many ends they have
 * @throws {GroundError} as `weaveOf` for the weave of the edge; `bad-size` for no ends
 * @example withSelvedge(groundFromWeave("broken twill")).left // [5, 6, 5, 6]
 */
export function withSelvedge(ground: Ground, options: SelvedgeOptions = {}): SelvedgedGround {
  const weave = weaveOf(options.weave ?? "plain");
  const ends = soundCount(options.ends ?? 4, "the number of ends of a selvedge");
  const own = (set: ShaftSet) => set.map((shaft) => ground.shafts + shaft);
  const picks = commonMultiple(ground.steps.length, weave.raised.length);
  const raised = upTo(picks).map((pick) => weave.raised[pick % weave.raised.length]!);
  const edge = upTo(ends).map((end) => weave.threading[end % weave.threading.length]!);
  const turns = (shaft: number, first: number) =>
    upTo(picks).every((turn) => {
      const before = raised[(2 * turn + first) % picks]!.includes(shaft);
      return before !== raised[(2 * turn + first + 1) % picks]!.includes(shaft);
    });
  const left = own(edge);
  return {
    ground: {
      shafts: ground.shafts + weave.shafts,
      threading: ground.threading,
      steps: raised.map((set, pick) => {
        const step = ground.steps[pick % ground.steps.length]!;
        return {
          ...step,
          raise: [...step.raise, ...own(set)],
          sink: [...step.sink, ...own(otherShafts(weave.shafts, set))],
        };
      }),
    },
    left,
    right: left.toReversed(),
    caught: { left: turns(edge[0]!, 1), right: turns(edge[0]!, 0) },
  };
}
