import { many } from "@drawcord/base";
import { chains, type Plan, type Warping } from "@drawcord/yarn";

/** Threads wound together, and double passes taken off as one chain, where a recipe has no word for either: common practice. */
const THREADS = 2;
const DOUBLE_PASSES = 20;
/** The most ends of a warp that is wound. */
const MOST_ENDS = 10_000_000;

/** How the warp of a plan is wound; undefined where there is none to wind. */
export function windingOf({ ends }: Pick<Plan, "ends">): Warping | undefined {
  if (ends.value < 1 || ends.value > MOST_ENDS) return undefined;
  return chains(ends.value, { threads: THREADS, doublePassesInAChain: DOUBLE_PASSES });
}

/** The winding as a line or two: `270 passes of 2 threads (a 2x2 cross), 135 double passes`. */
export function windingLines({ cross, endsInChains, passes, doublePasses, threads }: Warping): string[] {
  const whole = endsInChains[0] ?? 0;
  const last = endsInChains.at(-1) ?? whole;
  const alike = endsInChains.length - (last === whole ? 0 : 1);
  const others = last === whole ? "" : ` and 1 of ${last}`;
  return [
    `${passes.value} ${passes.value === 1 ? "pass" : "passes"} of ${threads} threads (a ${cross} cross), ${many(doublePasses.value, "double pass", "double passes")}`,
    `${many(endsInChains.length, "chain")} of ${DOUBLE_PASSES} double passes at most: ${alike} of ${many(whole, "end")}${others}`,
  ];
}

/** The winding for a script. */
export function windingJson({ endsInChains, passes, doublePasses, spare, threads }: Warping): object {
  return {
    threads,
    passes: passes.value,
    doublePasses: doublePasses.value,
    doublePassesInAChain: DOUBLE_PASSES,
    endsInChains,
    spare,
  };
}

/** The numbers of a winding, for their working. */
export function windingNumbers({
  chains: number,
  passes,
  doublePasses,
}: Warping): readonly Warping["passes"][] {
  return [passes, doublePasses, number];
}
