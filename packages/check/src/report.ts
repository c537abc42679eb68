/** How much a finding weighs: an error would spoil the cloth, a warning may, a note is worth knowing. */
export type Severity = "error" | "warning" | "note";

/** First and last of a stretch, 1-based and inclusive. */
export type Span = readonly [first: number, last: number];

/** One fault of the cloth or of its plan, as data. Places are 1-based; a place that does not apply is left out. */
export interface Finding {
  /** The rule's name, as in `drawcord rules`. */
  readonly rule: string;
  readonly severity: Severity;
  /** One sentence, lower case and without a full stop: what is wrong and where, in ends and picks and in units and rows. */
  readonly message: string;
  /** How many faults this finding tells of, such as floats side by side or pairs of one border; left out when it is one. */
  readonly count?: number;
  readonly ends?: Span;
  readonly picks?: Span;
  readonly units?: Span;
  readonly rows?: Span;
  readonly measured?: number;
  readonly limit?: number;
  /** Unit of `measured` and `limit`, such as `threads` or `mm`. */
  readonly unit?: string;
  readonly face?: "face" | "back";
  readonly system?: "warp" | "weft";
  /** The weft of the pick, where wefts are told apart. */
  readonly weft?: string;
  /** That a warp float is counted over the picks of the ground weft alone, as only another weft ties the end there. */
  readonly alone?: boolean;
  /** The shaft that a finding of the plan is about, and its harness. */
  readonly shaft?: number;
  readonly harness?: "ground" | "pattern";
  /** The stated number that a finding is about, by its name in the recipe. */
  readonly stated?: string;
  /** The unit or row that a slip's own would have to be like, or beside which one is missing; either may be the wrong one. */
  readonly counterpart?: number;
  /** Which edge of a drawn area a border is; the first pick is the lowest. */
  readonly side?: "left" | "right" | "lower" | "upper";
  /** Whether the finding is about drawn or undrawn squares, where it is about one of them. */
  readonly drawn?: boolean;
  /** The rule whose waiver the finding is about. */
  readonly waives?: string;
  /** The weaver's reason for accepting the finding; such a finding does not count in `ok` and `summary`. */
  readonly waived?: string;
}

/** Floats of one system on one side of the cloth: how many there are of each length. */
export interface FloatTally {
  readonly longest: number;
  /** Number of floats by length in threads. */
  readonly lengths: Readonly<Record<string, number>>;
}

/** Neighbouring interlacements on either side of a border of drawn and undrawn. */
export interface CutTally {
  readonly cutting: number;
  readonly open: number;
}

/** Least, most and mean number of intersections along the threads of one system. */
export interface Spread {
  readonly least: number;
  readonly most: number;
  readonly mean: number;
}

/** What the checker measured and found of one cloth. */
export interface Report {
  /** No finding of severity `error`. */
  readonly ok: boolean;
  readonly size: {
    readonly ends: number;
    readonly picks: number;
    readonly units: number;
    readonly rows: number;
  };
  readonly summary: Readonly<Record<Severity, number>>;
  readonly floats: {
    readonly warpFace: FloatTally;
    readonly warpBack: FloatTally;
    readonly weftFace: FloatTally;
    readonly weftBack: FloatTally;
  };
  readonly cut: { readonly side: CutTally; readonly across: CutTally };
  readonly balance: {
    readonly warpFaceShare: number;
    readonly drawnShare: number;
    readonly intersections: { readonly ends: Spread; readonly picks: Spread };
    readonly areas: { readonly count: number; readonly largest: number };
  };
  /**
   * There where no plan told what is drawn, so that `cut`, `drawnShare` and `areas` (in threads, not in units and rows)
   * are worked out from what shows on the face. How sure that is: the share of interlacements that lie well inside an
   * area; the others lie near a border and go by the majority. 0 where nothing is inferred, and then those are 0 too;
   * `tooLarge` where that is because the cloth has more than 16,777,216 interlacements.
   */
  readonly inferred?: { readonly sureness: number; readonly tooLarge?: true };
  readonly integrity: {
    readonly hangsTogether: boolean;
    readonly layers: number;
    /** Ends that never interlace, 1-based. */
    readonly looseEnds: readonly number[];
    /** Picks that never interlace, 1-based. */
    readonly loosePicks: readonly number[];
  };
  /** Findings that a waiver accepts. */
  readonly waived: number;
  /** Which rules looked at the cloth, and which did not and why. */
  readonly rules: {
    readonly ran: readonly string[];
    readonly skipped: readonly { readonly rule: string; readonly reason: string }[];
  };
  /** Sorted by severity, rule, how bad they are, and place. */
  readonly findings: readonly Finding[];
}
