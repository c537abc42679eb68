import { sum } from "../arithmetic.js";
import type { BaseWeave, Break, Pair, WeaveDescription } from "../description/description.js";
import { parseWeave } from "../description/parse.js";
import { printWeave } from "../description/print.js";
import { clipped } from "../description/words.js";
import { GroundError } from "../error.js";
import { repeatLength, shaftCount, soundCount } from "../size.js";
import { withAdded } from "./added.js";
import { boundWeave } from "./bound.js";
import { corkscrew } from "./corkscrew.js";
import { checkShafts } from "./needs.js";
import {
  brokenByFourths,
  brokenByHalves,
  brokenBySkipping,
  herringbone,
  pointed,
  straight,
  undulating,
} from "./orders.js";
import { satinWeave } from "./satin-weave.js";
import { twill } from "./twill.js";
import { otherShafts, type Weave } from "./weave.js";

/** What a description leaves open. */
export interface WeaveOptions {
  /** Ends the weave is counted on, where the description does not say; where it does, both must agree. */
  readonly ends?: number;
  /** Ground shafts of the loom; by default as many as are needed. */
  readonly loomShafts?: number;
}

/**
 * One repeat of the weave that a description names, on the shafts it needs.
 * @param description the weave, read or as `parseWeave` reads it
 * @param options the ends counted on and the shafts of the loom
 * @throws {GroundError} `bad-description` or `unknown-weave` for text that cannot be read; `bad-step`, `bad-order`, `bad-ratio`,
 * `bad-ends`, `bad-size`, `unbound` or `too-large` for a weave that cannot be
 * @example weaveOf("satin 8 step 3").raised.flat() // [1, 4, 7, 2, 5, 8, 3, 6]
 */
export function weaveOf(description: string | WeaveDescription, options: WeaveOptions = {}): Weave {
  const read = typeof description === "string" ? parseWeave(description) : description;
  const name = clipped(printWeave(read), 60);
  checkShafts(read.base, name, options.ends, options.loomShafts);
  const base = baseWeave(read.base, options.ends);
  const weave = read.plus ? withAdded(base, read.plus) : base;
  return boundWeave(agreeing(weave, name, options.ends), name);
}

/** The weave itself, before points are added to it and whether or not it binds every thread. */
export function baseWeave(base: BaseWeave, ends?: number): Weave {
  switch (base.kind) {
    case "plain":
      return grouped([1, 1], [1, 1], ends);
    case "hopsack":
      return grouped(base.picks, base.ends ?? base.picks, ends);
    case "warp rib":
      return grouped(base.group, [1, 1], ends);
    case "weft rib":
      return grouped([1, 1], base.group, ends);
    case "twill":
      return twill(ratioOr(base, ends), signed(base.step ?? 1, base));
    case "pointed twill":
      return ordered(base, ends, pointed);
    case "undulating twill":
      return ordered(base, ends, (n) => undulating(n, base.moves));
    case "herringbone twill":
      return ordered(base, ends, (n) => herringbone(n, base.after));
    case "broken twill":
      return ordered(base, ends, (n) => broken(n, base.break));
    case "satin":
      return satinWeave(base, ends);
    case "crepe":
      return satinWeave({ ...base, kind: "satin" }, ends);
    case "corkscrew": {
      const { ratio, step } = corkscrew(shaftCount(base.ends, `a corkscrew on ${base.ends} ends`));
      return twill(ratio, signed(step, base));
    }
  }
}

/** Plain weave with its picks and its ends taken in groups; spread over more shafts where a recipe counts on more ends. */
function grouped(picks: Pair, ends: Pair, countedOn: number | undefined): Weave {
  for (const group of [...picks, ...ends]) soundCount(group, "a group of threads");
  const repeat = repeatLength(sum(ends), "this grouped weave");
  repeatLength(sum(picks), "this grouped weave");
  const shafts =
    countedOn !== undefined && repeat === 2 && countedOn % 2 === 0 ? shaftCount(countedOn, "plain weave") : 2;
  const uneven = straight(shafts).filter((shaft) => shaft % 2 === 1);
  return {
    shafts,
    threading: shafts > 2 ? straight(shafts) : [...Array(ends[0]).fill(1), ...Array(ends[1]).fill(2)],
    raised: [...Array(picks[0]).fill(uneven), ...Array(picks[1]).fill(otherShafts(shafts, uneven))],
  };
}

type OrderedTwill = BaseWeave & { kind: `${"pointed" | "undulating" | "herringbone" | "broken"} twill` };

/** A twill whose ends (or picks) come in another order than 1, 2, 3 and so on. */
function ordered(base: OrderedTwill, ends: number | undefined, orderOn: (n: number) => number[]): Weave {
  const weave = twill(ratioOr(base, ends), signed(1, base));
  const order = orderOn(weave.shafts);
  return base.alongPicks
    ? { ...weave, raised: order.map((place) => weave.raised[place - 1]!) }
    : { ...weave, threading: order };
}

function broken(n: number, how: Break = { by: "halves" }): number[] {
  if (how.by === "skipping") return brokenBySkipping(n, how.take, how.skip);
  return how.by === "halves" ? brokenByHalves(n) : brokenByFourths(n);
}

/** The ratio as described, or one up and the rest down on the ends the recipe counts on: 4 for a broken twill, if it does not say. */
function ratioOr(
  base: BaseWeave & { ratio?: readonly number[] },
  ends: number | undefined,
): readonly number[] {
  if (base.ratio) return base.ratio;
  const n = ends ?? (base.kind === "broken twill" ? 4 : undefined);
  if (n === undefined) {
    throw new GroundError(
      "bad-ratio",
      `a ${base.kind} needs its ratio of ends up and down, as in "${base.kind} 2/2"`,
    );
  }
  return [1, soundCount(n, `the number of ends of a ${base.kind}`, 2) - 1];
}

function signed(step: number, { direction }: { direction?: "s" | "z" }): number {
  return direction === "s" ? -step : step;
}

/** Refuses a weave that is not counted on the ends that a recipe states. */
function agreeing(weave: Weave, name: string, ends: number | undefined): Weave {
  const { shafts, threading } = weave;
  if (ends === undefined || ends === shafts || ends === threading.length) return weave;
  throw new GroundError(
    "bad-ends",
    `${name} is woven on ${shafts} ends, not on ${ends}; leave the ends out, or give a weave that adds up to ${ends}`,
    { ends, shafts },
  );
}
