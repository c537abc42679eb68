/** The level of a finding: an error would spoil the cloth, a warning may, a note is worth knowing. */
export type Severity = "error" | "warning" | "note";

/** First and last of a stretch, 1-based and inclusive. */
export type Span = readonly [first: number, last: number];

/** Where something lies in the cloth. Places are 1-based; one that does not apply is left out. */
export interface Where {
  /** The ends, from 1. */
  readonly ends?: Span;
  /** The picks, from 1. */
  readonly picks?: Span;
  /** The units, from 1; selvedges are none. */
  readonly units?: Span;
  /** The rows of the lift plan, from 1. */
  readonly rows?: Span;
  /** Stretch by stretch, where what it is about has holes between its first and last unit or row. */
  readonly runs?: {
    /** Of units, from 1. */
    readonly units?: readonly Span[];
    /** Of rows, from 1. */
    readonly rows?: readonly Span[];
  };
}

/** One fault of the cloth or of its plan, as every rule tells it. */
export interface Told<Name extends string = string> extends Where {
  /** The rule's name, as in `drawcord rules`. */
  readonly rule: Name;
  /** How much it weighs. */
  readonly severity: Severity;
  /** One sentence, lower case and without a full stop: what is wrong and where, in ends and picks and in units and rows. */
  readonly message: string;
  /** The piece that it is in, where several are woven on the warp and not all have it. */
  readonly piece?: string;
  /** All pieces that have it just so, `piece` first, where there are several and not all have it. */
  readonly pieces?: readonly string[];
  /** How many faults this finding tells of, such as floats side by side or pairs of one border; left out when it is one. */
  readonly count?: number;
  /** The weaver's reason for accepting the finding; such a finding does not count in `ok` and `summary`. */
  readonly waived?: string;
}

/** Floats of one system on one side of the cloth: how many there are of each length. */
export interface FloatTally {
  /** Threads that the longest passes. */
  readonly longest: number;
  /** Number of floats by length in threads. */
  readonly lengths: Readonly<Record<string, number>>;
}

/** Neighbouring interlacements on either side of a border of drawn and undrawn. */
export interface CutTally {
  /** Pairs of which one is raised and the other lowered. */
  readonly cutting: number;
  /** Pairs that are both raised, or both lowered. */
  readonly open: number;
}

/** Least, most and mean number of intersections along the threads of one system. */
export interface Spread {
  /** Fewest on a thread. */
  readonly least: number;
  /** Most on a thread. */
  readonly most: number;
  /** On a thread, on average. */
  readonly mean: number;
}

/** What the checker measured and found of one cloth. */
export interface ReportOf<Finding extends Told> {
  /** No finding of severity `error`. */
  readonly ok: boolean;
  /** How large the cloth is. */
  readonly size: {
    /** Ends, selvedges included. */
    readonly ends: number;
    /** Picks of all wefts. */
    readonly picks: number;
    /** Units; 0 for a cloth without a plan. */
    readonly units: number;
    /** Rows of the lift plan; 0 for a cloth without a plan. */
    readonly rows: number;
  };
  /** How many findings there are of each severity, those waived left out. */
  readonly summary: Readonly<Record<Severity, number>>;
  /** How long the floats are, in threads. */
  readonly floats: {
    /** Ends over picks, on the face. */
    readonly warpFace: FloatTally;
    /** Ends under picks, on the back. */
    readonly warpBack: FloatTally;
    /** Picks over ends, on the face. */
    readonly weftFace: FloatTally;
    /** Picks under ends, on the back. */
    readonly weftBack: FloatTally;
  };
  /** How cleanly figure and ground cut. */
  readonly cut: {
    /** Pairs of neighbouring ends, pick by pick. */
    readonly side: CutTally;
    /** Pairs of neighbouring picks, end by end. */
    readonly across: CutTally;
  };
  /** How evenly the cloth is bound. */
  readonly balance: {
    /** The share of the face that the warp shows, from 0 to 1. */
    readonly warpFaceShare: number;
    /** The share of the interlacements in the units that are drawn, from 0 to 1; selvedges are left out, as in `areas`. */
    readonly drawnShare: number;
    /** Changes of state along the threads. */
    readonly intersections: {
      /** Along the ends. */
      readonly ends: Spread;
      /** Along the picks. */
      readonly picks: Spread;
    };
    /** Connected patches of squares drawn alike. */
    readonly areas: {
      /** How many there are. */
      readonly count: number;
      /** Squares of the largest. */
      readonly largest: number;
    };
  };
  /**
   * There where no plan told what is drawn, so that `cut`, `drawnShare` and `areas` (in threads, not in units and rows)
   * are worked out from what shows on the face. How sure that is: the share of interlacements that lie well inside an
   * area; the others lie near a border and go by the majority. 0 where nothing is inferred, and then those are 0 too;
   * `tooLarge` where that is because the cloth has more than 16,777,216 interlacements.
   */
  readonly inferred?: {
    /** The share of interlacements that lie well inside an area, from 0 to 1. */
    readonly sureness: number;
    /** That nothing is inferred, because the cloth is too large. */
    readonly tooLarge?: true;
  };
  /** Whether the cloth hangs together. */
  readonly integrity: {
    /** That no set of its threads can be lifted off the rest. */
    readonly hangsTogether: boolean;
    /** Layers that it falls into; 1 where it hangs together. */
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
    /** Those that looked, by name. */
    readonly ran: readonly Finding["rule"][];
    /** Those that did not. */
    readonly skipped: readonly {
      /** The rule's name. */
      readonly rule: Finding["rule"];
      /** Why it did not look, as a clause. */
      readonly reason: string;
    }[];
  };
  /** Sorted by severity, rule, how bad they are, and place. */
  readonly findings: readonly Finding[];
}
