/** A yarn of an example, as it is written. */
export interface ExampleYarn {
  readonly yarn: string;
  readonly fibre?: string;
  readonly stock?: string;
}

type Quantities =
  | ("sett" | "pickSett" | "lingoWeight" | "width" | "length" | "hems")
  | ("fringe" | "gaps" | "sampling" | "waste" | "warpLength");

/** What an example says of its project, as it is written, so that nothing is worked out before somebody looks at it. */
export interface Said extends Readonly<Partial<Record<Quantities, string>>> {
  readonly drawIn?: string;
  readonly takeUp?: string;
  /** In width and length. */
  readonly shrinkage?: string;
  readonly reed?: string;
  readonly sley?: string;
  readonly pieces?: number;
  readonly warp?: ExampleYarn;
  readonly wefts?: readonly (ExampleYarn & { readonly name: string })[];
}
