import type { Plan, PlanPurchase, Project, Quantity, YarnError } from "@drawcord/yarn";
import type { Closeness } from "./closeness.js";

/** What a project of `@drawcord/yarn` says, and the ways of writing it that rules judge. */
export interface ProjectFacts extends Project {
  /** How much one lingo weighs. */
  readonly lingoWeight?: Quantity;
  /** The project of all that is woven on the warp, where the cloth is of one design among several. */
  readonly onWarp?: Project;
}

/** The project of a cloth and every number that follows from it. */
export interface Numbers {
  /** What is said of the project and counted in the cloth. */
  readonly project: ProjectFacts;
  /** What follows from it, number by number. */
  readonly worked: Plan;
  /** The yarns to have for all that is woven on the warp. */
  readonly buy: readonly PlanPurchase[];
  /** How close ends and picks lie; left out where sett, yarn or ground is not known. */
  readonly closeness: {
    /** Ends beside their closest sett. */
    readonly warp?: Closeness | undefined;
    /** Picks beside their closest sett. */
    readonly weft?: Closeness | undefined;
  };
  /** How many pieces the warp that is wound gives, and how many are wanted; left out where either is not known. */
  readonly piecesOfWarp?: {
    /** Pieces that the warp gives. */
    readonly given: number;
    /** Pieces that are wanted. */
    readonly wanted: number;
  };
  /** The ends that the finished width takes; left out where no width is wanted or there is no sett. */
  readonly endsOfWidth?: number;
}

/** What the numbers of a project need of a cloth. */
export interface Counted {
  /** Ends, selvedges included. */
  readonly ends: number;
  /** Picks of all wefts. */
  readonly picks: number;
  /** Left out for a plain draft. */
  readonly units?: number;
  /**
   * The picks of a weft, by its name.
   * @param weft the weft by its name; the ground weft is ``
   */
  picksOf(weft: string): number;
}

/** A project with the formulas that work it out, as `projectNumbers` makes it. */
export interface ProjectNumbers {
  /** What is said of the project. */
  readonly facts: ProjectFacts;
  /** The rules that look at them. */
  readonly rules: readonly {
    /** The rule's name. */
    readonly name: string;
  }[];
  /**
   * The numbers of the project for a cloth; the error that says why, where they cannot be.
   * @param cloth what is counted in the cloth
   */
  of(cloth: Counted): Numbers | YarnError;
}
