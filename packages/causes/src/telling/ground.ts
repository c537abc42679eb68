/**
 * How long a ground takes to tell. A ground that somebody composed is a weave: every treadle of a weft moves as many
 * shafts, each shaft as often, in one order, and what is sunk goes with what is raised. What fails that costs bits.
 */
import type { Ground, GroundStep, ShaftSet } from "@drawcord/ground";

/** Bits of the shortest telling of the treadling: 0 for a weave in one order. */
export function treadlingLength({ shafts, steps }: Pick<Ground, "shafts" | "steps">): number {
  const wefts = new Map<string, GroundStep[]>();
  for (const step of steps) {
    const { weft = "" } = step;
    const same = wefts.get(weft);
    if (same === undefined) wefts.set(weft, [step]);
    else same.push(step);
  }
  let bits = 0;
  for (const [weft, own] of wefts) {
    const raised = own.map(({ raise }) => raise);
    const sunk = own.map(({ sink }) => sink);
    const binds = weft === "";
    bits +=
      orderLength(raised, shafts, binds) + orderLength(sunk, shafts, binds) + companyLength(own, shafts);
  }
  return bits;
}

/** Bits that tell a ground of which every step moves the same shafts. */
const ONE_SHED = 12;

/** Bits that tell sets of shafts one after the other: how unlike they are in size, in how often a shaft comes, and in order. */
function orderLength(sets: readonly ShaftSet[], shafts: number, binds: boolean): number {
  if (sets.every((set) => set.length === 0)) return 0;
  // One set for every step, as the ties of a pattern weft, is told at once; a ground weft of one shed weaves nothing.
  if (sets.every((set) => set.join() === sets[0]!.join())) return binds && sets.length > 1 ? ONE_SHED : 1;
  const sizes = sets.map((set) => set.length);
  const usual = mostCommon(sizes).value;
  let bits = 0;
  for (const size of sizes) if (size !== usual) bits += 5;
  const times = new Int32Array(shafts + 1);
  for (const set of sets) for (const shaft of set) times[shaft]!++;
  const often = mostCommon([...times].slice(1)).value;
  for (let shaft = 1; shaft <= shafts; shaft++) bits += 3 * Math.min(2, Math.abs(times[shaft]! - often));
  if (sets.length < 3) return bits;
  return bits + Math.min(stepsApart(sets, shafts), comesAgain(sets));
}

/** Steps from a lowest shaft to the next that are not the usual step. */
function stepsApart(sets: readonly ShaftSet[], shafts: number): number {
  const steps = sets.map((set, i) => {
    const next = sets[(i + 1) % sets.length]!;
    const [from, to] = [set[0], next[0]];
    return from === undefined || to === undefined ? -1 : (to - from + shafts) % shafts;
  });
  return 2 * (steps.length - mostCommon(steps).times);
}

/** Steps that are not as the step a period before. */
function comesAgain(sets: readonly ShaftSet[]): number {
  const keys = sets.map((set) => set.join());
  let least = Number.POSITIVE_INFINITY;
  for (let period = 1; period * 2 <= keys.length; period++) {
    if (keys.length % period !== 0) continue;
    let unlike = 0;
    keys.forEach((key, i) => {
      if (key !== keys[(i + period) % keys.length]) unlike++;
    });
    least = Math.min(least, 2 * unlike + 1.5 * period);
  }
  return least;
}

/** How what is sunk goes with what is raised: by one sum, by one distance, as the rest of the shafts, or not at all. */
function companyLength(steps: readonly GroundStep[], shafts: number): number {
  const both = steps.filter(({ raise, sink }) => raise.length + sink.length > 0);
  if (both.length < 2) return 0;
  const one = (set: ShaftSet) => (set.length === 1 ? set[0]! : Number.NaN);
  const relations = [
    both.map(({ raise, sink }) => (one(raise) + one(sink)) % shafts),
    both.map(({ raise, sink }) => (one(raise) - one(sink) + shafts) % shafts),
    both.map(({ raise, sink }) => (raise.length + sink.length === shafts ? 1 : Number.NaN)),
    both.map(({ sink }) => (sink.length === 0 ? 1 : Number.NaN)),
    both.map(({ raise }) => (raise.length === 0 ? 1 : Number.NaN)),
  ];
  return Math.min(
    ...relations.map(
      (values) => 3 * (values.length - mostCommon(values.filter((v) => !Number.isNaN(v))).times),
    ),
  );
}

function mostCommon(values: readonly number[]): { readonly value: number; readonly times: number } {
  const times = new Map<number, number>();
  let best = { value: 0, times: 0 };
  for (const value of values) {
    const now = (times.get(value) ?? 0) + 1;
    times.set(value, now);
    if (now > best.times) best = { value, times: now };
  }
  return best;
}
