import { sum } from "../arithmetic.js";
import type { Ground, GroundStep, ShaftSet } from "../types.js";
import { type Feet, feetOf } from "./feet.js";
import { pulleyPairs } from "./pulleys.js";

/**
 * How the ground shafts are moved:
 * - `countermarch`: each treadle is tied to lamms that raise and lamms that sink;
 * - `pulleys`: shafts hang in pairs over damask pulleys, so that sinking one raises the other (a counterbalance);
 * - `jack`: treadles only raise; `sinking`: treadles only sink;
 * - `list`: a lever or dobby list, a bar a pick.
 */
export type Action = "countermarch" | "pulleys" | "jack" | "sinking" | "list";

/** Every action. */
export const ACTIONS: readonly Action[] = ["countermarch", "pulleys", "jack", "sinking", "list"];

const LAMMS =
  "a treadle is tied to the lower lamm of a shaft that it raises, and to the upper lamm of one that it sinks";

/** What one treadle, or one bar of a list, is tied to. */
export interface Tie {
  /** The shafts that it raises, from 1. */
  readonly raise: ShaftSet;
  /** The shafts that it sinks, from 1. */
  readonly sink: ShaftSet;
}

/** A ground tied up for an action. */
export interface TieUp {
  /** Whether the action can weave the ground. */
  readonly possible: true;
  /** What moves the shafts. */
  readonly action: Action;
  /** A treadle each, treadle 1 first; of a list a bar each, in the order of the picks. */
  readonly ties: readonly Tie[];
  /** How many ties (of a list, pegs) that makes. */
  readonly count: number;
  /** The treadle of each pick; 0 where the ground rests and the figure alone has a say. */
  readonly treadling: readonly number[];
  /** Which foot treads which treadle, so that the feet alternate, or why they cannot; a list needs no feet. */
  readonly feet?: Feet;
  /** Shafts that hang in pairs over a pulley. */
  readonly pairs?: readonly (readonly [number, number])[];
  /** What else the weaver must know, in sentences. */
  readonly notes: readonly string[];
}

/** Why an action cannot weave a ground. */
export interface NoTieUp {
  /** Whether the action can weave the ground. */
  readonly possible: false;
  /** What would have to move the shafts. */
  readonly action: Action;
  /** Why not, as a sentence. */
  readonly why: string;
}

/**
 * The ties of a ground for an action: its least treadles, what each is tied to, and how they are trodden.
 * @param ground what is to be tied up
 * @param action what moves the shafts
 * @example tieUpOf(groundFromWeave("broken twill"), "pulleys").count // 4
 */
export function tieUpOf(ground: Ground, action: Action): TieUp | NoTieUp {
  const { treadles, treadling } = treadlesOf(ground.steps);
  if (action === "list") {
    const bars = ground.steps.map(({ raise, sink }) => ({ raise, sink }));
    return {
      possible: true,
      action,
      ties: bars,
      count: tieCount(bars),
      treadling: bars.map((_, i) => i + 1),
      notes: restNotes(ground),
    };
  }
  const feet = feetOf(treadling);
  const tied = (ties: readonly Tie[], notes: readonly string[]): TieUp => ({
    possible: true,
    action,
    ties,
    count: tieCount(ties),
    treadling,
    feet,
    notes,
  });
  if (action === "countermarch") return tied(treadles, [LAMMS, ...restNotes(ground)]);
  if (action === "pulleys") {
    const found = pulleyPairs(ground);
    if ("why" in found) return { possible: false, action, why: found.why };
    const sinking = treadles.map(({ sink }) => ({ raise: [], sink }));
    return { ...tied(sinking, restNotes(ground)), pairs: found.pairs };
  }
  const free = ground.steps.findIndex((step) => rests(step, ground) && moves(step));
  if (free >= 0) return { possible: false, action, why: oneWayOnly(ground, free, action) };
  const oneWay = treadles.map(({ raise, sink }) =>
    action === "jack" ? { raise, sink: [] } : { raise: [], sink },
  );
  const held =
    action === "jack"
      ? "a jack pulls no shaft down, so units may be drawn only on picks where no treadle is down"
      : "a sinking shed holds no shaft up: at rest all shafts hang raised, and units may be drawn only on picks where no treadle is down";
  return tied(oneWay, [held]);
}

/** The steps that differ, each on a treadle of its own; a step that moves nothing needs none. */
function treadlesOf(steps: readonly GroundStep[]): { treadles: Tie[]; treadling: number[] } {
  const numbers = new Map<string, number>();
  const treadles: Tie[] = [];
  const treadling = steps.map(({ raise, sink }) => {
    if (raise.length + sink.length === 0) return 0;
    const key = `${raise.join(" ")}/${sink.join(" ")}`;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    treadles.push({ raise, sink });
    numbers.set(key, treadles.length);
    return treadles.length;
  });
  return { treadles, treadling };
}

function tieCount(ties: readonly Tie[]): number {
  return sum(ties.map(({ raise, sink }) => raise.length + sink.length));
}

function moves({ raise, sink }: GroundStep): boolean {
  return raise.length + sink.length > 0;
}

function rests({ raise, sink }: GroundStep, ground: Ground): boolean {
  return raise.length + sink.length < ground.shafts;
}

function restNotes(ground: Ground): string[] {
  return ground.steps.some((step) => rests(step, ground))
    ? ["a shaft neither raised nor sunk stays where the figure puts its ends, through long-eyed heddles"]
    : [];
}

function oneWayOnly(ground: Ground, pick: number, action: "jack" | "sinking"): string {
  const { raise, sink } = ground.steps[pick]!;
  const list = (shafts: ShaftSet) =>
    `${shafts.length === 1 ? "shaft" : "shafts"} ${shafts.join(", ") || "none"}`;
  return action === "jack"
    ? `pick ${pick + 1} sinks ${list(sink)} and leaves others to the figure, but a jack only raises: the drawn units would never be bound`
    : `pick ${pick + 1} raises ${list(raise)} and leaves others to the figure, but a sinking shed only sinks: the undrawn units would never be bound`;
}
