import type { Limits } from "./limits.js";
import type { NumberSlip } from "./numbers/likely-mistake.js";
import type { ProjectNumbers } from "./numbers/project.js";
import type { GroundStart, Side, WovenOrder, YarnOrder } from "./put-together.js";
import type { Severity, Span } from "./report.js";

/** Threads in a centimetre, as the cloth lies on the loom. */
export interface Sett {
  /** Ends in a centimetre. */
  readonly endsPerCm?: number;
  /** Picks in a centimetre. */
  readonly picksPerCm?: number;
}

/** A number that a printed recipe claims. */
export interface StatedNumber {
  /** `ends`, `picks`, `units`, `rows`, `longest-float`, or a number of the project, such as `width-in-reed`. */
  readonly name: string;
  /** What is claimed. */
  readonly claim: number;
  /** The unit of the claim; the things themselves where they are counted, such as `ends`. */
  readonly unit: string;
  /** What is worked out, in the same unit; left out for the first five, which the cloth tells itself. */
  readonly found?: number;
  /** How far the two may differ, because the claim was rounded where it was printed; default 0. */
  readonly within?: number;
  /** What known mistakes would have made of it, in the same unit. */
  readonly slips?: readonly NumberSlip[];
  /** The line of the recipe, from 1. */
  readonly line?: number;
}

/** How far the cloth repeats; where it does, its last thread lies beside its first. */
export type Repeat = "none" | "ends" | "picks" | "both";

/** A finding that the weaver accepts, with her reason. A place left out is any place. */
export interface WaiverOf<Name extends string = string> {
  /** The rule whose findings are accepted. */
  readonly rule: Name;
  /** Why they are, in the weaver's words. */
  readonly reason: string;
  /** The ends that a finding must lie within, from 1. */
  readonly ends?: Span;
  /** The picks that a finding must lie within, from 1. */
  readonly picks?: Span;
  /** The units that a finding must lie within, from 1. */
  readonly units?: Span;
  /** The rows that a finding must lie within, from 1. */
  readonly rows?: Span;
}

/** What the loom has; what is left out is not checked. */
export interface LoomOptions {
  /** How wide a warp the reed takes, in mm. */
  readonly reedWidth?: number;
  /** How wide a cloth the loom weaves, in mm. */
  readonly weavingWidth?: number;
  /** Pattern shafts, or cords. */
  readonly patternShafts?: number;
  /** Ground shafts. */
  readonly groundShafts?: number;
  /** Treadles. */
  readonly treadles?: number;
  /** Lingos at hand. */
  readonly lingos?: number;
  /** On each ground shaft. */
  readonly heddles?: number;
}

/** How a named ground is begun, and for which picks. */
export interface GroundStartOption extends GroundStart {
  /** The picks that every row is taken to be a multiple of. */
  readonly step: number;
  /** The picks that most rows have. */
  readonly usual: number;
}

/** How a cloth is to be checked, by rules of these names. */
export interface OptionsOf<Name extends string = string> {
  /** Default: not known. */
  readonly sett?: Sett;
  /** Default: each limit's own default. */
  readonly limits?: Limits;
  /** Default `none`. */
  readonly repeat?: Repeat;
  /** The shaft number that diagrams give to static units; a lift that draws it is a finding. Default: none. */
  readonly staticShaft?: number;
  /** Default: not known. */
  readonly loom?: LoomOptions;
  /** The side from which the first pick of each weft is thrown; default `left`. */
  readonly firstPickFrom?: Side;
  /** The same of wefts that begin on a side of their own, by the name of the yarn or of the weft. */
  readonly firstPickOf?: Readonly<Record<string, Side>>;
  /** The yarn of each pick by its name; repeats over the picks. Default: each weft is of one yarn. */
  readonly yarnOfPick?: readonly string[];
  /** Orders of yarns, for those that end within a stripe. Default: none. */
  readonly yarnOrders?: readonly YarnOrder[];
  /** How the lifts were put together; default: not known. */
  readonly woven?: WovenOrder;
  /** How a named ground is begun where rows of unlike picks move its start; default: they do not. */
  readonly groundStart?: GroundStartOption;
  /** Default: none are stated. */
  readonly stated?: readonly StatedNumber[];
  /** The project, as `projectNumbers` makes it, for the rules of numbers that agree. Default: nothing is said of one. */
  readonly project?: ProjectNumbers;
  /** The level of a rule's findings by the rule's name, or `off`; default: each rule's own. */
  readonly levels?: Readonly<Partial<Record<Name, Severity | "off">>>;
  /** The rules that are to look, by their names; default: all. A waiver of another rule is then left alone. */
  readonly only?: readonly Name[];
  /** Findings that are accepted; default none. */
  readonly waive?: readonly WaiverOf<Name>[];
}
