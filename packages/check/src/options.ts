import type { Severity, Span } from "./report.js";

/** Threads in a centimetre, as the cloth lies on the loom. */
export interface Sett {
  readonly endsPerCm?: number;
  readonly picksPerCm?: number;
}

/** The longest float allowed, in threads, in mm at the sett, or in both (then the tighter holds). */
export interface FloatLimit {
  readonly threads?: number;
  readonly mm?: number;
}

/** What the weaver allows. */
export interface Limits {
  /** Any float; default 6 mm, or 12 threads where the sett is not known. */
  readonly float?: FloatLimit;
  /** Floats along an end; default `float`. */
  readonly warpFloat?: FloatLimit;
  /** Floats along a pick; default `float`. */
  readonly weftFloat?: FloatLimit;
  /** Floats along the picks of one weft, by its name, so that a pattern weft has its own; default `weftFloat`. */
  readonly floatOfWeft?: Readonly<Record<string, FloatLimit>>;
  /** Share of a border's pairs that may be open, in percent; default 0. */
  readonly openCuts?: number;
  /** How far the intersections of a thread may lie from the mean of its system or weft, in percent; default 15. */
  readonly takeUp?: number;
  /** How long a unit may stay drawn, or undrawn, without a change; default: as long as it likes. */
  readonly stretch?: StretchLimit;
  /** How large an area of one drawn state may be; default: as large as it likes. */
  readonly area?: AreaLimit;
  /** How large a drawn area may be; default `area`. */
  readonly drawnArea?: AreaLimit;
  /** How large an undrawn area may be; default `area`. */
  readonly undrawnArea?: AreaLimit;
  /** How far a band's share of warp on the face may lie from the whole cloth's, in percentage points; default 30. */
  readonly faceShare?: number;
  /** Up to how many squares an area that stands alone, one unit wide or one row high, is told of; default 3. */
  readonly thinArea?: number;
  /** How many times as long as on the other side of the cloth the longest float may be; default 2. */
  readonly unlikeSides?: number;
}

/** A length along the cloth, in picks, in mm at the sett, or in both (then the tighter holds). */
export interface StretchLimit {
  readonly picks?: number;
  readonly mm?: number;
}

/** The size of an area, by its squares (units x rows), by its longest side in mm at the sett, or by both. */
export interface AreaLimit {
  readonly squares?: number;
  readonly mm?: number;
}

/** A number that a printed recipe claims. */
export interface StatedNumber {
  /** `ends`, `picks`, `units`, `rows`, `longest-float`, or a number of the project, such as `width-in-reed`. */
  readonly name: string;
  readonly claim: number;
  /** The unit of the claim; the things themselves where they are counted, such as `ends`. */
  readonly unit: string;
  /** What it comes out as, in the same unit; left out for the first five, which the cloth tells itself. */
  readonly found?: number;
  /** How far the two may differ, because the claim was rounded where it was printed; default 0. */
  readonly within?: number;
  /** The line of the recipe, from 1. */
  readonly line?: number;
}

/** How far the cloth repeats; where it does, its last thread lies beside its first. */
export type Repeat = "none" | "ends" | "picks" | "both";

/** A finding that the weaver accepts, with her reason. A place left out is any place. */
export interface Waiver {
  readonly rule: string;
  readonly reason: string;
  readonly ends?: Span;
  readonly picks?: Span;
  readonly units?: Span;
  readonly rows?: Span;
}

/** What the loom has; what is left out is not checked. */
export interface LoomOptions {
  readonly patternShafts?: number;
  readonly groundShafts?: number;
  readonly treadles?: number;
  readonly lingos?: number;
}

/** How a cloth is to be checked. */
export interface CheckOptions {
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
  readonly firstPickFrom?: "left" | "right";
  /** Default: none are stated. */
  readonly stated?: readonly StatedNumber[];
  /** The weight of a rule's findings by the rule's name, or `off`; default: each rule's own. */
  readonly levels?: Readonly<Record<string, Severity | "off">>;
  /** The rules that are to look, by their names; default: all. A waiver of another rule is then left alone. */
  readonly only?: readonly string[];
  /** Findings that are accepted; default none. */
  readonly waive?: readonly Waiver[];
}
