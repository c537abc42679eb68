import { needKeys } from "@drawcord/base";
import { YarnError } from "../error.js";
import type { Input } from "../formula/input.js";
import { type Result, workOut } from "../formula/work-out.js";
import { countFormulas } from "../formulas/counts.js";
import { countTrees } from "../formulas/trees.js";
import type { Quantity } from "../quantity/units.js";
import { parseYarn } from "./parse.js";
import { printYarn } from "./print.js";
import { type CountSystemId, countSystems } from "./systems.js";
import type { Yarn } from "./yarn.js";

/** A yarn, its text in the notation of the trade, or its weight for a length. */
export type YarnInput = Yarn | string | Quantity;

/** How plies are put together. */
export interface PlyOptions {
  /** Share of the length of the plies that twisting takes up. Default: 0 %, shown as assumed. */
  readonly twistTakeUp?: Input;
}

/**
 * A yarn in tex: from its count, the plies together.
 * @param yarn the yarn by its count
 * @param options how much length the twist of plies takes up
 * @throws {YarnError} as `parseYarn`; `absurd` outside 0.5 to 5000 tex
 * @example tex("20/2 Ne").value // 59.05
 */
export function tex(yarn: Yarn | string, options?: PlyOptions): Result;
/**
 * A yarn in tex: from its count, the plies together; a quantity is taken as it is.
 * @param yarn the yarn by its count, or in tex already
 * @param options how much length the twist of plies takes up
 * @throws {YarnError} as `parseYarn`; `absurd` outside 0.5 to 5000 tex
 * @example tex(tex("20/2 Ne")).value // 59.05
 */
export function tex(yarn: YarnInput, options?: PlyOptions): Quantity;
export function tex(yarn: YarnInput, options: PlyOptions = {}): Quantity {
  if (typeof yarn === "object" && yarn !== null && "unit" in yarn) return yarn;
  if (typeof yarn !== "string") needKeys(yarn, "a yarn", { system: "text" });
  const read = typeof yarn === "string" ? parseYarn(yarn) : yarn;
  try {
    const one = texOfCount(read.count, read.system);
    if (read.plies === 1 || read.resultant) return one;
    return workOut(countFormulas, countTrees, "tex-of-like-plies", {
      n: read.plies,
      T_1: one,
      c: options.twistTakeUp,
    });
  } catch (failure) {
    if (!(failure instanceof YarnError)) throw failure;
    throw new YarnError(failure.code, `${printYarn(read)}: ${failure.message}`, failure.facts);
  }
}

/** One count in tex, plies aside. */
function texOfCount(count: number, system: CountSystemId): Result {
  const { counts, length, mass } = countSystems[system];
  return counts === "lengths"
    ? workOut(countFormulas, countTrees, "tex-of-indirect-count", { N: count, h: length, m: mass })
    : workOut(countFormulas, countTrees, "tex-of-direct-count", { N: count, m: mass, l: length });
}

/**
 * The count of a yarn in a system, plies together.
 * @param yarn the yarn by its count, or in tex already
 * @param system the system that the count is wanted in
 * @param options how much length the twist of plies takes up
 * @throws {YarnError} as `tex`
 * @example countIn("20/2 Ne", "worsted").value // 15
 */
export function countIn(yarn: YarnInput, system: CountSystemId, options: PlyOptions = {}): Result {
  const { counts, length, mass } = countSystems[system];
  const T = tex(yarn, options);
  return counts === "lengths"
    ? workOut(countFormulas, countTrees, "indirect-count-of-tex", { T, h: length, m: mass })
    : workOut(countFormulas, countTrees, "direct-count-of-tex", { T, l: length, m: mass });
}

/**
 * Several yarns twisted together, in tex.
 * @param yarns the yarns that are twisted together
 * @param options how much length the twist takes up
 * @throws {YarnError} as `tex`; `missing` when there is none
 * @example countIn(plied(["60 Ne", "40 Ne"]), "cotton").value // 24
 */
export function plied(yarns: readonly YarnInput[], options: PlyOptions = {}): Result {
  return workOut(countFormulas, countTrees, "tex-of-unlike-plies", {
    T_i: yarns.map((yarn) => tex(yarn)),
    c: options.twistTakeUp,
  });
}

/**
 * A yarn in tex from a length of it on the scales.
 * @param length how long the piece on the scales is
 * @param mass what it weighs
 * @example countIn(weighed("120 yd", "20 gr"), "cotton").value // 50
 */
export function weighed(length: Input, mass: Input): Result {
  return workOut(countFormulas, countTrees, "tex-of-weighed-length", { l: length, m: mass });
}

/**
 * What a length of yarn weighs.
 * @param yarn the yarn by its count, or in tex already
 * @param length how much of it
 * @example massOf("20 Ne", "16 yd").value // 0.432
 */
export function massOf(yarn: YarnInput, length: Input): Result {
  return workOut(countFormulas, countTrees, "mass-of-length", { T: tex(yarn), l: length });
}
