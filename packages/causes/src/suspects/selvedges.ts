/** An end of a selvedge on another shaft than its neighbours say. */

import { endsOfEachUnit, type UnitDraft } from "@drawcord/units";
import type { SelvedgeOrder } from "../slip.js";
import type { Suspect } from "./suspect.js";

type Side = "left" | "right";
const sides: readonly Side[] = ["left", "right"];

/** A way in which a selvedge is told in few words. */
interface Telling {
  readonly by: SelvedgeOrder;
  readonly shafts: (own: readonly number[]) => readonly number[] | undefined;
}

/** The selvedge ends that break the order of their selvedge, where one end set right restores it. */
export function selvedgeSuspects(draft: UnitDraft): Suspect[] {
  const found = sides.flatMap((side) => suspectOf(draft, side));
  const [left, right] = found;
  // Where each is only not the other, one of them was written wrong.
  if (left === undefined || right === undefined || !isOfOther(left) || !isOfOther(right)) return found;
  const [first, second] = right.gain > left.gain ? [right, left] : [left, right];
  return [{ ...first, sure: false, rivals: [second.changes, ...first.rivals], told: [second] }];
}

function isOfOther({ reason }: Suspect): boolean {
  return reason.reason === "selvedge-order" && (reason.by === "other" || reason.by === "other-turned");
}

function suspectOf(draft: UnitDraft, side: Side): Suspect[] {
  const own = draft.selvedge?.[side] ?? [];
  if (own.length < 3) return [];
  const tellings = tellingsOf(draft, side);
  const holds = (shafts: readonly number[]) =>
    tellings.filter((telling) => telling.shafts(shafts)?.join() === shafts.join());
  if (holds(own).length > 0) return [];
  const all = [
    ...new Set([
      ...own,
      ...(draft.selvedge?.left ?? []),
      ...(draft.selvedge?.right ?? []),
      ...draft.ground.threading,
    ]),
  ];
  const found = own.flatMap((was, end) =>
    all.flatMap((shaft) => {
      if (shaft === was) return [];
      const shafts = own.with(end, shaft);
      const told = holds(shafts);
      return told.length === 0 ? [] : [{ end, shaft, was, shafts, told }];
    }),
  );
  found.sort((a, b) => b.told.length - a.told.length);
  const [best, ...others] = found;
  if (best === undefined) return [];
  const rivals = others.filter(({ told }) => told.length === best.told.length);
  const { end, shaft, shafts, told, was } = best;
  return [
    {
      changes: [{ change: "selvedge", side, shafts }],
      slip: { slip: "selvedge-end", side, end: end + 1, shaft: was, says: shaft, by: told[0]!.by },
      reason: { reason: "selvedge-order", side, by: told[0]!.by },
      gain: 4 + 2 * told.length,
      sure: rivals.length === 0,
      rivals: rivals.slice(0, 3).map((one) => [{ change: "selvedge", side, shafts: one.shafts }]),
    },
  ];
}

function tellingsOf({ ground, selvedge, threading, unitEnds }: UnitDraft, side: Side): Telling[] {
  const across = selvedge?.[side === "left" ? "right" : "left"] ?? [];
  const ends = endsOfEachUnit({ threading, unitEnds }).reduce((sum, one) => sum + one, 0);
  const repeat = ground.threading.length;
  const groundAt = (end: number) => ground.threading[((end % repeat) + repeat) % repeat]!;
  const first = (length: number) => (side === "left" ? -length : ends);
  return [
    { by: "ground", shafts: (own) => own.map((_, i) => groundAt(first(own.length) + i)) },
    { by: "other", shafts: (own) => (own.length === across.length ? across : undefined) },
    {
      by: "other-turned",
      shafts: (own) => (own.length === across.length ? across.toReversed() : undefined),
    },
    { by: "turn-about", shafts: (own) => periodic(own) },
    { by: "groups", shafts: (own) => grouped(own) },
    { by: "straight", shafts: (own) => straight(own, ground.shafts) },
  ];
}

/** The ends by the shortest period that comes twice and more. */
function periodic(own: readonly number[]): readonly number[] | undefined {
  for (let period = 1; period * 2 <= own.length; period++) {
    if (own.every((shaft, i) => i < period || shaft === own[i - period])) return own;
  }
  return undefined;
}

/** The ends in groups of one size, two or more on a shaft. */
function grouped(own: readonly number[]): readonly number[] | undefined {
  for (let size = 2; size * 2 <= own.length; size++) {
    if (own.length % size !== 0) continue;
    if (own.every((shaft, i) => shaft === own[i - (i % size)])) return own;
  }
  return undefined;
}

/** The ends one shaft on each, either way, round the harness. */
function straight(own: readonly number[], shafts: number): readonly number[] | undefined {
  const goes = (by: number) => own.every((shaft, i) => i === 0 || (shaft - own[i - 1]! - by) % shafts === 0);
  return goes(1) || goes(-1) ? own : undefined;
}
