import { many } from "@drawcord/base";
import { bouts, type Plan, type Warping } from "@drawcord/yarn";

/** Threads wound together, and portees chained off as one bout, where a recipe has no word for either: common practice. */
const THREADS = 2;
const PORTEES = 20;
/** The most ends of a warp that is wound. */
const MOST_ENDS = 10_000_000;

/** How the warp of a plan is wound; undefined where there is none to wind. */
export function windingOf({ ends }: Pick<Plan, "ends">): Warping | undefined {
  if (ends.value < 1 || ends.value > MOST_ENDS) return undefined;
  return bouts(ends.value, { threads: THREADS, porteesInABout: PORTEES });
}

/** The winding as a line or two: `282 passes of 2 threads (a 2x2 cross), 141 portees`. */
export function windingLines({ cross, endsInBouts, passes, portees, threads }: Warping): string[] {
  const whole = endsInBouts[0] ?? 0;
  const last = endsInBouts.at(-1) ?? whole;
  const alike = endsInBouts.length - (last === whole ? 0 : 1);
  const others = last === whole ? "" : ` and 1 of ${last}`;
  return [
    `${passes.value} ${passes.value === 1 ? "pass" : "passes"} of ${threads} threads (a ${cross} cross), ${many(portees.value, "portee")}`,
    `${many(endsInBouts.length, "bout")} of ${PORTEES} portees at most: ${alike} of ${many(whole, "end")}${others}`,
  ];
}

/** The winding for a script. */
export function windingJson({ endsInBouts, passes, portees, spare, threads }: Warping): object {
  return {
    threads,
    passes: passes.value,
    portees: portees.value,
    porteesInABout: PORTEES,
    endsInBouts,
    spare,
  };
}

/** The numbers of a winding, for their working. */
export function windingNumbers({ bouts: number, passes, portees }: Warping): readonly Warping["passes"][] {
  return [passes, portees, number];
}
