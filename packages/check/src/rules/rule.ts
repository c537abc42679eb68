import type { Change, UnitDraft } from "@drawcord/units";
import type { Cloth } from "../cloth.js";
import type { Said } from "../numbers/said.js";
import type { OptionsOf } from "../options.js";
import type { Told, Where } from "../report.js";
import type { ShaftDraft } from "../shaft-draft/types.js";
import type { RecipePart } from "./parts.js";

/** A small cloth that shows a rule: a draft, a plain draft, or a drawdown as text (the first pick on the lowest line). */
export interface Example {
  /** One clause: what it is. */
  readonly title: string;
  /** The cloth itself. */
  readonly cloth: UnitDraft | ShaftDraft | string;
  /** What it is checked with; by default nothing is set. */
  readonly options?: OptionsOf;
  /** What is said of its project. */
  readonly project?: Said;
}

/** What a rule finds: where it is, how many faults it is, and what the rule says besides. */
export interface Fact extends Where {
  /** How many faults are told of together; left out when it is one. */
  readonly count?: number;
  /** How bad it is; the worst of a rule are told first. */
  readonly measured?: number;
}

/** What there is to say of a rule: to people who want to know, never to the check itself, which leaves it out of a page. */
export interface RulePage {
  /** One line: what it finds. */
  readonly summary: string;
  /** What a finding says of the cloth. */
  readonly meaning: string;
  /** Why it matters at the loom and in use. */
  readonly reason: string;
  /** What to do about it. */
  readonly mend: string;
  /** How the weaver sets the rule's limit in her recipe, and what holds when she sets none; left out where it has no limit. */
  readonly limit?: string;
  /** Where the rule comes from. */
  readonly source: string;
  /** Cloths that pass and cloths that fail. */
  readonly examples: {
    /** Cloths of which the rule finds nothing. */
    readonly passes: readonly Example[];
    /** Cloths of which the rule finds something. */
    readonly fails: readonly Example[];
  };
}

/**
 * A way to look for a mend: in the start and the raise and sink of the ground, in its ties, in the ends of the selvedges, in
 * the step that the ground begins at, in squares cut into floats, in squares turned where the finding is, and in squares
 * turned anywhere, for what is measured against something else: the other pick, the mean, the other side.
 */
export type MendWay = "ground" | "ties" | "selvedges" | "starts" | "floats" | "squares" | "any squares";

/** What a slip may have been made in. */
export type SlipOf = "ground" | "threading";

/** What a shaft is that is drawn in vain. */
export interface InVain {
  /** What hangs on it: static units, which it only stands for, or nothing. */
  readonly hangs: "static" | "nothing";
  /** Whether it is sure to be a slip, in however many rows; default false: only where few rows draw it. */
  readonly sure?: true;
}

/**
 * A rule of the checker: its data, its sentence, the function that looks, the place in a recipe that it is about, and the
 * changes that may mend it. `On` is what it looks at: a cloth that has what the rule needs. What there is to say of it
 * stands beside it in its file, as a `RulePage`.
 */
export interface Rule<Name extends string, F extends Fact, On extends Cloth = Cloth> {
  /** The rule's name, as it stands in recipes and reports. */
  readonly name: Name;
  /** How much its findings weigh, where the weaver says nothing. */
  readonly severity: "error" | "warning" | "note";
  /** The kinds of change that may mend what it finds; none where only the weaver can. */
  readonly changes: readonly Change["change"][];
  /** How a mend is looked for where no slip explains what it finds; default: it is not. */
  readonly mends?: readonly MendWay[];
  /** The slips that it speaks for where the recipe alone does not say that one was made; default none. */
  readonly speaksFor?: SlipOf;
  /** Of a finding about a shaft that is drawn in vain: what there is of that shaft. */
  readonly inVain?: InVain;
  /**
   * Where several pieces are woven on a warp: `all`, it is told only where it is found in all of them, for what one makes use
   * of is not idle; `first`, it is about the recipe, which stands for its first piece. Default: each piece has its own.
   */
  readonly ofPieces?: "all" | "first";
  /** That it is a rule for plain drafts, and of no other cloth is said that it did not look; default false. */
  readonly plainOnly?: true;
  /** That it compares the numbers of the project, which a plan goes by too; default false. */
  readonly ofNumbers?: true;
  /**
   * What the rule looks at, of a cloth; a clause that says why it cannot, where the cloth has not what it needs.
   * @param cloth the cloth to be looked at
   */
  of(cloth: Cloth): On | string;
  /**
   * Looks at a cloth; `found` is what the rules before it have found.
   * @param on what the rule looks at, as `of` gives it
   * @param found what the rules before it have found
   */
  find(on: On, found: readonly Told[]): Iterable<F>;
  /**
   * The sentence of a finding, made of nothing but what it says as data: lower case, without a full stop.
   * @param fact what was found
   */
  say(fact: F): string;
  /**
   * The parts of a recipe that a finding may be about, the nearest first.
   * @param fact what was found
   */
  parts(fact: F): readonly RecipePart[];
}

/** A rule whatever it looks at and finds. */
export type AnyRule = Rule<string, Fact>;

/** What one rule finds, with what it says besides. */
export type FindingOf<R> = R extends Rule<infer Name, infer F, infer _On> ? Told<Name> & F : never;
