import { parseYarn } from "../count/parse.js";
import { printYarn } from "../count/print.js";
import { type CountSystemId, countSystems } from "../count/systems.js";
import { countIn, tex } from "../count/tex.js";
import type { Yarn } from "../count/yarn.js";
import { calculate } from "../formula/calculate.js";
import type { Result } from "../formula/work-out.js";
import { diameterByPacking, diameterByPeirce, diametersByRoot, type RootOptions } from "./diameter.js";
import { settOfWraps } from "./sett.js";
import { usualWeaves } from "./weaves.js";

/** What the yarn is made of. */
export interface YarnCardOptions extends RootOptions {
  /** Fibre, for its constant and density. Default: not known; then k is 0.90 and the packing form is left out. */
  readonly fibre?: string;
}

/** All that a weaver asks of a yarn before she sets it. */
export interface YarnCard {
  /** As its trade writes it. */
  readonly yarn: string;
  /** In tex, plies together. */
  readonly tex: Result;
  /** In every system that is known. */
  readonly counts: readonly {
    /** The system. */
    readonly system: CountSystemId;
    /** How the system is called. */
    readonly title: string;
    /** Its count there, plies together. */
    readonly count: Result;
  }[];
  /** How thick it is, by several rules. */
  readonly diameters: {
    /** Yarns side by side, by the root rule. */
    readonly sideBySide: Result;
    /** One side by side of those, as a thickness. */
    readonly root: Result;
    /** By Peirce, as if of cotton. */
    readonly peirce: Result;
    /** By the density of its fibre; left out where none is named. */
    readonly packing?: Result;
  };
  /** In the usual weaves. */
  readonly setts: readonly {
    /** The weave. */
    readonly weave: string;
    /** The closest sett of it. */
    readonly closest: Result;
    /** The sett to work with, looser than that. */
    readonly working: Result;
  }[];
}

/**
 * A yarn in every system, with its diameters and its setts in the usual weaves.
 * @param yarn the yarn by its count
 * @param options the fibre, and how close to set it
 * @throws {YarnError} as `parseYarn` and `tex`; `unknown-fibre` (names the nearest)
 * @example yarnCard("20/2 Ne").counts.length // 16
 */
export function yarnCard(yarn: Yarn | string, options: YarnCardOptions = {}): YarnCard {
  const read = typeof yarn === "string" ? parseYarn(yarn) : yarn;
  const whole = tex(read);
  const sideBySide = diametersByRoot(whole, options);
  return {
    yarn: printYarn(read),
    tex: whole,
    counts: (Object.keys(countSystems) as CountSystemId[]).map((system) => ({
      system,
      title: countSystems[system].title,
      count: countIn(whole, system),
    })),
    diameters: {
      sideBySide,
      root: calculate("diameter-of-wraps", { w: sideBySide }),
      peirce: diameterByPeirce(whole),
      ...(options.fibre === undefined ? {} : { packing: diameterByPacking(whole, options.fibre) }),
    },
    setts: Object.entries(usualWeaves).map(([weave, interlacing]) => {
      const closest = settOfWraps(sideBySide, interlacing);
      return { weave, closest, working: calculate("working-sett", { S_m: closest }) };
    }),
  };
}
