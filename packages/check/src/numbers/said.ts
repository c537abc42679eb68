/** A yarn of an example, as it is written. */
export interface ExampleYarn {
  /** Its count, such as `20/2 Ne`. */
  readonly yarn: string;
  /** What it is of. */
  readonly fibre?: string;
  /** How much there is of it. */
  readonly stock?: string;
}

/** What an example says of its project, as it is written, so that nothing is worked out before somebody looks at it. */
export interface Said {
  /** Ends in a unit length. */
  readonly sett?: string;
  /** Picks in a unit length. */
  readonly pickSett?: string;
  /** The weight of a lingo. */
  readonly lingoWeight?: string;
  /** The finished width. */
  readonly width?: string;
  /** The finished length of a piece. */
  readonly length?: string;
  /** The hems of a piece, both ends together. */
  readonly hems?: string;
  /** The fringes of a piece, both ends together. */
  readonly fringe?: string;
  /** Warp left unwoven between two pieces. */
  readonly gaps?: string;
  /** Warp for samples. */
  readonly sampling?: string;
  /** Warp that the loom cannot weave. */
  readonly waste?: string;
  /** The length of the warp. */
  readonly warpLength?: string;
  /** The share of its width that the cloth draws in. */
  readonly drawIn?: string;
  /** The share of its length that the warp takes up. */
  readonly takeUp?: string;
  /** In width and length. */
  readonly shrinkage?: string;
  /** The reed, as it is counted. */
  readonly reed?: string;
  /** The ends in each dent. */
  readonly sley?: string;
  /** Pieces that are wanted. */
  readonly pieces?: number;
  /** The yarn of the warp. */
  readonly warp?: ExampleYarn;
  /** The yarn of each weft, by its name. */
  readonly wefts?: readonly (ExampleYarn & {
    /** The weft's name. */
    readonly name: string;
  })[];
}
