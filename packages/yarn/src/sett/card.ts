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
  readonly tex: Result;
  readonly counts: readonly {
    readonly system: CountSystemId;
    readonly title: string;
    readonly count: Result;
  }[];
  readonly diameters: {
    /** Yarns side by side, by the root rule. */
    readonly sideBySide: Result;
    readonly root: Result;
    readonly peirce: Result;
    readonly packing?: Result;
  };
  readonly setts: readonly { readonly weave: string; readonly closest: Result; readonly working: Result }[];
}

/**
 * A yarn in every system, with its diameters and its setts in the usual weaves.
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
