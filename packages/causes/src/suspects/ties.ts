/** Slips of the ground: ties that are a weave's but for one, and steps exchanged. */
import { cutOf, type Ground, type GroundStep, isClean } from "@drawcord/ground";
import type { Change } from "@drawcord/units";
import type { Slip } from "../slip.js";
import { treadlingLength } from "../telling/ground.js";
import type { Suspect } from "./suspect.js";

/** Bits by which a tie must shorten the telling of its ground. */
const LEAST_GAIN = 5;

/** Steps and shafts beyond which not every edit is weighed. */
const MOST_STEPS = 64;

/** Steps beyond which exchanges are not weighed. */
const MOST_EXCHANGED = 16;

/** Shafts from which a satin has a step. */
const LEAST_SATIN = 5;

interface Weighed {
  readonly changes: readonly Change[];
  readonly bits: number;
}

/** A tie or an exchange of steps, whichever leaves the shorter telling of the ground; the other is its rival where it is as short. */
export function groundSuspects(ground: Ground): Suspect[] {
  const [tie] = tieSuspects(ground);
  const [exchanged] = exchangedSteps(ground);
  if (tie === undefined || exchanged === undefined)
    return [...(tie ? [tie] : []), ...(exchanged ? [exchanged] : [])];
  return [exchanged.gain > tie.gain ? exchanged : tie];
}

/** Treadles that were tied to other shafts than the weave has, the likeliest edit first and the others as its rivals. */
function tieSuspects(ground: Ground): Suspect[] {
  const { shafts, steps } = ground;
  if (steps.length < 2 || steps.length > MOST_STEPS || shafts > 32) return [];
  const now = treadlingLength(ground);
  const weighed: Weighed[] = [];
  const weigh = (changed: readonly GroundStep[], changes: readonly Change[], price: number) => {
    const bits = treadlingLength({ shafts, steps: changed }) + price;
    if (now - bits >= LEAST_GAIN) weighed.push({ changes, bits });
  };
  steps.forEach((step, i) => {
    for (const tied of otherTies(step, shafts)) {
      weigh(steps.with(i, tied), [tieOf(tied, i)], ties(tied) < ties(step) ? 2.5 : 0);
    }
  });
  return suspectsOf(weighed, now, steps);
}

/** Two steps of one weft that were exchanged, where the order of the others tells it. */
function exchangedSteps(ground: Ground): Suspect[] {
  // On four ends every order is a weave, straight or broken; and what cuts clean all round was composed.
  if (ground.shafts < LEAST_SATIN || isClean(cutOf(ground))) return [];
  return exchanges(ground, ground.steps.length, ({ bits }, now) => now - bits >= LEAST_GAIN);
}

/** Two neighbouring steps of one weft that may have been exchanged: exchanged back they leave a weave that cuts; only what is found can tell. */
export function uncutSteps(ground: Ground): Suspect[] {
  const found = exchanges(
    ground,
    1,
    ({ after, bits }, now) => bits <= now && isClean(cutOf({ ...ground, steps: after })),
  );
  return found.map((suspect) => ({ ...suspect, gain: 0, slipOf: "ground" }));
}

/** An exchange of two steps, to be believed or not. */
interface Exchange extends Weighed {
  readonly after: readonly GroundStep[];
}

function exchanges(
  { shafts, steps }: Ground,
  apart: number,
  believed: (exchange: Exchange, now: number) => boolean,
): Suspect[] {
  if (steps.length < 3 || steps.length > MOST_EXCHANGED) return [];
  const now = treadlingLength({ shafts, steps });
  const weighed: Weighed[] = [];
  steps.forEach((step, i) => {
    for (let j = i + 1; j < Math.min(steps.length, i + 1 + apart); j++) {
      if (steps[j]!.weft !== step.weft) continue;
      const [one, other] = [
        { ...step, ...tiesOf(steps[j]!) },
        { ...steps[j]!, ...tiesOf(step) },
      ];
      const after = steps.with(i, one).with(j, other);
      const changes = [tieOf(one, i), tieOf(other, j)];
      const exchange = { after, changes, bits: treadlingLength({ shafts, steps: after }) };
      if (believed(exchange, now)) weighed.push({ changes, bits: exchange.bits + (j === i + 1 ? 0 : 2) });
    }
  });
  return suspectsOf(weighed, now, steps);
}

function suspectsOf(weighed: Weighed[], now: number, steps: readonly GroundStep[]): Suspect[] {
  // Of two treadles that move the same the one is likelier which leaves the lower shafts first: so weaves are written.
  const tied = ({ changes }: Weighed) =>
    changes.flatMap((change) =>
      change.change === "tie" ? [[change.step, ...change.raise, ...change.sink]] : [],
    );
  const order = (one: Weighed) => {
    const [[step = 0, shaft = 0] = []] = tied(one);
    return Math.abs(step - shaft);
  };
  weighed.sort((a, b) => a.bits - b.bits || order(a) - order(b));
  const [best, ...others] = weighed;
  if (best === undefined) return [];
  const rivals = others.filter(({ bits }) => bits < best.bits + 2).slice(0, 5);
  return [
    {
      changes: best.changes,
      slip: slipOf(best.changes, steps),
      reason: { reason: "weave" },
      gain: now - best.bits,
      sure: rivals.length === 0,
      rivals: rivals.map(({ changes }) => changes),
    },
  ];
}

function ties({ raise, sink }: GroundStep): number {
  return raise.length + sink.length;
}

function tiesOf({ raise, sink }: GroundStep): Pick<GroundStep, "raise" | "sink"> {
  return { raise, sink };
}

function tieOf({ raise, sink }: GroundStep, step: number): Change {
  return { change: "tie", step: step + 1, raise, sink };
}

/** A step with one tie more, one less, one on another shaft, or one raised that was sunk. */
function* otherTies(step: GroundStep, shafts: number): Iterable<GroundStep> {
  for (const part of ["raise", "sink"] as const) {
    const own = step[part];
    const other = step[part === "raise" ? "sink" : "raise"];
    const free = Array.from({ length: shafts }, (_, i) => i + 1).filter(
      (shaft) => !own.includes(shaft) && !other.includes(shaft),
    );
    for (const shaft of free) {
      yield { ...step, [part]: ascending([...own, shaft]) };
      for (const gone of own)
        yield { ...step, [part]: ascending([...own.filter((one) => one !== gone), shaft]) };
    }
    for (const gone of own) {
      const rest = own.filter((one) => one !== gone);
      yield { ...step, [part]: rest };
      yield { ...step, [part]: rest, [part === "raise" ? "sink" : "raise"]: ascending([...other, gone]) };
    }
  }
}

function ascending(shafts: readonly number[]): number[] {
  return [...shafts].sort((a, b) => a - b);
}

/** What is written of the steps that are tied anew, and what it should be. */
function slipOf(changes: readonly Change[], steps: readonly GroundStep[]): Slip {
  const ties = changes.flatMap((change) => (change.change === "tie" ? [change] : []));
  if (ties.length > 1) return { slip: "steps-exchanged", steps: ties.map(({ step }) => step) };
  const [{ step, raise, sink }] = ties as [(typeof ties)[0]];
  const was = steps[step - 1]!;
  return {
    slip: "tie",
    step,
    ...(was.raise.join() !== raise.join() && { raises: { was: was.raise, says: raise } }),
    ...(was.sink.join() !== sink.join() && { sinks: { was: was.sink, says: sink } }),
  };
}
