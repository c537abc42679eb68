import { modulo, upTo } from "../arithmetic.js";
import type { ShaftSet } from "../types.js";
import type { Weave } from "../weave/weave.js";
import type { Candidate } from "./arrange.js";
import type { Lifts } from "./open-pairs.js";

/**
 * The warp-faced counterparts of a weft-faced weave: it and its mirrors, begun on every shaft and every pick.
 * Where each pick is the one before it moved on, a later pick is another shaft, and only shafts are tried.
 */
export function* counterparts({ shafts, threading, raised }: Weave): Generator<Candidate> {
  const regular = movesOn(raised, shafts);
  const turnable = regular || threading.every((shaft, end) => shaft === end + 1);
  const shaftStarts = turnable ? shafts : 1;
  const pickStarts = regular ? 1 : raised.length;
  for (const { lifts, opposite } of forms(raised, shafts, turnable)) {
    for (let pick = 0; pick < pickStarts; pick++) {
      for (let shaft = 0; shaft < shaftStarts; shaft++) {
        yield {
          sink: upTo(lifts.length).map((i) => moved(lifts[(i + pick) % lifts.length]!, shaft, shafts)),
          opposite,
        };
      }
    }
  }
}

/** Orders with one shaft a pick, moved on by every step and begun on every shaft. */
export function* regularSinks(
  shafts: number,
  raiseStep: number,
  steps: readonly number[],
): Generator<Candidate> {
  for (const step of steps) {
    for (let start = 0; start < shafts; start++) {
      yield { sink: regularLifts(shafts, step, start), opposite: step === shafts - raiseStep };
    }
  }
}

/** One shaft a pick, each `step` further than the one before. */
export function regularLifts(shafts: number, step: number, start = 0): Lifts {
  return upTo(shafts).map((pick) => [modulo(start + pick * step, shafts) + 1]);
}

/** Whether each pick, and the first after the last, raises what the one before it raises, moved on by a constant step. */
function movesOn(lifts: Lifts, shafts: number): boolean {
  return upTo(shafts).some((step) =>
    lifts.every((set, pick) => moved(set, step, shafts).join() === lifts[(pick + 1) % lifts.length]!.join()),
  );
}

/** The weave as it is, mirrored sideways, turned end for end, and both. */
function forms(lifts: Lifts, shafts: number, turnable: boolean): { lifts: Lifts; opposite: boolean }[] {
  const back = lifts.toReversed();
  const along = [
    { lifts, opposite: false },
    { lifts: back, opposite: true },
  ];
  if (!turnable) return along;
  const mirrored = (all: Lifts) => all.map((set) => set.map((shaft) => shafts + 1 - shaft).reverse());
  return [{ lifts: mirrored(lifts), opposite: true }, ...along, { lifts: mirrored(back), opposite: false }];
}

function moved(set: ShaftSet, by: number, shafts: number): ShaftSet {
  return set.map((shaft) => modulo(shaft - 1 + by, shafts) + 1).sort((a, b) => a - b);
}
