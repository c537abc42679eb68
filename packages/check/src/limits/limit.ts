/** A limit that the weaver may set, wholly: its key in a recipe, its units, what holds where none is set, and its words. */
export interface Limit {
  /** Its key in the section `limits` of a recipe. */
  readonly key: string;
  /** Its name in the options of a check. */
  readonly name: string;
  /**
   * `size`: a number of things from 1, or a length; `share`: percent from 0 to 100; `percent`: percent from 0 without an
   * upper end; `count`: a whole number from 1; `times`: a number from 1.
   */
  readonly kind: "size" | "share" | "percent" | "count" | "times";
  /** What a size without a unit counts, such as `threads`. */
  readonly things?: string;
  /** The parts that may have a limit of their own, each with its name in the options. */
  readonly apart?: Readonly<Record<string, string>>;
  /** The name in the options of the limits that each weft may have by its own name. */
  readonly byWeft?: string;
  /** What holds where the weaver sets none; left out where nothing does. */
  readonly usual?: number | Readonly<Record<string, number>>;
  /** What it limits, in one sentence, for the schema of recipes. */
  readonly description: string;
  /** What may be written. */
  readonly examples: readonly (number | string | Readonly<Record<string, number | string>>)[];
}

/** What a limit is set to: a number, or a size in things, in mm, or in both (then the tighter holds). */
export type LimitValue<L extends Limit> = L["kind"] extends "size"
  ? { readonly [unit in "mm" | (L["things"] & string)]?: number }
  : number;
