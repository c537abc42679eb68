/** The level of a finding: an error would spoil the cloth, a warning may, a note is worth knowing. */
export type Severity = "error" | "warning" | "note";

/** First and last of a stretch, 1-based and inclusive. */
export type Span = readonly [first: number, last: number];

/** Where something lies in the cloth. Places are 1-based; one that does not apply is left out. */
export interface Where {
  readonly ends?: Span;
  readonly picks?: Span;
  readonly units?: Span;
  readonly rows?: Span;
  /** Stretch by stretch, where what it is about has holes between its first and last unit or row. */
  readonly runs?: { readonly units?: readonly Span[]; readonly rows?: readonly Span[] };
}

/** One fault of the cloth or of its plan, as every rule tells it. */
export interface Told<Name extends string = string> extends Where {
  /** The rule's name, as in `drawcord rules`. */
  readonly rule: Name;
  readonly severity: Severity;
  /** One sentence, lower case and without a full stop: what is wrong and where, in ends and picks and in units and rows. */
  readonly message: string;
  /** The piece that it is in, where several are woven on the warp and not all have it. */
  readonly piece?: string;
  /** How many faults this finding tells of, such as floats side by side or pairs of one border; left out when it is one. */
  readonly count?: number;
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
export interface ReportOf<Finding extends Told> {
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
    readonly ran: readonly Finding["rule"][];
    readonly skipped: readonly { readonly rule: Finding["rule"]; readonly reason: string }[];
  };
  /** Sorted by severity, rule, how bad they are, and place. */
  readonly findings: readonly Finding[];
}
