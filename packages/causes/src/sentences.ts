/** What is said of slips, and of why they are taken for slips, in tables by their kinds. */
import { listed, many, runsOf, type Sentence } from "@drawcord/base";
import { sayMistake } from "@drawcord/check";
import type { SelvedgeOrder, Slip, SlipReason } from "./slip.js";

/**
 * A sentence for every kind of slip and of reason, made of nothing but its data. A table in another language is of this type:
 * one that lacks a kind, or has one that there is none of, does not compile.
 */
export interface CauseSentences {
  /**
   * What was written, and what the rest says.
   */
  readonly slips: {
    readonly [Kind in Slip["slip"]]: Sentence<Extract<Slip, { readonly slip: Kind }>>;
  };
  /**
   * That either of two slips may have been made.
   * @param one the sentence of the likelier
   * @param other that of the other
   */
  readonly either: (one: string, other: string) => string;
  /**
   * The pieces that a cause is in, to stand before its sentence.
   * @param names their names
   */
  readonly pieces: (names: readonly string[]) => string;
  /**
   * Why it is taken for a slip.
   */
  readonly reasons: {
    readonly [Kind in SlipReason["reason"]]: Sentence<Extract<SlipReason, { readonly reason: Kind }>>;
  };
}

/** The sentences of causes in English: lower case, without a full stop. */
export const causeSentences: CauseSentences = {
  slips: {
    "unit-shafts": ({ again, says, shafts, unit }) =>
      `unit ${unit}${otherTimes(again, "threaded")} ${hangs(shafts)} where the rest of the threading says ${says.length === 0 ? "static" : says.join("+")}`,
    "unit-missing": ({ after, shafts }) =>
      `a unit is missing ${after === 0 ? "before unit 1" : `after unit ${after}`}: one that ${hangs(shafts)}`,
    "unit-extra": ({ again, shafts, unit }) =>
      `unit ${unit}${otherTimes(again, "threaded")}, which ${hangs(shafts)}, is one too many`,
    "units-exchanged": ({ again, units: [one, other] }) =>
      `units ${one} and ${other}${otherTimes(again, "threaded")} are exchanged`,
    "row-shafts": ({ again, draws, leaves, row }) => {
      const which = `row ${row}${otherTimes(again, "woven")}`;
      if (leaves.length + draws.length > 4)
        return `${which} draws another lift than the rest of the plan says`;
      const parts = [
        ...(leaves.length === 0 ? [] : [`leaves ${named(leaves)} down`]),
        ...(draws.length === 0 ? [] : [`draws ${named(draws)}`]),
      ];
      return `${which} ${parts.join(" and ")} where the rest of the plan does not`;
    },
    "row-missing": ({ after, shafts }) =>
      `a row is missing ${after === 0 ? "before row 1" : `after row ${after}`}: one that draws ${shafts.length === 0 ? "nothing" : named(shafts)}`,
    "row-extra": ({ again, row }) => `row ${row}${otherTimes(again, "woven")} is one too many`,
    "rows-exchanged": ({ rows: [one, other] }) => `rows ${one} and ${other} are exchanged`,
    "rows-shifted": ({ by, rows: [first, last] }) =>
      `rows ${first} to ${last} are drawn ${many(Math.abs(by), "shaft")} too ${by < 0 ? "high" : "low"}`,
    "drawn-in-vain": ({ hangs: on, rows, shaft }) =>
      `${rows.length === 1 ? `row ${rows[0]} draws` : `rows ${runsOf(rows)} draw`} shaft ${shaft}, ${on === "static" ? "which only stands for static units" : "on which no unit hangs"}`,
    misstated: ({ claim, found, stated, unit }) => {
      if (unit === stated) return `the recipe states ${claim} ${unit}, and there are ${found}`;
      const as = stated === "width-in-reed" ? "in the reed" : `as its ${stated.replaceAll("-", " ")}`;
      return `the recipe states ${[claim, unit, as].filter((word) => word !== "").join(" ")}; worked out, ${found}`;
    },
    "row-picks": ({ counterpart, picks, row, usual }) =>
      `row ${row} is held for ${many(picks, "pick")}, ${counterpart === undefined ? "all others" : `its counterpart, row ${counterpart},`} for ${usual}`,
    "selvedge-end": ({ by, end, says, shaft, side }) =>
      `end ${end} of the ${side} selvedge is on shaft ${shaft} where ${ORDERS[by]} says ${says}`,
    "ground-begun": ({ steps }) =>
      `the ground is begun ${many(Math.abs(steps), "step")} too ${steps > 0 ? "early" : "late"}, so that the figure does not cut`,
    "ground-swapped": () => "the ground raises what it should sink, so that the figure does not cut",
    stray: ({ drawn, row, shaft }) =>
      drawn
        ? `row ${row} draws shaft ${shaft} alone, with nothing of the figure about it`
        : `row ${row} leaves shaft ${shaft} alone down, in the midst of the figure`,
    tie: ({ raises, sinks, step }) => {
      const part = (verb: string, tied: typeof raises) =>
        tied === undefined
          ? []
          : [`${verb} ${shaftsOr(tied.was)} where the weave says ${shaftsOr(tied.says)}`];
      return `step ${step} of the ground ${[...part("raises", raises), ...part("sinks", sinks)].join(" and ")}`;
    },
    "steps-exchanged": ({ steps }) => `steps ${steps.join(" and ")} of the ground are exchanged`,
    "ground-end": ({ end, says, shaft }) =>
      `end ${end} of the ground threading is on shaft ${shaft} where the order of the others says ${says}`,
  },
  either: (one, other) => `${one}, or ${other}`,
  pieces: (names) => listed(names),
  reasons: {
    mirror: (reason) => `but for that the ${plan(reason)} reads the same from both ends`,
    repeat: (reason) =>
      `but for that the ${plan(reason)} repeats every ${reason.by === 1 ? thing(reason) : `${reason.by} ${thing(reason)}s`}`,
    run: (reason) => `but for that ${places(reason, reason.stretch)} go straight`,
    copy: (reason) =>
      `but for that ${places(reason, reason.stretch)} are ${places(reason, reason.other)} once more`,
    turned: (reason) =>
      reason.other[0] === reason.stretch[0]
        ? `but for that ${places(reason, reason.stretch)} read the same from both ends`
        : `but for that ${places(reason, reason.stretch)} are ${places(reason, reason.other)} read backwards`,
    shorter: (reason) => `but for that the ${plan(reason)} is told in fewer words`,
    "ground-goes-on": () => "but for that end the ground threading goes on by one shaft from end to end",
    "even-picks": () => "but for that row the picks of the rows are told in one number or mirror",
    "selvedge-order": ({ by, side }) => `but for that end the ${side} selvedge goes by ${ORDERS[by]}`,
    cuts: ({ all }) =>
      all ? "begun so, every border of the figure cuts" : "begun so, more borders of the figure cut",
    "stands-alone": () => "no other square of the plan stands so",
    weave: () =>
      "but for that the ground is a weave in which every treadle moves as many shafts, and each shaft comes equally often",
    "draws-nothing": ({ hangs: on }) =>
      on === "static" ? "a static unit is never drawn" : "a shaft without units draws nothing",
    "worked-out": ({ likely }) =>
      likely === undefined
        ? "so it follows from the rest of the recipe"
        : `it looks as if ${sayMistake(likely)}`,
  },
};

/** What the sentences of a cause are made of. */
export interface CauseData {
  /** What is written, and what the rest says. */
  readonly slip: Slip;
  /** What may have been written wrong instead: of two places that should be alike either may be the wrong one. */
  readonly or?: Slip;
  /** Why it is taken for a slip. */
  readonly reason: SlipReason;
  /** The piece, where there are several and not all have it. */
  readonly piece?: string;
  /** All pieces that have it, `piece` first, where there are more than one. */
  readonly pieces?: readonly string[];
}

/** The sentences of a cause. */
export interface SaidCause {
  /** What is written, and what the rest says. */
  readonly message: string;
  /** Why it is taken for a slip. */
  readonly why: string;
}

/**
 * What was written wrong and why it is taken for a slip, from a cause's data alone, so that one which came through JSON or from
 * a worker is said again, in other words or in another language. The name of its piece stands before it, where it has one.
 * @param cause a cause as it was found
 * @param sentences a sentence for every kind; default: English
 * @example sayCause({ slip: { slip: "rows-exchanged", rows: [3, 4] }, reason: { reason: "mirror", of: "lifts" } }).message // "rows 3 and 4 are exchanged"
 */
export function sayCause(cause: CauseData, sentences: CauseSentences = causeSentences): SaidCause {
  const { or, piece, pieces = piece === undefined ? [] : [piece], reason, slip } = cause;
  // Each sentence is asked for its own kind, which the types of the tables cannot follow.
  const say = (one: Slip) => (sentences.slips[one.slip] as (of: Slip) => string)(one);
  const said = or === undefined ? say(slip) : sentences.either(say(slip), say(or));
  const why = (sentences.reasons[reason.reason] as (of: SlipReason) => string)(reason);
  return { message: pieces.length === 0 ? said : `${sentences.pieces(pieces)}: ${said}`, why };
}

const ORDERS: Readonly<Record<SelvedgeOrder, string>> = {
  ground: "the ground threading",
  other: "the other selvedge",
  "other-turned": "the other selvedge turned",
  "turn-about": "the turn and turn about of its ends",
  groups: "the even groups of its ends",
  straight: "the straight order of its ends",
};

/** That what is written comes again; nothing where it comes once. */
function otherTimes(again: number, way: "woven" | "threaded"): string {
  if (again === 0) return "";
  const others = again === 1 ? "the other time" : `each of the ${again} other times`;
  return ` (and ${others} that it is ${way})`;
}

function hangs(shafts: readonly number[]): string {
  if (shafts.length === 0) return "is static";
  return `hangs on ${shafts.length === 1 ? "shaft" : "shafts"} ${shafts.join("+")}`;
}

function named(shafts: readonly number[]): string {
  return `${shafts.length === 1 ? "shaft" : "shafts"} ${shafts.join(" ")}`;
}

function shaftsOr(shafts: readonly number[]): string {
  return shafts.length === 0 ? "nothing" : shafts.join(" ");
}

type OfPlan = Extract<SlipReason, { readonly of: unknown }>;

function plan({ of, written }: OfPlan): string {
  if (of === "threading") return written ? "threading as it is written" : "threading";
  return written ? "plan as it is written" : "lift plan";
}

function thing({ of }: OfPlan): string {
  return of === "threading" ? "unit" : "row";
}

function places(reason: OfPlan, [first, last]: readonly [number, number]): string {
  return first === last ? `${thing(reason)} ${first}` : `${thing(reason)}s ${first} to ${last}`;
}
